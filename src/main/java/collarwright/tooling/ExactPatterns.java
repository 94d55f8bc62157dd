package collarwright.tooling;

import collarwright.collar.CollarBody;
import collarwright.collar.Heights;
import collarwright.geometry.Interval;
import collarwright.hub.HubStrut;
import collarwright.hub.HubType;
import collarwright.hub.Hubs;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import collarwright.units.Ids;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** One pattern for every hub type, or for all that drill the same where collars may be put on upside down. */
final class ExactPatterns {

    private ExactPatterns() {}

    static PatternBook book(Hubs hubs, CollarBody body, Interval strut, DrillingSettings drilling, Heights heights) {
        List<PatternBook.Asked> asked = asked(hubs, body, strut);
        List<CutterNeed> needs = asked.stream().map(a -> a.of(drilling)).toList();
        List<HoleSize> byEnd = byEnd(hubs, body, strut, CutterChoice.narrowed(needs, drilling));
        List<PatternBook.Sized> sizes = new ArrayList<>();
        for (int end = 0; end < byEnd.size(); end++) {
            if (end % 2 == 0 || !byEnd.get(end).equals(byEnd.get(end - 1))) {
                sizes.add(new PatternBook.Sized(
                        place(end / 2, byEnd.get(end).need().lean()), byEnd.get(end)));
            }
        }
        boolean complete = byEnd.stream().allMatch(s -> s.cutter().isPresent());
        Drillings drillings = Drillings.of(hubs, body.midRadius(), heights, drilling.flip());
        List<Pattern> patterns = complete ? patterns(hubs, byEnd, body, drillings) : List.of();
        return new PatternBook(sizes, patterns, drillings.placements(), Optional.empty(), asked);
    }

    private static String place(int type, double axialAngle) {
        return "hole for strut " + Ids.letters('S', type) + " (axial angle "
                + Decimals.fixed(Angles.degrees(StrictMath.abs(axialAngle)), 2) + "°)";
    }

    static List<HoleSize> byEnd(Hubs hubs, CollarBody body, Interval strut, DrillingSettings drilling) {
        List<HoleSize> byEnd = new ArrayList<>();
        for (var shape : hubs.strutShapes()) {
            HoleSize first = size(shape.axialA(), body, strut, drilling);
            byEnd.add(first);
            byEnd.add(shape.axialA() == shape.axialB() ? first : size(shape.axialB(), body, strut, drilling));
        }
        return byEnd;
    }

    // One need for each lean that occurs, the least first, with the number of its holes in one dome.
    private static List<PatternBook.Asked> asked(Hubs hubs, CollarBody body, Interval strut) {
        Map<Double, Integer> holes = new TreeMap<>();
        for (var shape : hubs.strutShapes()) {
            // + 0.0: a lean of -0 is one of 0.
            holes.merge(StrictMath.abs(shape.axialA()) + 0.0, shape.count(), Integer::sum);
            holes.merge(StrictMath.abs(shape.axialB()) + 0.0, shape.count(), Integer::sum);
        }
        List<PatternBook.Asked> asked = new ArrayList<>();
        holes.forEach((lean, count) -> {
            HoleNeed need = new HoleNeed(body, strut, lean);
            asked.add(new PatternBook.Asked(need, need.required(), count));
        });
        return asked;
    }

    private static HoleSize size(double axialAngle, CollarBody body, Interval strut, DrillingSettings drilling) {
        return HoleSize.choose(new HoleNeed(body, strut, StrictMath.abs(axialAngle)), drilling);
    }

    private static List<Pattern> patterns(Hubs hubs, List<HoleSize> byEnd, CollarBody body, Drillings drillings) {
        List<Hole> models = models(byEnd);
        List<Pattern> patterns = new ArrayList<>();
        for (Drillings.Drilling drilling : drillings.all()) {
            HubType type = hubs.types().get(drilling.type());
            HoleCycle cycle = drilling.cycle();
            List<Hole> holes = new ArrayList<>();
            for (int at = 0; at < cycle.size(); at++) {
                HubStrut strut = type.struts().get(cycle.strut(drilling.reading(), at));
                Hole model = models.get(2 * strut.strutType() + strut.tip().index());
                holes.add(
                        model.at(at + 1, cycle.azimuth(drilling.reading(), at), cycle.height(drilling.reading(), at)));
            }
            int index = patterns.size();
            int count = Placement.collars(hubs, drillings.placements(), index);
            patterns.add(new Pattern(Ids.letters('C', index), count, holes, PatternBook.fingerprint(body, holes)));
        }
        return patterns;
    }

    private static List<Hole> models(List<HoleSize> byEnd) {
        List<Hole> models = new ArrayList<>(byEnd.size());
        for (int i = 0; i < byEnd.size(); i++) {
            boolean alike = i % 2 != 0 && byEnd.get(i).equals(byEnd.get(i - 1));
            models.add(alike ? models.get(i - 1) : byEnd.get(i).at(1, 0));
        }
        return models;
    }
}
