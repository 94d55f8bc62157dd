package collarwright.trial;

/**
 * One reading on a test collar.
 *
 * @param hole number of the hole
 * @param cutter the cutter that made it, as a person calls it
 * @param size diameter of the hole: as measured, then the strut's or more; or as given for its cutter
 * @param sizeMeasured whether the hole itself was measured, so that its cutter's oversize is in the size already
 * @param strut diameter of the strut that was leaned
 * @param angle the lean at which it bound, from the hub's plane, above 0
 * @param weight how much the reading counts, above 0; 1 as a rule
 */
public record TrialRow(
        int hole, String cutter, double size, boolean sizeMeasured, double strut, double angle, double weight) {
    /** Checks the values. */
    public TrialRow {
        if (!(strut > 0
                && size > (sizeMeasured ? strut * (1 - 1e-12) : 0)
                && angle > 0
                && angle < StrictMath.PI / 2
                && weight > 0)) {
            throw new IllegalArgumentException(
                    "hole " + hole + ": a strut of " + strut + " at " + angle + " in " + size + ", weight " + weight);
        }
    }

    /**
     * A reading that counts as much as any other.
     *
     * @param hole number of the hole
     * @param cutter the cutter that made it
     * @param size diameter of the hole
     * @param sizeMeasured whether the hole itself was measured
     * @param strut diameter of the strut
     * @param angle the lean at which it bound
     */
    public TrialRow(int hole, String cutter, double size, boolean sizeMeasured, double strut, double angle) {
        this(hole, cutter, size, sizeMeasured, strut, angle, 1);
    }

    /**
     * Returns the diameter that the strut met.
     *
     * @param oversize of the cutters
     * @return the measured size; the cutter's with its oversize where it was not measured
     */
    double drilled(double oversize) {
        return sizeMeasured ? size : size + oversize;
    }

    /** The same reading with another weight. */
    TrialRow weighing(double another) {
        return new TrialRow(hole, cutter, size, sizeMeasured, strut, angle, another);
    }
}
