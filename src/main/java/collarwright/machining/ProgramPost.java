package collarwright.machining;

import collarwright.finding.JobException;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

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

    /** Decimals of F for a turning cut: small numbers that have to tell times apart; our choice, no source. */
    private static final int SWEEP_DECIMALS = 4;

    private final Machine machine;
    private final Grid grid;
    private final RotaryWord rotary;
    private final PostLines lines;
    private final PostPlace place = new PostPlace();
    private boolean cycleActive;
    private boolean inverseTime;
    /** The cutter whose length the next move of Z takes in; 0 for none. */
    private int length;

    private ProgramPost(Machine machine, Sheet sheet) {
        this.machine = machine;
        this.grid = sheet.grid();
        this.rotary = new RotaryWord(machine.rotary().form(), grid, sheet.radius());
        this.lines = new PostLines(machine);
    }

    /**
     * What a program is printed for beside its machine.
     *
     * @param grid steps of its numbers
     * @param radius outer radius of the pipe; what a turn is in a Y word that counts a length
     * @param number its O number; 0 for none
     */
    record Sheet(Grid grid, double radius, int number) {}

    /**
     * Prints a program that turns no pipe, or turns it by degrees.
     *
     * @param number its O number; 0 for none
     * @throws JobException MACHINE_UNABLE if the profile does not allow a word, a line as long as one, or no O number so
     *     large
     */
    static String print(List<Move> moves, Machine machine, Grid grid, int number) {
        return print(moves, machine, new Sheet(grid, 180 / StrictMath.PI, number));
    }

    /**
     * Prints a program.
     *
     * @throws JobException MACHINE_UNABLE if the profile does not allow a word, a line as long as one, or no O number so
     *     large
     */
    static String print(List<Move> moves, Machine machine, Sheet sheet) {
        boolean cycles = machine.post().cycles();
        List<Move> single = cycles ? moves : MoveList.expanded(moves, sheet.grid());
        return new ProgramPost(machine, sheet).text(single, sheet.number());
    }

    private String text(List<Move> moves, int programNumber) {
        boolean percent = machine.post().layout().percent();
        if (percent) {
            lines.bare("%");
        }
        lines.programNumber(programNumber);
        for (Move move : moves) {
            move(move);
            place.follow(move);
        }
        if (percent) {
            lines.bare("%");
        }
        return lines.text();
    }

    private void move(Move move) {
        if (move instanceof Move.Comment comment) {
            lines.comment(comment.text());
        } else if (move instanceof Move.Cycle cycle) {
            perMinute();
            cycle(cycle);
        } else {
            if (cycleActive) {
                cycleActive = false;
                lines.block("G80");
            }
            if (!(move instanceof Move.Sweep)) {
                perMinute();
            }
            single(move);
        }
    }

    /** Back to a feed per minute after turning cuts. */
    private void perMinute() {
        if (inverseTime) {
            inverseTime = false;
            lines.block("G94");
        }
    }

    private void cycle(Move.Cycle cycle) {
        cycleActive = true;
        String r = "R" + grid.length(cycle.retract());
        String f = f(cycle.feedMmPerMin());
        boolean pecks = cycle.peck() > 0;
        boolean chipBreak = machine.post().layout().habits().chipBreak();
        List<String> words = new ArrayList<>(List.of("G98", !pecks ? "G81" : chipBreak ? "G73" : "G83", x(cycle.x())));
        if (!machine.rotary().form().byY() && !machine.withoutY()) {
            words.add(y(cycle.y())); // where Y turns the pipe, a cycle must not name it
        }
        words.addAll(List.of(z(cycle.bottom()), r));
        if (pecks) {
            words.add("Q" + grid.length(cycle.peck()));
        }
        words.add(f);
        lines.block(words.toArray(new String[0]));
    }

    private void single(Move move) {
        if (length > 0 && !(move instanceof Move.Rapid r && r.axis() == Axis.Z)) {
            throw new IllegalStateException("a cutter's length is taken in by the next move, along Z");
        }
        if (move instanceof Move.Setup) {
            lines.block(grid.units() == ProgramUnits.INCH ? "G20" : "G21");
            lines.block("G90", "G94", "G17");
        } else if (move instanceof Move.Rapid rapid) {
            rapid(rapid);
        } else if (move instanceof Move.Dwell dwell) {
            boolean byX = machine.post().layout().habits().dwellByX();
            lines.block("G4", (byX ? "X" : "P") + dwell(dwell.seconds()));
        } else if (move instanceof Move.SpindleOn on) {
            spindle(on);
        } else if (move instanceof Move.SpindleOff) {
            spindleOff();
        } else if (move instanceof Move.Pause pause) {
            pause(pause.text());
        } else if (move instanceof Move.Tool tool) {
            tool(tool);
        } else if (move instanceof Move.End) {
            lines.block(machine.post().endWord());
        } else {
            cut(move);
        }
    }

    private void rapid(Move.Rapid rapid) {
        if (rapid.axis() == Axis.Z && length > 0) {
            lines.block("G0", "G43", "H" + length, z(rapid.to()));
            length = 0;
        } else if (rapid.axis() != Axis.A) {
            lines.block("G0", rapid.axis() + grid.length(rapid.to()));
        } else if (machine.rotary().form().byHand()) {
            rotary.byHand(rapid.to()).forEach(lines::comment);
            lines.block("M0");
        } else {
            lines.block("G0", rotary.word(rapid.to()));
        }
    }

    private void spindle(Move.SpindleOn on) {
        if (machine.spindle().controlled()) {
            lines.block("S" + on.rpm(), "M3");
        } else {
            pause("Set the spindle to " + on.rpm() + " rpm, start it, then go on");
        }
    }

    private void spindleOff() {
        if (machine.spindle().controlled()) {
            lines.block("M5");
        } else {
            pause("Stop the spindle");
        }
    }

    private void pause(String text) {
        lines.comment(text);
        lines.block("M0");
    }

    /**
     * A length is taken in with the first move of Z, in one block: some controls go there at the word itself, others with the
     * next position, and in one block both mean the same height.
     *
     * <p>Source: Beckhoff, TwinCAT CNC, channel parameters, P-CHAN-00100 (at once, as DIN 66025 has it, or with the next
     * position); Kramer, Proctor, Messina, The NIST RS274NGC Interpreter - Version 3, NISTIR 6556, 2000, table 8: in a block
     * the length comes before the motion.
     */
    private void tool(Move.Tool tool) {
        ControlHabits habits = machine.post().layout().habits();
        lines.comment("CUTTER " + tool.number() + ", " + tool.title());
        if (habits.toolChange() == ControlHabits.ToolChange.M6) {
            lines.block("T" + tool.number(), "M6");
        }
        if (habits.lengthTable()) {
            length = tool.number();
        } else {
            pause(tool.touch());
        }
    }

    private String dwell(double seconds) {
        return machine.post().layout().dwellMilliseconds()
                ? Decimals.fixed(seconds * 1000, 0)
                : Decimals.fixed(seconds, 2);
    }

    private void cut(Move move) {
        if (move instanceof Move.Feed feed) {
            lines.block("G1", z(feed.z()), f(feed.feedMmPerMin()));
        } else if (move instanceof Move.Line line) {
            lines.block("G1", x(line.x()), y(line.y()), f(line.feedMmPerMin()));
        } else if (move instanceof Move.Arc arc) {
            lines.block(
                    arc.clockwise() ? "G2" : "G3",
                    x(arc.x()),
                    y(arc.y()),
                    z(arc.z()),
                    "I" + grid.length(arc.centreX()),
                    "J" + grid.length(arc.centreY()),
                    f(arc.feedMmPerMin()));
        } else if (move instanceof Move.Sweep sweep) {
            sweep(sweep);
        }
    }

    private void sweep(Move.Sweep sweep) {
        boolean inverse = machine.rotary().form().sweep() == RotaryForm.Sweep.INVERSE_TIME;
        if (inverse && !inverseTime) {
            inverseTime = true;
            lines.block("G93");
        }
        double perMinute = 60 / sweep.seconds();
        double f = inverse ? perMinute : perMinute * rotary.feedWay(place, sweep);
        double least = StrictMath.pow(10, -SWEEP_DECIMALS);
        lines.block(
                "G1",
                x(sweep.x()),
                rotary.word(sweep.angleDegrees()),
                "F" + Decimals.fixed(StrictMath.max(f, least), SWEEP_DECIMALS));
    }

    private String x(double length) {
        return "X" + grid.length(length);
    }

    private String y(double length) {
        return "Y" + grid.length(length);
    }

    private String z(double length) {
        return "Z" + grid.length(length);
    }

    private String f(double mmPerMin) {
        return "F" + grid.feed(mmPerMin);
    }
}
