package collarwright.strut;

/** What fixes the size of the dome. All sizes are to nodes (where the strut axes meet), above 0. */
public sealed interface SizeRule {

    /**
     * Returns the given size.
     *
     * @return mm
     */
    double value();

    /**
     * The radius of the sphere.
     *
     * @param value centre to node
     */
    record Radius(double value) implements SizeRule {
        /** Checks the size. */
        public Radius {
            check(value);
        }
    }

    /**
     * The floor diameter.
     *
     * @param value twice the largest horizontal distance of a foot node from the dome's axis
     */
    record FloorDiameter(double value) implements SizeRule {
        /** Checks the size. */
        public FloorDiameter {
            check(value);
        }
    }

    /**
     * The height.
     *
     * @param value apex node to lowest foot node, along the dome's axis
     */
    record Height(double value) implements SizeRule {
        /** Checks the size. */
        public Height {
            check(value);
        }
    }

    /**
     * The longest strut.
     *
     * @param value cut length of the strut type that is cut longest
     */
    record LongestStrut(double value) implements SizeRule {
        /** Checks the size. */
        public LongestStrut {
            check(value);
        }
    }

    /**
     * So many pieces of the longest strut from a stick.
     *
     * @param pieces of the strut type that is cut longest, 1 or more
     * @param stick length of the stock
     * @param trim lost at the stick's two ends in all
     * @param kerf lost at each cut between two pieces
     */
    record PiecesPerStock(int pieces, double stick, double trim, double kerf) implements SizeRule {
        /** Checks that something is left to cut. */
        public PiecesPerStock {
            check((stick - trim - (pieces - 1) * kerf) / pieces);
        }

        // In thousandths: such as 12 in, which is off by far less.
        private static final double ROUNDING = 1e-6;

        /**
         * The length of each piece: what the stick leaves when the trim and the cuts between the pieces are gone, in whole
         * thousandths of a millimetre as the saw counts them: a thousandth too long, and one piece fewer would fit.
         */
        @Override
        public double value() {
            double left = StrictMath.floor(stick * 1000 + ROUNDING) - up(trim) - (pieces - 1) * up(kerf);
            return StrictMath.floor(left / pieces) / 1000;
        }

        private static double up(double length) {
            return StrictMath.ceil(length * 1000 - ROUNDING);
        }
    }

    /** The size that a frame from outside has of itself. */
    record AsDrawn() implements SizeRule {
        /** Its millimetres are millimetres. */
        @Override
        public double value() {
            return 1;
        }
    }

    private static void check(double value) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a dome's size is above 0, not " + value);
        }
    }
}
