package collarwright.trial;

/**
 * A value for each of the two unknowns.
 *
 * @param bearing thickness of the wall that bears
 * @param oversize what holes are wider than the size given for their cutters
 */
record Guess(double bearing, double oversize) {

    double get(Unknown unknown) {
        return unknown == Unknown.BEARING ? bearing : oversize;
    }

    Guess with(Unknown unknown, double value) {
        return unknown == Unknown.BEARING ? new Guess(value, oversize) : new Guess(bearing, value);
    }

    /** The nearest guess that is not below one and not above another. */
    Guess within(Guess low, Guess high) {
        return new Guess(
                StrictMath.max(low.bearing, StrictMath.min(high.bearing, bearing)),
                StrictMath.max(low.oversize, StrictMath.min(high.oversize, oversize)));
    }

    /** Which of the two. */
    enum Unknown {
        /** The bearing wall. */
        BEARING,
        /** The oversize. */
        OVERSIZE
    }
}
