package collarwright.collar;

import collarwright.collar.SwungContact.Wall;
import java.util.List;

/**
 * A slot with round ends, milled straight in: every cut of it square to the radial line through its centre is the same.
 *
 * @param width across, the cutter's diameter
 * @param length from end to end, at least the width
 * @param around whether it runs round the collar; else along its axis
 */
public record Slot(double width, double length, boolean around) implements Aperture {

    @Override
    public double size() {
        return width;
    }

    @Override
    public Aperture withSize(double other) {
        return new Slot(other, length, around);
    }

    @Override
    public double limit(Wall wall) {
        // A slot as long as it is wide is still one.
        double whole = length * (1 + 1e-12);
        return around ? whole : StrictMath.min(whole, 2 * wall.inner());
    }

    @Override
    public double reach(Wall wall) {
        return (around ? length : width) / 2;
    }

    @Override
    public List<Rim> rims(Wall wall) {
        return List.of(rim(wall.inner()), rim(wall.outer()));
    }

    // From the middle of one end, at even speed: a quarter of a round end, a side, a round end, a side, a quarter.
    private Rim rim(double radius) {
        double p = width / 2;
        double straight = length - width;
        double round = StrictMath.PI * p;
        double whole = 2 * (round + straight);
        return turn -> {
            double way = turn / (2 * StrictMath.PI) * whole;
            boolean back = way > whole / 2;
            double half = back ? whole - way : way;
            double along;
            double aside;
            if (half <= round / 2) {
                along = straight / 2 + p * StrictMath.cos(half / p);
                aside = p * StrictMath.sin(half / p);
            } else if (half <= round / 2 + straight) {
                along = straight / 2 - (half - round / 2);
                aside = p;
            } else {
                along = -straight / 2 + p * StrictMath.cos((half - straight) / p);
                aside = p * StrictMath.sin((half - straight) / p);
            }
            double side = back ? -aside : aside;
            return around ? Rim.on(radius, along, side) : Rim.on(radius, side, along);
        };
    }
}
