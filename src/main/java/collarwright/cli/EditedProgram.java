package collarwright.cli;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Where;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A program file as it lies on disk.
 *
 * @param name its name as the user gave it
 * @param text its letters, one for each byte, without a byte order mark
 * @param findings PROGRAM_FILE if there was such a mark
 */
record EditedProgram(String name, String text, List<Finding> findings) {

    /** 16 MiB, some 700,000 lines: our choice, no source. */
    private static final int MOST_BYTES = 1 << 24;

    /** Some four times the longest line that a profile may allow: our choice, no source. */
    private static final int LONGEST_LINE = 1000;

    private static final Pattern COMMENT = Pattern.compile("\\(([^()]*)\\)");

    private static final String UTF8_MARK = "\u00ef\u00bb\u00bf";

    EditedProgram {
        findings = List.copyOf(findings);
    }

    /**
     * Reads a file.
     *
     * @throws JobException PROGRAM_FILE if it cannot be read as a program at all
     */
    static EditedProgram read(Path file) {
        String name = file.toString();
        if (!Files.isRegularFile(file)) {
            throw wrong(
                    new Where.Path(name),
                    "a program file",
                    Files.isDirectory(file) ? "a folder" : "no such file",
                    "check the name and the folder");
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw wrong(new Where.Path(name), "a program of at most 16 MiB", "a larger file", "check the name");
            }
            return of(name, new String(bytes, StandardCharsets.ISO_8859_1));
        } catch (IOException e) {
            throw wrong(
                    new Where.Path(name),
                    "a file that can be read",
                    String.valueOf(e.getMessage()),
                    "check that you may read it");
        }
    }

    private static EditedProgram of(String name, String text) {
        if (text.isBlank()) {
            throw wrong(new Where.Path(name), "a program", "an empty file", "copy the program from the pack again");
        }
        if (text.startsWith("\u00ff\u00fe") || text.startsWith("\u00fe\u00ff") || text.indexOf('\0') >= 0) {
            throw wrong(
                    new Where.Path(name),
                    "plain text",
                    "UTF-16 or another file of bytes",
                    "save it as plain text (ASCII)");
        }
        longLine(name, text).ifPresent(finding -> {
            throw new JobException(List.of(finding));
        });
        boolean marked = text.startsWith(UTF8_MARK);
        return new EditedProgram(
                name, marked ? text.substring(UTF8_MARK.length()) : text, marked ? List.of(mark(name)) : List.of());
    }

    private static Optional<Finding> longLine(String name, String text) {
        int line = 0;
        for (String each : text.split("\\R", -1)) {
            line++;
            if (each.length() > LONGEST_LINE) {
                return Optional.of(Finding.stop(
                        Code.PROGRAM_FILE,
                        new Where.Text(name, line, 1),
                        "lines of at most " + LONGEST_LINE + " characters",
                        "a line of " + each.length() + " characters",
                        "check that this is a program, and that its line ends are still there"));
            }
        }
        return Optional.empty();
    }

    private static Finding mark(String name) {
        return Finding.stop(
                Code.PROGRAM_FILE,
                new Where.Text(name, 1, 1),
                "the first letter of the program at the front of the file",
                "a byte order mark (EF BB BF), which controls take for a word",
                "save it as plain text (ASCII, or UTF-8 without a byte order mark)");
    }

    /**
     * Finds the program of the plan that this is: the one that was named, else that of the same file name, else the one
     * whose comments it has.
     *
     * @throws JobException COMMAND_LINE or PROGRAM_FILE if there is none, or more than one
     */
    PackProgram plan(List<PackProgram> programs, Optional<String> as, Path job) {
        if (programs.isEmpty()) {
            throw new JobException(List.of(Finding.stop(
                    Code.COMMAND_LINE,
                    new Where.Part("--job"),
                    "a job whose machine runs programs",
                    job + " makes none",
                    "name a job with a machine that runs programs: machine or strut-machine under [shop], or machine"
                            + " under [strip]")));
        }
        if (as.isPresent()) {
            String wanted = as.orElseThrow();
            return named(programs, wanted)
                    .orElseThrow(() -> new JobException(List.of(Finding.stop(
                            Code.COMMAND_LINE,
                            new Where.Part("--as"),
                            "a program of the pack: " + names(programs),
                            wanted,
                            "copy the name from the list of programs on the setup sheet"))));
        }
        Path last = Path.of(name).getFileName();
        return named(programs, String.valueOf(last))
                .or(() -> byComments(programs))
                .orElseThrow(() -> {
                    throw wrong(
                            new Where.Path(name),
                            "a file name or a head of the pack's programs: " + names(programs),
                            "neither the name nor the head is one of them",
                            "say which it is: --as PROGRAM, by its name in the pack");
                });
    }

    /**
     * Tells that the head is that of another program of the pack than the one it is held against.
     *
     * @param planned the one that was found by its name
     */
    Optional<Finding> looksLike(PackProgram planned, List<PackProgram> programs) {
        return byComments(programs)
                .filter(p -> !p.name().equals(planned.name()))
                .map(p -> Finding.warn(
                        Code.PROGRAM_DIFFERS,
                        new Where.Path(name),
                        "the program " + planned.name() + " of the pack, as its name says",
                        "a head like that of " + p.name(),
                        "copy the right program, or see what it is: --as " + p.name()));
    }

    private static Optional<PackProgram> named(List<PackProgram> programs, String name) {
        return programs.stream().filter(p -> p.name().equalsIgnoreCase(name)).findFirst();
    }

    private static String names(List<PackProgram> programs) {
        List<String> names = programs.stream().map(PackProgram::name).toList();
        return names.size() <= 12
                ? String.join(", ", names)
                : String.join(", ", names.subList(0, 12)) + " and " + (names.size() - 12) + " more";
    }

    /** The one program that shares more comments with the file than any other, and half of its own at least. */
    private Optional<PackProgram> byComments(List<PackProgram> programs) {
        Set<String> own = comments(text);
        List<PackProgram> best = new ArrayList<>();
        double most = 0.5;
        for (PackProgram program : programs) {
            Set<String> theirs = comments(program.text());
            Set<String> shared = new HashSet<>(theirs);
            shared.retainAll(own);
            double share = 2.0 * shared.size() / (theirs.size() + own.size());
            if (share > most) {
                best.clear();
                most = share;
            }
            if (share >= most) {
                best.add(program);
            }
        }
        return best.size() == 1 ? Optional.of(best.get(0)) : Optional.empty();
    }

    private static Set<String> comments(String text) {
        Set<String> comments = new HashSet<>();
        Matcher matcher = COMMENT.matcher(text);
        while (matcher.find()) {
            String comment = matcher.group(1).strip().toUpperCase(Locale.ROOT);
            if (!comment.startsWith("REVISION ") && !comment.startsWith("TIME ")) {
                comments.add(comment);
            }
        }
        return comments;
    }

    private static JobException wrong(Where where, String expected, String found, String hint) {
        return new JobException(List.of(Finding.stop(Code.PROGRAM_FILE, where, expected, found, hint)));
    }
}
