package collarwright.strut;

import collarwright.dome.Dome;
import collarwright.hub.Hubs;
import collarwright.hub.StrutShape;
import collarwright.units.Ids;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The struts of a dome with their lengths, and the size of the dome that goes with them.
 *
 * <p>Setbacks do not depend on the dome's size, so the radius follows from them without iteration.
 *
 * @param radius of the sphere, centre to node
 * @param types shortest first, one for every strut shape of the hubs and in the same order
 */
public record StrutLayout(double radius, List<StrutType> types) {

    /** Keeps the types. */
    public StrutLayout {
        types = List.copyOf(types);
    }

    /**
     * What the ends of struts have to keep clear of.
     *
     * @param ringRadius outside radius of the centre ring
     * @param endGap least distance of an end face from it
     */
    public record Clearance(double ringRadius, double endGap) {}

    /**
     * Sizes the dome and cuts its struts.
     *
     * @param hubs the hubs
     * @param rule what fixes the size
     * @param settings strut stock and tie hole
     * @param clearance what the ends keep clear of
     * @return the layout; a cut length may come out at 0 or below, which is for a check to find
     */
    public static StrutLayout of(Hubs hubs, SizeRule rule, StrutSettings settings, Clearance clearance) {
        double strut = settings.stock().od().max();
        List<StrutShape> shapes = hubs.strutShapes();
        List<Double> setbacks = new ArrayList<>();
        for (StrutShape shape : shapes) {
            setbacks.add(Setbacks.clearOfRing(clearance.ringRadius(), clearance.endGap(), strut, shape.axialAngle()));
        }
        double radius = radius(hubs, rule, setbacks);
        Optional<Double> drill = settings.tieHole().map(TieHole::fromEnd);
        List<StrutType> types = new ArrayList<>();
        for (int i = 0; i < shapes.size(); i++) {
            double chord = radius * shapes.get(i).chordFactor();
            StrutEnd end = new StrutEnd(shapes.get(i).axialAngle(), setbacks.get(i), drill);
            // Both hub axes of a sphere lie in one plane with the strut, so its two tie holes are parallel: no twist.
            types.add(new StrutType(
                    Ids.letters('S', i), shapes.get(i).count(), chord, chord - 2 * setbacks.get(i), 0, end, end));
        }
        return new StrutLayout(radius, types);
    }

    private static double radius(Hubs hubs, SizeRule rule, List<Double> setbacks) {
        Dome dome = hubs.dome();
        if (rule instanceof SizeRule.Radius r) {
            return r.value();
        }
        if (rule instanceof SizeRule.FloorDiameter f) {
            if (dome.footRadius() == 0) {
                throw new IllegalArgumentException("a whole sphere has no floor");
            }
            return f.value() / 2 / dome.footRadius();
        }
        if (rule instanceof SizeRule.Height h) {
            return h.value() / (1 - dome.footZ());
        }
        // The strut type that is cut longest governs: none may be longer than asked.
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < setbacks.size(); i++) {
            double chordFactor = hubs.strutShapes().get(i).chordFactor();
            least = StrictMath.min(least, (rule.value() + 2 * setbacks.get(i)) / chordFactor);
        }
        return least;
    }
}
