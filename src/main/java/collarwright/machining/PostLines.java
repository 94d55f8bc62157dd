package collarwright.machining;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** The lines of a program while it is printed: every word held against the allow-list, every line against its length. */
final class PostLines {

    /** Largest line number. Source: NISTIR 6556, section 3.3.1 (from memory). */
    private static final int LARGEST_NUMBER = 99999;

    private final Machine machine;
    private final List<String> lines = new ArrayList<>();
    private final Set<String> forbidden = new TreeSet<>();
    private int number;
    private int programNumber;

    PostLines(Machine machine) {
        this.machine = machine;
    }

    /** A line that is no block, such as a percent sign; it gets no number. */
    void bare(String line) {
        lines.add(line);
    }

    /** The O number, on a line of its own; 0 for none. */
    void programNumber(int given) {
        programNumber = given;
        if (given > 0) {
            lines.add("O"
                    + "0".repeat(StrictMath.max(0, 4 - String.valueOf(given).length())) + given);
        }
    }

    void block(String... words) {
        for (String word : words) {
            String key = word.charAt(0) == 'G' || word.charAt(0) == 'M' ? word : word.substring(0, 1);
            if (!machine.post().words().contains(key)) {
                forbidden.add(key);
            }
        }
        String line = String.join(" ", words);
        int step = machine.post().layout().numberStep();
        if (step > 0) {
            number += step;
            line = "N" + number + " " + line;
        }
        lines.add(line);
    }

    void comment(String text) {
        for (String line : ProgramText.lines(text, machine.post().lineLength() - 2)) {
            lines.add("(" + line + ")");
        }
    }

    /**
     * The whole text.
     *
     * @throws JobException MACHINE_UNABLE if the profile does not allow a word or a line as long as one
     */
    String text() {
        check();
        String end = machine.post().layout().crlf() ? "\r\n" : "\n";
        return String.join(end, lines) + end;
    }

    private void check() {
        List<Finding> findings = new ArrayList<>();
        Where where = new Where.Part("machine " + machine.name());
        if (!forbidden.isEmpty()) {
            findings.add(Finding.stop(
                    Code.MACHINE_UNABLE,
                    where,
                    "only words that the profile allows",
                    "the program needs " + String.join(", ", forbidden),
                    "add them to the profile's words, if the machine knows them",
                    machine.post().cycles() ? "or turn its cycles off" : "or use another machine"));
        }
        int most = machine.post().lineLength();
        lines.stream()
                .filter(l -> l.length() > most)
                .findFirst()
                .ifPresent(l -> findings.add(Finding.stop(
                        Code.MACHINE_UNABLE,
                        where,
                        "lines of " + most + " characters at most",
                        l.length() + " characters: " + l,
                        "turn the profile's cycles or line numbers off, or allow longer lines")));
        if (number > LARGEST_NUMBER) {
            findings.add(Finding.stop(
                    Code.MACHINE_UNABLE,
                    where,
                    "line numbers up to N" + LARGEST_NUMBER,
                    "the program goes up to N" + number,
                    "take a smaller step of line numbers in the profile, or 0 for none"));
        }
        if (programNumber > ControlHabits.LARGEST_PROGRAM) {
            findings.add(Finding.stop(
                    Code.MACHINE_UNABLE,
                    where,
                    "O numbers up to " + ControlHabits.LARGEST_PROGRAM + " for all programs of the job",
                    "one of " + programNumber,
                    "let the profile's program-number begin lower",
                    "or split the job"));
        }
        if (!findings.isEmpty()) {
            throw new JobException(findings);
        }
    }
}
