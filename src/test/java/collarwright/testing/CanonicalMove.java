package collarwright.testing;

import java.util.OptionalInt;

/**
 * One motion that the outside interpreter made of a program, cycles taken apart, in program units and degrees as it
 * prints them (four decimals).
 *
 * @param block the N number of the block it came from, if that block had one
 * @param kind rapid, straight feed or arc feed
 * @param x end point, tool length and work offset taken off: the program's own coordinates
 * @param y see x
 * @param z see x
 * @param a rotary axis, degrees
 * @param inch whether x, y, z are inches; millimetres otherwise
 * @param state feed, spindle and tool while it moves
 */
public record CanonicalMove(
        OptionalInt block, Kind kind, double x, double y, double z, double a, boolean inch, State state) {

    /** How the tool goes there. */
    public enum Kind {
        /** A rapid. */
        TRAVERSE,
        /** A straight line at feed. */
        FEED,
        /** An arc at feed; its centre is in the listing only. */
        ARC
    }

    /** Which way the spindle turns. */
    public enum Spindle {
        /** It stands. */
        OFF,
        /** M3. */
        CLOCKWISE,
        /** M4. */
        COUNTERCLOCKWISE
    }

    /**
     * What was in force during a move.
     *
     * @param feed program units a minute, or a revolution where feedPerRevolution says so
     * @param feedPerRevolution whether G95 is in force
     * @param spindle direction
     * @param spindleRpm the speed last set, also while it stands
     * @param tool the tool in the spindle, 0 before the first change
     * @param lengthOffset the tool length offset in program units, 0 if none
     */
    public record State(
            double feed, boolean feedPerRevolution, Spindle spindle, double spindleRpm, int tool, double lengthOffset) {
        static final State START = new State(0, false, Spindle.OFF, 0, 0, 0);

        State withFeed(double value) {
            return new State(value, feedPerRevolution, spindle, spindleRpm, tool, lengthOffset);
        }

        State withFeedPerRevolution(boolean value) {
            return new State(feed, value, spindle, spindleRpm, tool, lengthOffset);
        }

        State withSpindle(Spindle value) {
            return new State(feed, feedPerRevolution, value, spindleRpm, tool, lengthOffset);
        }

        State withSpindleRpm(double value) {
            return new State(feed, feedPerRevolution, spindle, value, tool, lengthOffset);
        }

        State withTool(int value) {
            return new State(feed, feedPerRevolution, spindle, spindleRpm, value, lengthOffset);
        }

        State withLengthOffset(double value) {
            return new State(feed, feedPerRevolution, spindle, spindleRpm, tool, value);
        }
    }

    /** Millimetres of one program unit. */
    public double unitMm() {
        return inch ? 25.4 : 1;
    }
}
