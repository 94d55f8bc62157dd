package collarwright.tooling;

import collarwright.geometry.Interval;

/**
 * A cutter that a shop owns.
 *
 * @param id short plain name, unique in a job, such as {@code HS-44} or {@code TW-1-1/2in}
 * @param kind twist drill or hole saw
 * @param marked the size stamped on it, as a person reads it, such as {@code 44 mm} or {@code 1-3/4 in}
 * @param size the marked size
 * @param asDrilled the diameter of the hole it makes, with its spread
 * @param measured whether the as-drilled size was measured by the shop
 * @param lead how far its point or pilot stands out beyond the cutting edge that makes the full diameter
 * @param depth deepest cut it can make, from the cutting edge
 * @param minRpm lowest speed it may turn
 * @param maxRpm highest speed it may turn
 * @param rack the rack it belongs to
 */
public record Cutter(
        String id,
        CutterKind kind,
        String marked,
        double size,
        Interval asDrilled,
        boolean measured,
        double lead,
        double depth,
        double minRpm,
        double maxRpm,
        String rack) {
    /** Checks the values. */
    public Cutter {
        if (!(size > 0 && asDrilled.min() > 0 && lead >= 0 && depth > 0 && minRpm > 0 && maxRpm >= minRpm)) {
            throw new IllegalArgumentException(id + ": a size, a depth or a speed is out of range");
        }
    }

    /**
     * The same cutter where its holes come out wider than given; one whose as-drilled size was measured stays as it is.
     *
     * @param oversize how much wider, with its limits
     * @return the cutter; its holes are at least half as wide as before
     */
    public Cutter wider(Interval oversize) {
        if (measured) {
            return this;
        }
        double nominal = StrictMath.max(asDrilled.nominal() / 2, asDrilled.nominal() + oversize.nominal());
        double least = StrictMath.max(asDrilled.nominal() / 2, asDrilled.min() + oversize.min());
        double most = StrictMath.max(nominal, asDrilled.max() + oversize.max());
        return new Cutter(
                id,
                kind,
                marked,
                size,
                new Interval(StrictMath.min(least, nominal), nominal, most),
                false,
                lead,
                depth,
                minRpm,
                maxRpm,
                rack);
    }
}
