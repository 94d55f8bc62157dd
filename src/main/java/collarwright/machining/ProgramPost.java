package collarwright.machining;

import collarwright.finding.JobException;
import collarwright.units.Decimals;
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

    private ProgramPost(Machine machine, Grid grid, double radius) {
        this.machine = machine;
        this.grid = grid;
        this.rotary = new RotaryWord(machine.rotary().form(), grid, radius);
        this.lines = new PostLines(machine);
    }

    /**
     * Prints a program that turns no pipe, or turns it by degrees.
     *
     * @throws JobException MACHINE_UNABLE if the profile does not allow a word or a line as long as one
     */
    static String print(List<Move> moves, Machine machine, Grid grid) {
        return print(moves, machine, grid, 180 / StrictMath.PI);
    }

    /**
     * Prints a program.
     *
     * @param radius outer radius of the pipe; what a turn is in a Y word that counts a length
     * @throws JobException MACHINE_UNABLE if the profile does not allow a word or a line as long as one
     */
    static String print(List<Move> moves, Machine machine, Grid grid, double radius) {
        boolean cycles = machine.post().cycles();
        return new ProgramPost(machine, grid, radius).text(cycles ? moves : MoveList.expanded(moves, grid));
    }

    private String text(List<Move> moves) {
        boolean percent = machine.post().layout().percent();
        if (percent) {
            lines.bare("%");
        }
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
        if (cycle.peck() > 0) {
            String q = "Q" + grid.length(cycle.peck());
            lines.block("G98", "G83", x(cycle.x()), y(0), z(cycle.bottom()), r, q, f);
        } else {
            lines.block("G98", "G81", x(cycle.x()), y(0), z(cycle.bottom()), r, f);
        }
    }

    private void single(Move move) {
        if (move instanceof Move.Setup) {
            lines.block(grid.units() == ProgramUnits.INCH ? "G20" : "G21");
            lines.block("G90", "G94", "G17");
        } else if (move instanceof Move.Rapid rapid) {
            lines.block("G0", position(rapid));
        } else if (move instanceof Move.Dwell dwell) {
            lines.block("G4", "P" + dwell(dwell.seconds()));
        } else if (move instanceof Move.SpindleOn on) {
            lines.block("S" + on.rpm(), "M3");
        } else if (move instanceof Move.SpindleOff) {
            lines.block("M5");
        } else if (move instanceof Move.Pause pause) {
            lines.comment(pause.text());
            lines.block("M0");
        } else if (move instanceof Move.End) {
            lines.block(machine.post().endWord());
        } else {
            cut(move);
        }
    }

    private String position(Move.Rapid rapid) {
        return rapid.axis() == Axis.A ? rotary.word(rapid.to()) : rapid.axis() + grid.length(rapid.to());
    }

    private String dwell(double seconds) {
        return machine.post().layout().dwellMilliseconds()
                ? Decimals.fixed(seconds * 1000, 1)
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
