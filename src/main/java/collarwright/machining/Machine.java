package collarwright.machining;

import java.util.List;
import java.util.Set;

/**
 * A machine as its profile describes it.
 *
 * @param name the profile's name
 * @param title for people
 * @param kind what it can do
 * @param post how its programs are written
 * @param travel how far and how fast it moves
 * @param spindle its spindle
 * @param rotary its rotary axis and the chuck on it
 * @param source where the figures come from
 */
public record Machine(
        String name, String title, Kind kind, Post post, Travel travel, Spindle spindle, Rotary rotary, String source) {

    /** What a machine can do. */
    public enum Kind {
        /** A drill press: no programs, tables and templates only. */
        PRESS,
        /** A mill with a rotary axis A along X that the pipe turns on. */
        ROTARY
    }

    /**
     * How programs are written.
     *
     * @param cycles whether G81, G82, G83 and G73 may be used
     * @param words words that may stand in a program, such as {@code G0} or {@code X}
     * @param lengthDecimals decimals of millimetres; inches get one more
     * @param angleDecimals decimals of degrees
     * @param lineLength most characters on a line
     * @param endWord {@code M2} or {@code M30}
     * @param extension file name's ending without the dot
     */
    public record Post(
            boolean cycles,
            Set<String> words,
            int lengthDecimals,
            int angleDecimals,
            int lineLength,
            String endWord,
            String extension) {
        /** Keeps the words. */
        public Post {
            words = Set.copyOf(words);
        }
    }

    /**
     * How far and how fast the machine moves, in its own zero (X0 chuck jaw face, Y0 and Z0 on the rotary axis).
     *
     * @param minX least X
     * @param maxX largest X
     * @param minZ least Z
     * @param maxZ largest Z
     * @param rapidMmPerMin rapid rate of X, Y and Z
     * @param maxFeedMmPerMin highest feed
     * @param accelerationMmPerS2 acceleration of X, Y and Z
     * @param clearGap room kept above everything when the pipe turns
     */
    public record Travel(
            double minX,
            double maxX,
            double minZ,
            double maxZ,
            double rapidMmPerMin,
            double maxFeedMmPerMin,
            double accelerationMmPerS2,
            double clearGap) {}

    /**
     * The spindle.
     *
     * @param minRpm slowest
     * @param maxRpm fastest
     * @param startSeconds dwell after a start or a stop
     */
    public record Spindle(double minRpm, double maxRpm, double startSeconds) {}

    /**
     * The rotary axis and its chuck.
     *
     * @param positive whether A turns as RS274 has it (counter-clockwise seen from +X, for the workpiece's point of view)
     * @param topTowardChuck whether TOP of the collars faces the chuck (−X)
     * @param rapidDegreesPerMin rapid rate of A
     * @param accelerationDegreesPerS2 acceleration of A
     * @param takeUpDegrees how far below its angle A comes from, against play
     * @param chuckLength length of pipe held inside the chuck
     * @param jawClear from the jaw face to the first collar
     * @param jawHeight how far the jaws stand out beyond the pipe
     * @param partingKerf width of the cut between collars
     * @param endTrim length lost at the free end
     * @param maxStick longest stick that the machine can take
     */
    public record Rotary(
            boolean positive,
            boolean topTowardChuck,
            double rapidDegreesPerMin,
            double accelerationDegreesPerS2,
            double takeUpDegrees,
            double chuckLength,
            double jawClear,
            double jawHeight,
            double partingKerf,
            double endTrim,
            double maxStick) {}

    /**
     * Whether programs are written for it.
     *
     * @return true for a rotary machine
     */
    public boolean programmed() {
        return kind == Kind.ROTARY;
    }

    /**
     * Lists the words that the plain dialect needs.
     *
     * @return in the order in which they are explained
     */
    public static List<String> plainWords() {
        return List.of(
                "G0", "G1", "G4", "G17", "G20", "G21", "G90", "G94", "M0", "M3", "M5", "M2", "X", "Y", "Z", "A", "F",
                "S", "P");
    }
}
