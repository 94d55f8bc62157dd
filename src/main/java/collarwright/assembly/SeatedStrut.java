package collarwright.assembly;

import collarwright.geometry.Vec3;

/**
 * A strut as it sits in its hole of a hub. Its axis goes through the middle of its hole, where that crosses the middle of the
 * collar's wall.
 *
 * @param axialAngle between strut and hub's plane, positive where the strut leans inward, in (−π/2, π/2)
 * @param azimuth of the strut's direction, clockwise from above, from the 0° line
 * @param swing how far its azimuth is ahead of that of its hole, in (−π/2, π/2); 0 where the strut points to the hub's axis
 * @param setback from the place where the strut passes the hub's axis to its cut end, along the strut
 * @param hole its hole
 */
public record SeatedStrut(double axialAngle, double azimuth, double swing, double setback, Opening hole) {

    /**
     * A round hole.
     *
     * @param diameter largest as drilled
     * @param height of its axis above the mid-plane
     */
    public record Opening(double diameter, double height) {}

    /** Checks the angles. */
    public SeatedStrut {
        double right = StrictMath.PI / 2;
        if (!(StrictMath.abs(axialAngle) < right && StrictMath.abs(swing) < right)) {
            throw new IllegalArgumentException("a strut of axial angle " + axialAngle + " and swing " + swing);
        }
    }

    /**
     * Returns the strut's direction.
     *
     * @return unit, away from the hub
     */
    public Vec3 direction() {
        double flat = StrictMath.cos(axialAngle);
        return new Vec3(flat * StrictMath.cos(azimuth), -flat * StrictMath.sin(azimuth), -StrictMath.sin(axialAngle));
    }

    /**
     * Returns where the strut passes the hub's axis most closely.
     *
     * @param midRadius radius of the middle of the collar's wall
     * @return the point of the strut's axis; on the hub's axis where the strut does not swing
     */
    public Vec3 passing(double midRadius) {
        double hole = azimuth - swing;
        Vec3 middle = new Vec3(midRadius * StrictMath.cos(hole), -midRadius * StrictMath.sin(hole), hole().height());
        return middle.minus(direction().times(alongToHole(midRadius)));
    }

    /** From where the strut passes the hub's axis to the middle of its hole, along the strut. */
    double alongToHole(double midRadius) {
        return midRadius * StrictMath.cos(swing) / StrictMath.cos(axialAngle);
    }

    /** How far beside the hub's axis it passes, + counter-clockwise of the way outward. */
    double miss(double midRadius) {
        return midRadius * StrictMath.sin(swing);
    }

    /**
     * The same strut cut to another length.
     *
     * @param another setback
     * @return a strut that differs in nothing else
     */
    public SeatedStrut withSetback(double another) {
        return new SeatedStrut(axialAngle, azimuth, swing, another, hole);
    }
}
