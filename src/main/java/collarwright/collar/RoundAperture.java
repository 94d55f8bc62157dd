package collarwright.collar;

import collarwright.collar.SwungContact.Wall;
import java.util.List;

/**
 * A round hole, drilled or sawn toward the collar's axis.
 *
 * @param diameter of the hole
 */
public record RoundAperture(double diameter) implements Aperture {

    @Override
    public double size() {
        return diameter;
    }

    @Override
    public Aperture withSize(double other) {
        return new RoundAperture(other);
    }

    @Override
    public double limit(Wall wall) {
        return 2 * wall.inner();
    }

    @Override
    public double reach(Wall wall) {
        return diameter / 2;
    }

    @Override
    public List<Rim> rims(Wall wall) {
        return List.of(rim(wall.inner()), rim(wall.outer()));
    }

    private Rim rim(double radius) {
        double p = diameter / 2;
        return turn -> Rim.on(radius, p * StrictMath.sin(turn), p * StrictMath.cos(turn));
    }
}
