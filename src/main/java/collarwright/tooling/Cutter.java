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
}
