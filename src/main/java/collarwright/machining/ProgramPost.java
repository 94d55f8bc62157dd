package collarwright.machining;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Where;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Prints canonical moves in a dialect; it changes none of them.
 *
 * <p>Controls without drilling cycles get them written out in G0 and G1. Where the profile has cycles, a hole is G81 (one
 * cut) or G83 (pecks): all words on every line, G98, and an explicit G80 before anything else moves.
 *
 * <p>Source: Kramer, Proctor, Messina, The NIST RS274NGC Interpreter - Version 3, NISTIR 6556, 2000, section 3.5.16.
 *
 * <p>Every word is held against the machine's allow-list and every line against its length; one that does not pass stops
 * the export of the whole program.
 */
final class ProgramPost {

    /** Largest line number. Source: NISTIR 6556, section 3.3.1 (from memory). */
    private static final int LARGEST_NUMBER = 99999;

    private final Machine machine;
    private final Grid grid;
    private final List<String> lines = new ArrayList<>();
    private final Set<String> forbidden = new TreeSet<>();
    private int number;
    private boolean cycleActive;

    private ProgramPost(Machine machine, Grid grid) {
        this.machine = machine;
        this.grid = grid;
    }

    /**
     * Prints a program.
     *
     * @throws JobException MACHINE_UNABLE if the profile does not allow a word or a line as long as one
     */
    static String print(List<Move> moves, Machine machine, Grid grid) {
        boolean cycles = machine.post().cycles();
        return new ProgramPost(machine, grid).text(cycles ? moves : MoveList.expanded(moves, grid));
    }

    private String text(List<Move> moves) {
        if (machine.post().layout().percent()) {
            lines.add("%");
        }
        moves.forEach(this::move);
        if (machine.post().layout().percent()) {
            lines.add("%");
        }
        check();
        String end = machine.post().layout().crlf() ? "\r\n" : "\n";
        return String.join(end, lines) + end;
    }

    private void move(Move move) {
        if (move instanceof Move.Comment comment) {
            comment(comment.text());
        } else if (move instanceof Move.Cycle cycle) {
            cycle(cycle);
        } else {
            if (cycleActive) {
                cycleActive = false;
                block("G80");
            }
            single(move);
        }
    }

    private void cycle(Move.Cycle cycle) {
        cycleActive = true;
        String x = "X" + grid.length(cycle.x());
        String y = "Y" + grid.length(cycle.y());
        String z = "Z" + grid.length(cycle.bottom());
        String r = "R" + grid.length(cycle.retract());
        String f = "F" + grid.feed(cycle.feedMmPerMin());
        List<String> words = new ArrayList<>(List.of("G98", cycle.peck() > 0 ? "G83" : "G81", x, y, z, r));
        if (machine.withoutY()) {
            words.remove(y);
        }
        if (cycle.peck() > 0) {
            words.add("Q" + grid.length(cycle.peck()));
        }
        words.add(f);
        block(words.toArray(String[]::new));
    }

    private void single(Move move) {
        if (move instanceof Move.Setup) {
            block(grid.units() == ProgramUnits.INCH ? "G20" : "G21");
            block("G90", "G94", "G17");
        } else if (move instanceof Move.Rapid rapid) {
            block("G0", rapid.axis() + position(rapid));
        } else if (move instanceof Move.Feed feed) {
            block("G1", "Z" + grid.length(feed.z()), "F" + grid.feed(feed.feedMmPerMin()));
        } else if (move instanceof Move.Dwell dwell) {
            block("G4", "P" + dwell(dwell.seconds()));
        } else if (move instanceof Move.SpindleOn on) {
            block("S" + on.rpm(), "M3");
        } else if (move instanceof Move.SpindleOff) {
            block("M5");
        } else if (move instanceof Move.Pause pause) {
            comment(pause.text());
            block("M0");
        } else {
            block(machine.post().endWord());
        }
    }

    private String position(Move.Rapid rapid) {
        return rapid.axis() == Axis.A ? grid.degrees(rapid.to()) : grid.length(rapid.to());
    }

    private String dwell(double seconds) {
        return machine.post().layout().dwellMilliseconds()
                ? Decimals.fixed(seconds * 1000, 1)
                : Decimals.fixed(seconds, 2);
    }

    private void block(String... words) {
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

    private void comment(String text) {
        for (String line : ProgramText.lines(text, machine.post().lineLength() - 2)) {
            lines.add("(" + line + ")");
        }
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
        if (!findings.isEmpty()) {
            throw new JobException(findings);
        }
    }
}
