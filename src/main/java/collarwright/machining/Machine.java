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
     * @param layout line numbers, percent signs and line ends
     */
    public record Post(
            boolean cycles,
            Set<String> words,
            int lengthDecimals,
            int angleDecimals,
            int lineLength,
            String endWord,
            String extension,
            Layout layout) {
        /** Keeps the words and checks the ranges. */
        public Post {
            words = Set.copyOf(words);
            if (lengthDecimals < 3 || lengthDecimals > 6 || angleDecimals < 3 || angleDecimals > 6) {
                throw new IllegalArgumentException("decimals of millimetres and of degrees: 3 to 6");
            }
            if (lineLength < 40 || lineLength > 255 || extension.isEmpty()) {
                throw new IllegalArgumentException("lines have 40 to 255 characters, and files an ending");
            }
            if (!endWord.equals("M2") && !endWord.equals("M30")) {
                throw new IllegalArgumentException("a program ends with M2 or M30, not with " + endWord);
            }
        }

        /**
         * A post with the plainest layout: no line numbers, no percent signs, LF line ends, dwell in seconds.
         *
         * @param cycles whether G81, G82, G83 and G73 may be used
         * @param words words that may stand in a program
         * @param lengthDecimals decimals of millimetres, 3 to 6; inches get one more
         * @param angleDecimals decimals of degrees, 3 to 6
         * @param lineLength most characters on a line, 40 to 255
         * @param endWord {@code M2} or {@code M30}
         * @param extension file name's ending without the dot
         */
        public Post(
                boolean cycles,
                Set<String> words,
                int lengthDecimals,
                int angleDecimals,
                int lineLength,
                String endWord,
                String extension) {
            this(
                    cycles,
                    words,
                    lengthDecimals,
                    angleDecimals,
                    lineLength,
                    endWord,
                    extension,
                    Layout.plain());
        }
    }

    /**
     * What surrounds the words of a program.
     *
     * @param numberStep step of the N numbers of blocks; 0 for none
     * @param percent whether the first and the last line are a percent sign
     * @param crlf whether lines end with CR LF in place of LF
     * @param dwellMilliseconds whether P of a dwell counts milliseconds in place of seconds
     */
    public record Layout(int numberStep, boolean percent, boolean crlf, boolean dwellMilliseconds) {
        /** Checks the step. */
        public Layout {
            if (numberStep < 0 || numberStep > 100) {
                throw new IllegalArgumentException("the step of line numbers is 0 to 100");
            }
        }

        /**
         * The plainest layout.
         *
         * @return no line numbers, no percent signs, LF line ends, dwell in seconds
         */
        public static Layout plain() {
            return new Layout(0, false, false, false);
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
            double clearGap) {
        /** Checks the ranges. */
        public Travel {
            if (!(minX < maxX && minZ < maxZ && Double.isFinite(maxX - minX) && Double.isFinite(maxZ - minZ))) {
                throw new IllegalArgumentException("travel goes from a least to a larger value");
            }
            if (!(rapidMmPerMin > 0 && maxFeedMmPerMin > 0 && accelerationMmPerS2 > 0 && clearGap > 0)) {
                throw new IllegalArgumentException("rates, acceleration and clearance are above 0");
            }
        }
    }

    /**
     * The spindle.
     *
     * @param minRpm slowest
     * @param maxRpm fastest
     * @param startSeconds dwell after a start or a stop
     */
    public record Spindle(double minRpm, double maxRpm, double startSeconds) {
        /** Checks the ranges. */
        public Spindle {
            if (!(minRpm > 0 && maxRpm >= minRpm && startSeconds >= 0 && startSeconds <= 60)) {
                throw new IllegalArgumentException("spindle speeds are above 0, its start takes 0 to 60 seconds");
            }
        }
    }

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
            double maxStick) {
        /** Checks the ranges. */
        public Rotary {
            if (!(rapidDegreesPerMin > 0 && accelerationDegreesPerS2 > 0 && takeUpDegrees >= 0 && takeUpDegrees < 90)) {
                throw new IllegalArgumentException("rotary rates are above 0, take-up is 0 to 90 degrees");
            }
            if (!(chuckLength >= 0 && jawClear >= 0 && jawHeight >= 0 && partingKerf >= 0 && endTrim >= 0)) {
                throw new IllegalArgumentException("lengths at the chuck and at the free end are 0 or more");
            }
            if (!(maxStick > chuckLength)) {
                throw new IllegalArgumentException("the longest stick is longer than the chuck");
            }
        }
    }

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

    /**
     * Lists the words that the dialect with drilling cycles needs beside the plain ones.
     *
     * @return in the order in which they are explained
     */
    public static List<String> cycleWords() {
        return List.of("G73", "G80", "G81", "G82", "G83", "G98", "G99", "R", "Q");
    }
}
