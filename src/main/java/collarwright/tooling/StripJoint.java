package collarwright.tooling;

/**
 * How the two ends of a rolled strip meet.
 *
 * @param kind butt, gap or lap
 * @param length what stays open or overlaps; 0 for a butt
 */
public record StripJoint(Kind kind, double length) {
    /** Checks the length. */
    public StripJoint {
        boolean fits = kind == Kind.BUTT ? length >= 0 && length <= 0 : length > 0 && length < Double.POSITIVE_INFINITY;
        if (!fits) {
            throw new IllegalArgumentException("a " + kind + " joint of " + length);
        }
    }

    /** The kinds of joints. */
    public enum Kind {
        /** End to end. */
        BUTT("butt"),
        /** The ends stay apart. */
        GAP("gap"),
        /** One end over the other. */
        LAP("lap");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /**
         * Returns its word in jobs and on papers.
         *
         * @return such as {@code butt}
         */
        public String word() {
            return word;
        }
    }

    /**
     * Returns by how much a strip is longer than the girth on its neutral line.
     *
     * @return above 0 for a lap, below 0 for a gap
     */
    public double added() {
        return switch (kind) {
            case BUTT -> 0;
            case GAP -> -length;
            case LAP -> length;
        };
    }

    /**
     * Returns how far from an end another layer lies over the strip.
     *
     * @return the lap, or 0
     */
    public double covered() {
        return kind == Kind.LAP ? length : 0;
    }
}
