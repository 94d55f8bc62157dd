package collarwright.tooling;

import collarwright.collar.CollarBody;
import collarwright.geometry.Interval;
import collarwright.hub.HubStrut;
import collarwright.hub.HubType;
import collarwright.hub.Hubs;
import collarwright.hub.StrutTip;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import collarwright.units.Ids;
import collarwright.units.Letters;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The patterns of a job: which holes every hub type gets.
 *
 * @param sizes the size of the hole for both ends of each strut type, end a before end b, in the order of the strut types
 * @param patterns one for each hub type, in the same order; empty if a hole has no cutter
 */
public record PatternBook(List<HoleSize> sizes, List<Pattern> patterns) {

    /** Keeps the lists. */
    public PatternBook {
        sizes = List.copyOf(sizes);
        patterns = List.copyOf(patterns);
    }

    /**
     * Sizes the holes and lays out one pattern for every hub type.
     *
     * @param hubs the hubs
     * @param body the collar
     * @param strut strut diameter with its limits
     * @param drilling cutters and the rule of choice
     * @return the book
     */
    public static PatternBook of(Hubs hubs, CollarBody body, Interval strut, DrillingSettings drilling) {
        DrillingSettings settings = drilling.mostCutters().isEmpty()
                ? drilling
                : CutterChoice.narrowed(needs(hubs, body, strut, drilling), drilling);
        List<HoleSize> sizes = new ArrayList<>();
        for (var shape : hubs.strutShapes()) {
            HoleSize first = size(shape.axialA(), body, strut, settings);
            sizes.add(first);
            sizes.add(shape.axialA() == shape.axialB() ? first : size(shape.axialB(), body, strut, settings));
        }
        boolean complete = sizes.stream().allMatch(s -> s.cutter().isPresent());
        return new PatternBook(sizes, complete ? patterns(hubs, sizes, body) : List.of());
    }

    private static HoleSize size(double axialAngle, CollarBody body, Interval strut, DrillingSettings drilling) {
        return HoleSize.choose(new HoleNeed(body, strut, StrictMath.abs(axialAngle)), drilling);
    }

    /**
     * States what all holes ask of the cutters.
     *
     * @param hubs the hubs
     * @param body the collar
     * @param strut strut diameter with its limits
     * @param drilling the rule of choice
     * @return one need for each lean that occurs, the least first, with the number of its holes in one dome
     */
    public static List<CutterNeed> needs(Hubs hubs, CollarBody body, Interval strut, DrillingSettings drilling) {
        Map<Double, Integer> holes = new TreeMap<>();
        for (var shape : hubs.strutShapes()) {
            // + 0.0: a lean of -0 is one of 0.
            holes.merge(StrictMath.abs(shape.axialA()) + 0.0, shape.count(), Integer::sum);
            holes.merge(StrictMath.abs(shape.axialB()) + 0.0, shape.count(), Integer::sum);
        }
        List<CutterNeed> needs = new ArrayList<>();
        holes.forEach((lean, count) -> needs.add(CutterNeed.of(new HoleNeed(body, strut, lean), count, drilling)));
        return needs;
    }

    /**
     * Returns the size of the hole for an end of a strut.
     *
     * @param strutType index of the strut type
     * @param tip which end
     * @return its size
     */
    public HoleSize size(int strutType, StrutTip tip) {
        return sizes.get(2 * strutType + tip.index());
    }

    private static List<Pattern> patterns(Hubs hubs, List<HoleSize> sizes, CollarBody body) {
        List<Hole> models = models(sizes);
        List<Pattern> patterns = new ArrayList<>();
        for (HubType type : hubs.types()) {
            List<Hole> holes = new ArrayList<>();
            for (HubStrut strut : type.struts()) {
                holes.add(placed(
                        models.get(2 * strut.strutType() + strut.tip().index()), holes.size() + 1, strut.azimuth()));
            }
            String id = Ids.letters('C', patterns.size());
            patterns.add(new Pattern(id, type.count(), holes, fingerprint(body, holes)));
        }
        return patterns;
    }

    private static List<Hole> models(List<HoleSize> sizes) {
        List<Hole> models = new ArrayList<>(sizes.size());
        for (int i = 0; i < sizes.size(); i++) {
            boolean alike = i % 2 != 0 && sizes.get(i).equals(sizes.get(i - 1));
            models.add(alike ? models.get(i - 1) : sizes.get(i).at(1, 0));
        }
        return models;
    }

    private static Hole placed(Hole model, int number, double azimuth) {
        return new Hole(
                number,
                azimuth,
                model.height(),
                model.neededLean(),
                model.required(),
                model.cutter(),
                model.tiltLimit(),
                model.tiltMin(),
                model.tiltMax());
    }

    // What a drill press needs to make the collar, and nothing of the dome's size, so that batches can be joined.
    private static String fingerprint(CollarBody body, List<Hole> holes) {
        StringBuilder text = new StringBuilder()
                .append(Decimals.fixed(2 * body.outerRadius(), 4))
                .append(' ')
                .append(Decimals.fixed(body.wall().nominal(), 4))
                .append(' ')
                .append(Decimals.fixed(body.width(), 4));
        if (body.rims() > 0) {
            text.append(" rims ").append(Decimals.fixed(body.rims(), 4));
        }
        for (Hole hole : holes) {
            text.append('\n')
                    .append(Decimals.fixed(Angles.degrees(hole.azimuth()), 6))
                    .append(' ')
                    .append(Decimals.fixed(hole.height(), 4))
                    .append(' ')
                    .append(Decimals.fixed(hole.diameter(), 4));
        }
        return Letters.of(text.toString());
    }

    /**
     * Counts the holes of a dome by cutter.
     *
     * @return holes per cutter id in one dome, by id
     */
    public Map<String, Integer> holesByCutter() {
        Map<String, Integer> counts = new TreeMap<>();
        for (Pattern pattern : patterns) {
            for (Hole hole : pattern.holes()) {
                counts.merge(hole.cutter().id(), pattern.count(), Integer::sum);
            }
        }
        return counts;
    }
}
