package collarwright.collar;

import collarwright.geometry.Vec3;

/**
 * Where a strut points, seen from its hole: tilt in the plane of the collar's axis and swing to the side.
 *
 * <p>Frame of a hole: x along the hole's axis, outward; z along the collar's axis, toward TOP; y completes it. A strut of
 * tilt θ and swing ψ points to (cos θ·cos ψ, cos θ·sin ψ, −sin θ).
 *
 * @param tilt above 0 where the strut's outer part lies below the hole's axis (toward the dome's centre), in (−π/2, π/2)
 * @param swing above 0 clockwise from above, in (−π/2, π/2)
 */
public record Direction(double tilt, double swing) {

    /** Checks the ranges. */
    public Direction {
        double quarter = StrictMath.PI / 2;
        if (!(StrictMath.abs(tilt) < quarter && StrictMath.abs(swing) < quarter)) {
            throw new IllegalArgumentException("a strut points outward: tilt " + tilt + ", swing " + swing);
        }
    }

    /**
     * A direction by how far and which way the strut leans.
     *
     * @param lean angle from the hole's axis, in [0, π/2)
     * @param bearing the way it leans round the hole's axis: 0 straight down (toward the dome's centre), a quarter turn to
     *     the side of positive swing
     * @return the direction
     */
    public static Direction leaning(double lean, double bearing) {
        double x = StrictMath.cos(lean);
        double y = StrictMath.sin(lean) * StrictMath.sin(bearing);
        double down = StrictMath.sin(lean) * StrictMath.cos(bearing);
        return new Direction(StrictMath.atan2(down, StrictMath.sqrt(x * x + y * y)), StrictMath.atan2(y, x));
    }

    /**
     * A direction by the line it runs along.
     *
     * @param line any length, x above 0
     * @return the direction
     */
    public static Direction along(Vec3 line) {
        double level = StrictMath.sqrt(line.x() * line.x() + line.y() * line.y());
        return new Direction(StrictMath.atan2(-line.z(), level), StrictMath.atan2(line.y(), line.x()));
    }

    /**
     * Returns the line the strut runs along, outward.
     *
     * @return unit vector in the hole's frame
     */
    public Vec3 line() {
        double level = StrictMath.cos(tilt);
        return new Vec3(level * StrictMath.cos(swing), level * StrictMath.sin(swing), -StrictMath.sin(tilt));
    }

    /**
     * Leans away from this direction instead of from the hole's axis.
     *
     * @param lean angle from this direction
     * @param bearing which way: 0 toward more tilt, a quarter turn toward more swing
     * @return the direction; for tilt and swing 0 the same as {@link #leaning}
     */
    public Direction away(double lean, double bearing) {
        double down = StrictMath.sin(lean) * StrictMath.cos(bearing);
        double aside = StrictMath.sin(lean) * StrictMath.sin(bearing);
        Vec3 ahead = line().times(StrictMath.cos(lean));
        return along(ahead.minus(upright().times(down)).plus(sideways().times(aside)));
    }

    /**
     * Returns what is upward, seen along the strut.
     *
     * @return unit vector square to the strut, in its plane with the collar's axis
     */
    Vec3 upright() {
        double sin = StrictMath.sin(tilt);
        return new Vec3(sin * StrictMath.cos(swing), sin * StrictMath.sin(swing), StrictMath.cos(tilt));
    }

    /**
     * Returns what is to the side, seen along the strut.
     *
     * @return unit vector square to the strut and to the collar's axis, to the side of positive swing
     */
    Vec3 sideways() {
        return new Vec3(-StrictMath.sin(swing), StrictMath.cos(swing), 0);
    }

    /**
     * Tells how far the strut leans from the hole's axis: {@code cos(lean) = cos θ · cos ψ}.
     *
     * @return angle in [0, π/2)
     */
    public double lean() {
        double down = StrictMath.sin(tilt);
        double aside = StrictMath.cos(tilt) * StrictMath.sin(swing);
        double along = StrictMath.cos(tilt) * StrictMath.cos(swing);
        return StrictMath.atan2(StrictMath.sqrt(down * down + aside * aside), along);
    }

    /**
     * Tells which way the strut leans round the hole's axis.
     *
     * @return angle in (−π, π], 0 straight down
     */
    public double bearing() {
        return StrictMath.atan2(StrictMath.cos(tilt) * StrictMath.sin(swing), StrictMath.sin(tilt));
    }
}
