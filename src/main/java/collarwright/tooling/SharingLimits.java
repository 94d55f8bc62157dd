package collarwright.tooling;

/**
 * How far hub types may differ that share one pattern.
 *
 * @param extraLean the most that a hole may let a strut lean beyond its own axial angle because it serves others too, an
 *     angle of 0 or more; what rounding to a cutter adds is not counted
 * @param miss how far a hole's axis may pass the place where its strut crosses the middle of the wall, along the girth: as
 *     far the strut's line passes the hub's axis
 */
public record SharingLimits(double extraLean, double miss) {

    /** A degree and 6 mm, our choice, no source. */
    public static final SharingLimits USUAL = new SharingLimits(StrictMath.PI / 180, 6);

    /** Checks the limits. */
    public SharingLimits {
        if (!(extraLean >= 0 && extraLean < StrictMath.PI / 4 && miss >= 0)) {
            throw new IllegalArgumentException("extra lean " + extraLean + ", miss " + miss);
        }
    }
}
