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

/** One pattern for every hub type. */
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
        List<Pattern> patterns = complete ? patterns(hubs, byEnd, body, heights) : List.of();
        return new PatternBook(sizes, patterns, placements(hubs), Optional.empty(), asked);
    }

    static List<Placement> placements(Hubs hubs) {
        List<Placement> placements = new ArrayList<>();
        for (HubType type : hubs.types()) {
            placements.add(Placement.own(placements.size(), type.struts().size()));
        }
        return placements;
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

    private static List<Pattern> patterns(Hubs hubs, List<HoleSize> byEnd, CollarBody body, Heights heights) {
        List<Hole> models = models(byEnd);
        List<Pattern> patterns = new ArrayList<>();
        for (HubType type : hubs.types()) {
            List<Double> tilts =
                    type.struts().stream().map(HubStrut::axialAngle).toList();
            List<Double> lifted = heights.of(body.midRadius(), tilts);
            List<Hole> holes = new ArrayList<>();
            for (HubStrut strut : type.struts()) {
                Hole model = models.get(2 * strut.strutType() + strut.tip().index());
                int hole = holes.size();
                holes.add(model.at(hole + 1, strut.azimuth(), lifted.get(hole)));
            }
            String id = Ids.letters('C', patterns.size());
            patterns.add(new Pattern(id, type.count(), holes, PatternBook.fingerprint(body, holes)));
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
