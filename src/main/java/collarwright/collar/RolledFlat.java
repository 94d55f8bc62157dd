package collarwright.collar;

import collarwright.collar.SwungContact.Wall;
import collarwright.geometry.Vec3;
import java.util.List;

/**
 * A circle that is cut in a flat strip before the strip is rolled into a collar. Its walls come to lie toward the
 * collar's axis: with the mean radius Rn, which keeps its length, the edge on the cylinder of radius R is
 * {@code y = R·sin(p·sin φ / Rn)}, {@code z = p·cos φ}. Inside it ends up narrower than it was cut.
 *
 * @param diameter of the circle in the flat strip
 */
public record RolledFlat(double diameter) implements Aperture {

    @Override
    public double size() {
        return diameter;
    }

    @Override
    public Aperture withSize(double other) {
        return new RolledFlat(other);
    }

    @Override
    public double limit(Wall wall) {
        return StrictMath.PI * wall.middle();
    }

    @Override
    public double reach(Wall wall) {
        return wall.inner() * StrictMath.sin(diameter / 2 / wall.middle());
    }

    @Override
    public double mostLean(Wall wall) {
        return StrictMath.min(Aperture.super.mostLean(wall), 0.98 * StrictMath.atan(wall.inner() / (diameter / 2)));
    }

    @Override
    public List<Rim> rims(Wall wall) {
        return List.of(rim(wall.middle(), wall.inner()), rim(wall.middle(), wall.outer()));
    }

    private Rim rim(double mean, double radius) {
        double p = diameter / 2;
        return turn -> {
            double round = p * StrictMath.sin(turn) / mean;
            return new Vec3(radius * StrictMath.cos(round), radius * StrictMath.sin(round), p * StrictMath.cos(turn));
        };
    }
}
