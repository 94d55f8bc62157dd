package collarwright.machining;

import java.util.Optional;
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
 * @param bed stop and seat of a bed for struts, or the table of a flat machine; empty for any other machine
 * @param tube what a tube cutter cuts with; empty for any other machine
 */
public record Machine(
        String name,
        String title,
        Kind kind,
        Post post,
        Travel travel,
        Spindle spindle,
        Rotary rotary,
        String source,
        Optional<Bed> bed,
        Optional<TubeCutter> tube) {
    /** Checks the spindle, and what programs are made with; a press makes none, its other figures are not used. */
    public Machine {
        MachineLimits.check(spindle);
        MachineLimits.require(tube.isPresent() == (kind == Kind.TUBE), "a tube cutter, and nothing else, has a jet");
        if (kind == Kind.ROTARY || kind == Kind.TUBE) {
            MachineLimits.check(post);
            MachineLimits.check(travel);
            MachineLimits.check(rotary);
        }
        if (kind == Kind.BED || kind == Kind.FLAT) {
            MachineLimits.check(post);
            MachineLimits.check(travel);
            MachineLimits.require(bed.isPresent(), "a bed has a stop and a seat");
            MachineLimits.require(kind == Kind.BED || travel.across().isPresent(), "a flat machine moves along Y");
        }
    }

    /**
     * A machine that is no bed and has no flat table.
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
    public Machine(
            String name,
            String title,
            Kind kind,
            Post post,
            Travel travel,
            Spindle spindle,
            Rotary rotary,
            String source) {
        this(name, title, kind, post, travel, spindle, rotary, source, Optional.empty(), Optional.empty());
    }

    /** What a machine can do. */
    public enum Kind {
        /** A drill press: no programs, tables and templates only. */
        PRESS,
        /** A mill with a rotary axis along X that the pipe turns on. */
        ROTARY,
        /** A tube cutter: X and the rotary axis move together while it cuts. */
        TUBE,
        /** A router with a flat bed: X and Y in the plane of the sheet. */
        FLAT,
        /** A long bed with a stop at one end, for the ends of struts: X along the strut. */
        BED
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
        /** Keeps the words. */
        public Post {
            words = Set.copyOf(words);
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
            this(cycles, words, lengthDecimals, angleDecimals, lineLength, endWord, extension, Layout.plain());
        }
    }

    /**
     * What surrounds the words of a program.
     *
     * @param numberStep step of the N numbers of blocks; 0 for none
     * @param percent whether the first and the last line are a percent sign
     * @param crlf whether lines end with CR LF in place of LF
     * @param dwellMilliseconds whether P of a dwell counts milliseconds in place of seconds
     * @param habits what else the control wants
     */
    public record Layout(
            int numberStep, boolean percent, boolean crlf, boolean dwellMilliseconds, ControlHabits habits) {
        /** Checks the step. */
        public Layout {
            if (numberStep < 0 || numberStep > 100) {
                throw new IllegalArgumentException("the step of line numbers is 0 to 100");
            }
        }

        /**
         * A layout of a control with the plainest habits.
         *
         * @param numberStep step of the N numbers of blocks; 0 for none
         * @param percent whether the first and the last line are a percent sign
         * @param crlf whether lines end with CR LF in place of LF
         * @param dwellMilliseconds whether P of a dwell counts milliseconds in place of seconds
         */
        public Layout(int numberStep, boolean percent, boolean crlf, boolean dwellMilliseconds) {
            this(numberStep, percent, crlf, dwellMilliseconds, ControlHabits.plain());
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
     * @param across least and largest Y; empty where Y is no linear axis, or stays at 0
     */
    public record Travel(
            double minX,
            double maxX,
            double minZ,
            double maxZ,
            double rapidMmPerMin,
            double maxFeedMmPerMin,
            double accelerationMmPerS2,
            double clearGap,
            Optional<Reach> across) {

        /**
         * Travel of a machine whose Y stays at 0.
         *
         * @param minX least X
         * @param maxX largest X
         * @param minZ least Z
         * @param maxZ largest Z
         * @param rapidMmPerMin rapid rate
         * @param maxFeedMmPerMin highest feed
         * @param accelerationMmPerS2 acceleration
         * @param clearGap room kept above everything when the pipe turns
         */
        public Travel(
                double minX,
                double maxX,
                double minZ,
                double maxZ,
                double rapidMmPerMin,
                double maxFeedMmPerMin,
                double accelerationMmPerS2,
                double clearGap) {
            this(
                    minX,
                    maxX,
                    minZ,
                    maxZ,
                    rapidMmPerMin,
                    maxFeedMmPerMin,
                    accelerationMmPerS2,
                    clearGap,
                    Optional.empty());
        }
    }

    /**
     * How far one axis goes.
     *
     * @param least least position
     * @param most largest position
     */
    public record Reach(double least, double most) {
        /** Checks the order. */
        public Reach {
            MachineLimits.require(
                    least < most && Double.isFinite(most - least), "an axis goes from a least to a larger position");
        }

        /**
         * Tells whether a position can be reached.
         *
         * @param position a position
         * @param slack how far beyond the ends still counts
         * @return true if it lies within
         */
        public boolean holds(double position, double slack) {
            return position >= least - slack && position <= most + slack;
        }
    }

    /**
     * The spindle.
     *
     * @param minRpm slowest
     * @param maxRpm fastest
     * @param startSeconds dwell after a start or a stop
     * @param controlled whether the program starts and stops it; else a hand does, at a pause
     */
    public record Spindle(double minRpm, double maxRpm, double startSeconds, boolean controlled) {

        /**
         * A spindle that the program starts and stops.
         *
         * @param minRpm slowest
         * @param maxRpm fastest
         * @param startSeconds dwell after a start or a stop
         */
        public Spindle(double minRpm, double maxRpm, double startSeconds) {
            this(minRpm, maxRpm, startSeconds, true);
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
     * @param form the word that turns it
     * @param longestFree how far a stick may stand out without a support; empty where the profile does not say
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
            double maxStick,
            RotaryForm form,
            Optional<Double> longestFree) {

        /**
         * A rotary axis that an A word turns, in degrees.
         *
         * @param positive whether A turns as RS274 has it
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
        public Rotary(
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
            this(
                    positive,
                    topTowardChuck,
                    rapidDegreesPerMin,
                    accelerationDegreesPerS2,
                    takeUpDegrees,
                    chuckLength,
                    jawClear,
                    jawHeight,
                    partingKerf,
                    endTrim,
                    maxStick,
                    RotaryForm.plain(),
                    Optional.empty());
        }

        /**
         * The same axis with another word.
         *
         * @param other the form
         * @return a new value
         */
        public Rotary with(RotaryForm other) {
            return new Rotary(
                    positive,
                    topTowardChuck,
                    rapidDegreesPerMin,
                    accelerationDegreesPerS2,
                    takeUpDegrees,
                    chuckLength,
                    jawClear,
                    jawHeight,
                    partingKerf,
                    endTrim,
                    maxStick,
                    other,
                    longestFree);
        }
    }

    /**
     * Tells whether it is a bed that moves along X and Z only.
     *
     * @return true if its profile gives no travel of Y
     */
    public boolean withoutY() {
        return kind == Kind.BED && travel.across().isEmpty();
    }

    /**
     * Whether programs are written for it.
     *
     * @return true for anything but a press
     */
    public boolean programmed() {
        return kind != Kind.PRESS;
    }
}
