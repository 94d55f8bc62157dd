package collarwright.assembly;

import collarwright.collar.CollarBody;
import collarwright.geometry.Vec3;

/**
 * What the struts of a hub move in.
 *
 * @param body the collar
 * @param strut largest diameter of a strut
 * @param ring the centre ring
 * @param clearance how far a strut's end has to be clear of a hole so that it can be aimed at it
 */
public record HubSpace(CollarBody body, double strut, Ring ring, double clearance) {

    /**
     * The centre ring where it belongs, taken as full.
     *
     * @param radius largest outside radius
     * @param low its lower end above the collar's mid-plane
     * @param high its upper end
     */
    public record Ring(double radius, double low, double high) {
        /** Checks the sizes. */
        public Ring {
            if (!(radius > 0 && high > low)) {
                throw new IllegalArgumentException("a ring needs a radius and a width");
            }
        }

        Cylinder solid() {
            return new Cylinder(new Vec3(0, 0, low), new Vec3(0, 0, 1), high - low, radius);
        }
    }

    /** Checks the sizes. */
    public HubSpace {
        if (!(strut > 0 && strut < 2 * body.leastInnerRadius() && clearance >= 0)) {
            throw new IllegalArgumentException("a strut of " + strut + " in a bore of " + 2 * body.leastInnerRadius());
        }
    }

    /** A strut as it is seated; as long as matters inside and near the collar. */
    Cylinder solid(SeatedStrut seat) {
        Vec3 out = seat.direction();
        Vec3 end = seat.passing(body.midRadius()).plus(out.times(seat.setback()));
        return new Cylinder(end, out, 2 * body.outerRadius(), strut / 2);
    }
}
