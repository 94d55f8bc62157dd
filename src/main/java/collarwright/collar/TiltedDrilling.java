package collarwright.collar;

import collarwright.collar.SwungContact.Wall;
import collarwright.geometry.Vec3;
import java.util.List;

/**
 * A round hole that is drilled off the radial line: the pipe lies in a jig that is tilted on the press, or is turned a
 * little about its own axis. The drill's axis passes through the middle of the wall on the radial line.
 *
 * <p>Each line of the bore, parallel to the drill, meets the cylinder of radius R where {@code (x² + y²) = R²}.
 *
 * @param diameter of the drill
 * @param drill where the drill's axis points, outward, as a strut would
 */
public record TiltedDrilling(double diameter, Direction drill) implements Aperture {

    @Override
    public double size() {
        return diameter;
    }

    @Override
    public Aperture withSize(double other) {
        return new TiltedDrilling(other, drill);
    }

    // The bore's lines pass the collar's axis at |middle·sin(swing)| ± the radius.
    private double offset(Wall wall) {
        return wall.middle() * StrictMath.abs(StrictMath.sin(drill.swing()));
    }

    @Override
    public double limit(Wall wall) {
        return 2 * (wall.inner() - offset(wall));
    }

    @Override
    public double reach(Wall wall) {
        return offset(wall) + diameter / 2;
    }

    @Override
    public Direction axis() {
        return drill;
    }

    @Override
    public List<Rim> rims(Wall wall) {
        return List.of(rim(wall.middle(), wall.inner()), rim(wall.middle(), wall.outer()));
    }

    private Rim rim(double middle, double radius) {
        Vec3 along = drill.line();
        Vec3 up = drill.upright();
        Vec3 side = drill.sideways();
        double p = diameter / 2;
        return turn -> {
            Vec3 from = new Vec3(middle, 0, 0)
                    .plus(up.times(p * StrictMath.cos(turn)))
                    .plus(side.times(p * StrictMath.sin(turn)));
            double a = along.x() * along.x() + along.y() * along.y();
            double b = from.x() * along.x() + from.y() * along.y();
            double c = from.x() * from.x() + from.y() * from.y() - radius * radius;
            return from.plus(along.times((StrictMath.sqrt(b * b - a * c) - b) / a));
        };
    }
}
