package collarwright.machining;

import collarwright.tooling.Cutter;
import java.util.ArrayList;
import java.util.List;

/** A canonical move: what the machine does, in no dialect. Lengths in mm on the program's grid, A in degrees. */
public sealed interface Move {

    /** Lengths in the program's unit, absolute positions, feed per minute, plane XY. */
    record Setup() implements Move {}

    /**
     * Text for people.
     *
     * @param text any script; a post puts it in plain letters and breaks it into lines
     */
    record Comment(String text) implements Move {}

    /**
     * A rapid of one axis.
     *
     * @param axis the axis
     * @param to where to, mm or degrees
     */
    record Rapid(Axis axis, double to) implements Move {}

    /**
     * A cut along Z.
     *
     * @param z where to
     * @param feedMmPerMin how fast
     */
    record Feed(double z, double feedMmPerMin) implements Move {}

    /**
     * A cut along a circular arc in the XY plane, Z going along evenly: a helix where Z changes. Starts where the tool
     * stands; an end that is the start is a full turn.
     *
     * @param clockwise as seen from above (+Z); G2 if so, else G3
     * @param x X of the end
     * @param y Y of the end
     * @param z Z of the end
     * @param centreX X of the centre less X of the start, the word I
     * @param centreY Y of the centre less Y of the start, the word J
     * @param feedMmPerMin how fast along the path
     */
    record Arc(boolean clockwise, double x, double y, double z, double centreX, double centreY, double feedMmPerMin)
            implements Move {}

    /**
     * A straight cut in the XY plane at the present height.
     *
     * @param x X of the end
     * @param y Y of the end
     * @param feedMmPerMin how fast along the path
     */
    record Line(double x, double y, double feedMmPerMin) implements Move {}

    /**
     * A cut with X and the rotary axis together, at the present height: a straight line on the unrolled pipe.
     *
     * @param x X of the end
     * @param angleDegrees the rotary position of the end
     * @param seconds how long it takes at the wanted speed over the pipe's surface; a post says it as inverse time
     *     (G93) or as a feed
     */
    record Sweep(double x, double angleDegrees, double seconds) implements Move {}

    /**
     * Waits.
     *
     * @param seconds how long
     */
    record Dwell(double seconds) implements Move {

        /** A spindle gets at least this long to come up to speed: our choice, no source. */
        private static final double LEAST_SECONDS = 1;

        /**
         * What a spindle needs to start, or to stand still.
         *
         * @param machine the machine
         * @return 1 s or more
         */
        static Dwell ofSpindle(Machine machine) {
            return new Dwell(StrictMath.max(LEAST_SECONDS, machine.spindle().startSeconds()));
        }
    }

    /**
     * Starts the spindle clockwise.
     *
     * @param rpm speed
     */
    record SpindleOn(int rpm) implements Move {}

    /** Stops the spindle. */
    record SpindleOff() implements Move {}

    /**
     * Stops until the operator goes on.
     *
     * @param text what to do or to look at
     */
    record Pause(String text) implements Move {}

    /**
     * The next cutter comes into the spindle, which stands still.
     *
     * @param number the cutter's number in the job, from 1
     * @param title which cutter
     * @param touch how Z is set with it, where no table of lengths does it
     */
    record Tool(int number, String title, String touch) implements Move {

        /**
         * A change to a cutter.
         *
         * @param number the cutter's number in the job, from 1
         * @param cutter the cutter
         * @param zero what its tip is set on, and to which Z, such as {@code crown is Z 50.00 mm}
         * @return the move
         */
        static Tool change(int number, Cutter cutter, String zero) {
            return new Tool(number, title(cutter), "Set Z anew: tip on the " + zero);
        }

        /**
         * A cutter in words.
         *
         * @param cutter the cutter
         * @return its id, its kind and what is stamped on it
         */
        static String title(Cutter cutter) {
            // A # begins a parameter in a program, and is no letter of it anywhere else.
            return cutter.id() + ", " + cutter.kind().title() + " "
                    + cutter.marked().replace("#", "No. ");
        }
    }

    /** The program's end. */
    record End() implements Move {}

    /**
     * Drills one hole: goes to X at the present height, down to the R plane, cuts with pecks to the bottom, and
     * retracts to the clear height. This is what cycles G81 and G83 do with G98.
     *
     * <p>After each peck but the last the tool goes out to the R plane and back to {@link #REENTRY} above the bottom of
     * the peck. Source: Kramer, Proctor, Messina, The NIST RS274NGC Interpreter - Version 3, NISTIR 6556, 2000, section
     * 3.5.16 (G81, G83).
     *
     * @param x X of the hole
     * @param y Y of the hole, where the tool stands already
     * @param retract the R plane
     * @param bottom Z of the lowest point
     * @param peck depth of a peck; 0 for one cut to the bottom
     * @param feedMmPerMin how fast it cuts
     * @param clear Z before and after
     */
    record Cycle(double x, double y, double retract, double bottom, double peck, double feedMmPerMin, double clear)
            implements Move {

        /** How far above the last bottom a peck starts to feed again: 0.010 in, as the report's interpreter (from memory). */
        public static final double REENTRY = 0.254;

        /**
         * A hole over the axis, Y0.
         *
         * @param x X of the hole
         * @param retract the R plane
         * @param bottom Z of the lowest point
         * @param peck depth of a peck; 0 for one cut to the bottom
         * @param feedMmPerMin how fast it cuts
         * @param clear Z before and after
         */
        public Cycle(double x, double retract, double bottom, double peck, double feedMmPerMin, double clear) {
            this(x, 0, retract, bottom, peck, feedMmPerMin, clear);
        }

        /** Checks the order of heights. */
        public Cycle {
            if (!(bottom < retract && retract <= clear && peck >= 0 && feedMmPerMin > 0)) {
                throw new IllegalArgumentException("a drilling cycle goes down from clear by R to its bottom");
            }
        }

        /**
         * Writes the cycle out in single moves.
         *
         * @param grid the program's grid
         * @param fromX where the tool stands along X
         * @return the moves of the machine, the X move left out if it stands there
         */
        public List<Move> expanded(Grid grid, double fromX) {
            List<Move> moves = new ArrayList<>();
            if (x != fromX) {
                moves.add(new Rapid(Axis.X, x));
            }
            moves.add(new Rapid(Axis.Z, retract));
            double reached = retract;
            while (peck > 0 && reached - peck > bottom + grid.step() / 2) {
                reached = grid.snap(reached - peck);
                moves.add(new Feed(reached, feedMmPerMin));
                moves.add(new Rapid(Axis.Z, retract));
                moves.add(new Rapid(Axis.Z, grid.snap(reached + REENTRY)));
            }
            moves.add(new Feed(bottom, feedMmPerMin));
            moves.add(new Rapid(Axis.Z, clear));
            return moves;
        }

        /**
         * Shares a depth out in equal pecks.
         *
         * <p>The pecks are a step longer than equal, so that the last one is a little shorter and no controller finds a
         * rest of nothing by rounding.
         *
         * @param depth from the R plane to the bottom
         * @param most deepest single peck to aim for; a peck may be two steps deeper
         * @param grid the program's grid
         * @return the peck, 0 if one cut will do
         */
        public static double peck(double depth, double most, Grid grid) {
            double count = StrictMath.ceil(depth / most);
            return count <= 1 ? 0 : grid.snapUp(depth / count) + grid.step();
        }
    }
}
