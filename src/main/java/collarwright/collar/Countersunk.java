package collarwright.collar;

import collarwright.collar.SwungContact.Wall;
import collarwright.geometry.Vec3;
import java.util.List;

/**
 * A round hole with a cone of 45° driven straight in from outside, from inside, or both. The pipe is curved and the cone is
 * not: from outside it eases the hole fully only at its top and bottom and less, or nothing, at its sides; from inside it
 * cuts more at the sides. A strut meets the edge where cone and hole meet; up to a lean of 45° it never meets the mouth.
 *
 * @param diameter of the hole
 * @param outside how far up and down the cone's mouth reaches on the outside, at least the diameter; the diameter if there
 *     is no cone
 * @param inside the same on the inside
 */
public record Countersunk(double diameter, double outside, double inside) implements Aperture {

    private static final double STEEP = StrictMath.PI / 4;

    @Override
    public double size() {
        return diameter;
    }

    @Override
    public Aperture withSize(double other) {
        return new Countersunk(other, outside == diameter ? other : outside, inside == diameter ? other : inside);
    }

    // The cone's end from outside: as deep below the crown as its mouth is wider than the hole.
    private double outerEnd(Wall wall) {
        return wall.outer() - (outside - diameter) / 2;
    }

    private double innerEnd(Wall wall) {
        return wall.inner() + (inside - diameter) / 2;
    }

    // Some of the wall has to stay between the cones, at the sides too.
    @Override
    public boolean goesThrough(Wall wall) {
        double p = diameter / 2;
        double side = StrictMath.sqrt(StrictMath.max(0, wall.outer() * wall.outer() - p * p));
        return Aperture.super.goesThrough(wall)
                && outside >= diameter
                && inside >= diameter
                && innerEnd(wall) < StrictMath.min(outerEnd(wall), inside > diameter ? side : wall.outer())
                && outerEnd(wall) > wall.inner();
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
    public double mostLean(Wall wall) {
        return StrictMath.min(STEEP, Aperture.super.mostLean(wall));
    }

    @Override
    public List<Rim> rims(Wall wall) {
        double p = diameter / 2;
        double inner = innerEnd(wall);
        double outer = outerEnd(wall);
        Rim outerRim = turn -> cut(wall.outer(), p, turn, 0, outer);
        Rim innerRim = turn -> cut(wall.inner(), p, turn, inner, wall.outer());
        return List.of(
                inside > diameter
                        ? innerRim
                        : new RoundAperture(diameter).rims(wall).get(0),
                outerRim);
    }

    private static Vec3 cut(double radius, double p, double turn, double least, double most) {
        Vec3 plain = Rim.on(radius, p * StrictMath.sin(turn), p * StrictMath.cos(turn));
        return new Vec3(StrictMath.max(least, StrictMath.min(most, plain.x())), plain.y(), plain.z());
    }
}
