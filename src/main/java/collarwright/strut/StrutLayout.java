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
 * @param radius of the sphere, centre to node; in general, mm of the dome's unit
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
     * @param hubs the hubs of the shell, without risers and openings
     * @param rule what fixes the size
     * @param settings strut stock and tie hole
     * @param clearance what the ends keep clear of
     * @return the layout; a cut length may come out at 0 or below, which is for a check to find
     */
    public static StrutLayout of(Hubs hubs, SizeRule rule, StrutSettings settings, Clearance clearance) {
        return of(hubs, radius(hubs, rule, settings, clearance), settings, clearance);
    }

    /**
     * Cuts the struts of a dome of known size.
     *
     * @param hubs the hubs
     * @param radius mm of the dome's unit
     * @param settings strut stock and tie hole
     * @param clearance what the ends keep clear of
     * @return the layout; a cut length may come out at 0 or below, which is for a check to find
     */
    public static StrutLayout of(Hubs hubs, double radius, StrutSettings settings, Clearance clearance) {
        Optional<Double> drill = settings.tieHole().map(TieHole::fromEnd);
        List<StrutType> types = new ArrayList<>();
        for (StrutShape shape : hubs.strutShapes()) {
            double chord = radius * shape.chordFactor();
            StrutEnd a = new StrutEnd(shape.axialA(), setback(settings, clearance, shape.axialA()), drill);
            StrutEnd b = new StrutEnd(shape.axialB(), setback(settings, clearance, shape.axialB()), drill);
            double cut = chord - a.setback() - b.setback();
            types.add(new StrutType(Ids.letters('S', types.size()), shape.count(), chord, cut, shape.twist(), a, b));
        }
        return new StrutLayout(radius, types);
    }

    private static double setback(StrutSettings settings, Clearance clearance, double axialAngle) {
        double strut = settings.stock().od().max();
        return Setbacks.clearOfRing(clearance.ringRadius(), clearance.endGap(), strut, axialAngle);
    }

    private static double radius(Hubs hubs, SizeRule rule, StrutSettings settings, Clearance clearance) {
        Dome dome = hubs.dome();
        if (rule instanceof SizeRule.Radius || rule instanceof SizeRule.AsDrawn) {
            return rule.value();
        }
        if (rule instanceof SizeRule.FloorDiameter f) {
            if (dome.footRadius() == 0) {
                throw new IllegalArgumentException("a whole sphere has no floor");
            }
            return f.value() / 2 / dome.footRadius();
        }
        if (rule instanceof SizeRule.Height h) {
            return h.value() / (dome.highestZ() - dome.lowestZ());
        }
        // The strut type that is cut longest governs: none may be longer than asked.
        double least = Double.POSITIVE_INFINITY;
        for (StrutShape shape : hubs.strutShapes()) {
            double ends = setback(settings, clearance, shape.axialA()) + setback(settings, clearance, shape.axialB());
            least = StrictMath.min(least, (rule.value() + ends) / shape.chordFactor());
        }
        return least;
    }
}
