package collarwright.cutting;

/** Whole thousandths of a millimetre, in which plans are made so that nothing is ever too long by a rounding. */
final class Grains {

    /** Longest length there may be, mm: sums stay far below what a long holds. */
    static final double LONGEST = 1e6;

    private static final double PER_MM = 1000;

    // A length such as 0.1 + 0.2 or 25.4 × 12 is off by far less than this, in grains.
    private static final double ROUNDING = 1e-6;

    private Grains() {}

    static long up(double mm) {
        return (long) StrictMath.ceil(mm * PER_MM - ROUNDING);
    }

    static long down(double mm) {
        return (long) StrictMath.floor(mm * PER_MM + ROUNDING);
    }

    static double mm(long grains) {
        return grains / PER_MM;
    }
}
