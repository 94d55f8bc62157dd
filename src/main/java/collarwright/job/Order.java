package collarwright.job;

/**
 * How much is made.
 *
 * @param domes how many domes, 1 or more
 * @param sparesPercent spare struts, collars, rings and ties of every type, in percent of what the domes need; every
 *     type gets at least one spare unless this is 0
 */
public record Order(int domes, double sparesPercent) {
    /** Checks the ranges. */
    public Order {
        if (domes < 1 || !(sparesPercent >= 0 && sparesPercent <= 100)) {
            throw new IllegalArgumentException("no such order: " + domes + " domes, " + sparesPercent + " % spares");
        }
    }

    /**
     * Returns how many pieces of one type are made.
     *
     * @param perDome pieces of the type in one dome
     * @return pieces for all domes and their spares
     */
    public int made(int perDome) {
        int needed = StrictMath.multiplyExact(domes, perDome);
        return needed + spares(needed);
    }

    private int spares(int needed) {
        if (sparesPercent == 0 || needed == 0) {
            return 0;
        }
        // 3 % of 100 is 3, not 4: a rounding error of the product must not add a piece.
        return (int) StrictMath.max(1, StrictMath.ceil(needed * sparesPercent / 100 - 1e-9));
    }
}
