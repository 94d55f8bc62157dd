package collarwright.testing;

import collarwright.job.BundledProfiles;
import collarwright.job.ProfileSource;
import collarwright.job.Profiles;
import collarwright.machining.Machine;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Machines of the profiles with other keys in their text, as somebody who copies one writes them. */
public final class ChangedMachines {

    /** Keys of every dialect, each alone and all together, for machines that are written with the plainest post. */
    public static final Map<String, List<String>> DIALECTS = dialects();

    private ChangedMachines() {}

    private static Map<String, List<String>> dialects() {
        Map<String, List<String>> all = new LinkedHashMap<>();
        String m6 = "tool-change = \"m6\"";
        String g43 = "tool-length = \"g43\"";
        String cycles = "cycles = true";
        all.put("plain", List.of());
        all.put("m6-g43", List.of(m6, g43));
        all.put("m6-touch", List.of(m6));
        all.put("pause", List.of("tool-change = \"pause\""));
        all.put("dwell-x", List.of("dwell-word = \"X\""));
        all.put("milliseconds", List.of("dwell-unit = \"ms\""));
        all.put("numbers", List.of("percent = true", "program-number = 7", "line-numbers = 5", "crlf = true"));
        all.put("short", List.of("file-names = \"8.3\""));
        all.put("cycles", List.of(cycles));
        all.put("chip-break", List.of(cycles, "chip-break = true"));
        all.put("by-hand", List.of("control = false"));
        all.put("by-hand-pause", List.of("control = false", "tool-change = \"pause\""));
        all.put(
                "industrial",
                List.of(
                        cycles,
                        "end-word = \"M30\"",
                        "line-length = 80",
                        "line-numbers = 10",
                        "percent = true",
                        "crlf = true",
                        "program-number = 1001",
                        m6,
                        g43,
                        "dwell-word = \"X\"",
                        "file-names = \"8.3\""));
        return all;
    }

    /**
     * A shipped machine with other keys: one that stands in its text is replaced, {@code control} is put into the spindle's
     * table, all others into the post's.
     */
    public static Machine of(String shipped, List<String> lines) {
        String entry = entry(shipped);
        for (String line : lines) {
            String key = line.substring(0, line.indexOf(" = "));
            String stands = "(?m)^" + key + " = .*$";
            if (entry.matches("(?s).*\n" + key + " = .*")) {
                entry = entry.replaceFirst(stands, line);
            } else {
                String table = key.equals("control") ? "[machine.spindle]" : "[machine.post]";
                entry = entry.replace(table + "\n", table + "\n" + line + "\n");
            }
        }
        Profiles profiles =
                Profiles.load(List.of(new BundledProfiles(), text("source = \"test\"\n[[machine]]" + entry)));
        if (!profiles.findings().isEmpty()) {
            throw new IllegalStateException(profiles.findings().toString());
        }
        return profiles.machine("changed").orElseThrow();
    }

    private static String entry(String shipped) {
        try {
            String all = new String(new BundledProfiles().read("machines.toml"), StandardCharsets.UTF_8);
            String name = "name = \"" + shipped + "\"";
            return Arrays.stream(all.split("\\[\\[machine]]"))
                    .filter(e -> e.contains(name))
                    .findFirst()
                    .orElseThrow()
                    .replace(name, "name = \"changed\"");
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static ProfileSource text(String text) {
        return new ProfileSource() {
            @Override
            public List<String> names() {
                return List.of("changed.toml");
            }

            @Override
            public byte[] read(String name) {
                return text.getBytes(StandardCharsets.UTF_8);
            }

            @Override
            public String place(String name) {
                return name;
            }
        };
    }
}
