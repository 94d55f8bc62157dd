package collarwright.collar;

import collarwright.collar.SwungContact.Wall;
import java.util.List;

/**
 * A hole that is cut by a jet or a blade which points at the collar's axis, along the outline that a round cylinder has on the
 * bore. Its walls lie toward the axis: on the cylinder of radius R its edge is {@code y = R·p·sin φ / Ri}, {@code z = p·cos φ}
 * with the radius Ri that the outline was made for. There it is as wide as drilled, outside it is wider to the sides; up and
 * down both are the same.
 *
 * @param diameter of the cylinder
 * @param bore inside radius that the outline was made for, more than half the diameter
 */
public record RadialCut(double diameter, double bore) implements Aperture {

    @Override
    public double size() {
        return diameter;
    }

    @Override
    public Aperture withSize(double other) {
        return new RadialCut(other, bore);
    }

    @Override
    public double limit(Wall wall) {
        return 2 * bore;
    }

    @Override
    public double reach(Wall wall) {
        return diameter / 2 * StrictMath.max(1, wall.inner() / bore);
    }

    @Override
    public double mostLean(Wall wall) {
        return StrictMath.min(Aperture.super.mostLean(wall), 0.98 * StrictMath.atan(wall.inner() / (diameter / 2)));
    }

    @Override
    public List<Rim> rims(Wall wall) {
        return List.of(rim(wall.inner()), rim(wall.outer()));
    }

    private Rim rim(double radius) {
        return turn -> Rim.on(
                radius, radius * diameter / 2 * StrictMath.sin(turn) / bore, diameter / 2 * StrictMath.cos(turn));
    }
}
