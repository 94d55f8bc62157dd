package collarwright.rehearsal;

import java.util.List;

/** What the machine did at a line of the program. */
sealed interface Event {

    /** The line that made it, from 1. */
    int line();

    /**
     * A move.
     *
     * @param block its words
     * @param kind rapid, feed, or a part of a cycle
     * @param from where from
     * @param to where to
     * @param drive spindle and feed at that time
     * @param path how it goes from the one to the other
     */
    record Stroke(Block block, Kind kind, Pose from, Pose to, Drive drive, Swept path) implements Event {
        @Override
        public int line() {
            return block.line();
        }

        boolean feed() {
            return kind == Kind.FEED || kind == Kind.CYCLE_FEED;
        }

        boolean cycle() {
            return kind == Kind.CYCLE_FEED || kind == Kind.CYCLE_RAPID;
        }

        /** Whether an axis changes; one that was unknown does. */
        boolean turns() {
            return changes(from.a(), to.a());
        }

        boolean travels() {
            return path instanceof Swept.Arc || changes(from.x(), to.x()) || changes(from.y(), to.y());
        }

        /** How far it reaches along X, Y and Z on its way; an axis that is unknown at the start counts from its end. */
        Swept.Reach reach() {
            return path.reach(from, to);
        }

        private static boolean changes(double from, double to) {
            return to != from && !Double.isNaN(to);
        }

        double lowest() {
            return Double.isNaN(from.z()) ? to.z() : StrictMath.min(from.z(), to.z());
        }
    }

    /** Kinds of strokes. */
    enum Kind {
        RAPID,
        FEED,
        CYCLE_RAPID,
        CYCLE_FEED,
        /** A hand turns the pipe. */
        HAND
    }

    /**
     * Spindle and feed.
     *
     * @param feedMmPerMin feed along the path of X, Y and Z, 0 if none was stated or none of them moves
     * @param rpm speed, 0 if none was stated
     * @param feedStated whether the block itself states its feed
     * @param seconds how long the block takes at that feed, acceleration not counted; 0 for a rapid
     */
    record Drive(double feedMmPerMin, double rpm, boolean feedStated, double seconds) {}

    /** A dwell. */
    record Dwell(int line, double p) implements Event {}

    /** The spindle starts or stops. */
    record Spindle(int line, boolean on, double rpm) implements Event {}

    /**
     * The program waits for the operator.
     *
     * @param comments what it tells him
     */
    record Stop(int line, List<String> comments) implements Event {
        public Stop {
            comments = List.copyOf(comments);
        }
    }

    /**
     * A cutter comes into the spindle, which stops.
     *
     * @param number its number
     * @param comments what is said of it
     */
    record Tool(int line, int number, List<String> comments) implements Event {
        public Tool {
            comments = List.copyOf(comments);
        }
    }

    /** The control adds a cutter's length from its table; 0 for none. */
    record Offset(int line, int number) implements Event {}

    /** The program ends. */
    record End(int line) implements Event {}
}
