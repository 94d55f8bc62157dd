package collarwright.job;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Profiles that a test writes itself. */
final class OwnProfiles implements ProfileSource {

    private final Map<String, String> files = new TreeMap<>();

    private OwnProfiles() {}

    static OwnProfiles of(String... namesAndTexts) {
        OwnProfiles own = new OwnProfiles();
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            own.files.put(namesAndTexts[i], namesAndTexts[i + 1]);
        }
        return own;
    }

    @Override
    public List<String> names() {
        return List.copyOf(files.keySet());
    }

    @Override
    public byte[] read(String name) throws IOException {
        if (files.get(name).equals("unreadable")) {
            throw new IOException("no right to read it");
        }
        return files.get(name).getBytes(StandardCharsets.UTF_8);
    }

    @Override
    public String place(String name) {
        return "mine/" + name;
    }
}
