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
import java.util.Optional;

/** One pattern for every hub type. */
final class ExactPatterns {

    private ExactPatterns() {}

    static PatternBook book(Hubs hubs, CollarBody body, Interval strut, DrillingSettings drilling, Heights heights) {
        List<HoleSize> byEnd = new ArrayList<>();
        List<PatternBook.Sized> sizes = new ArrayList<>();
        for (var shape : hubs.strutShapes()) {
            int type = byEnd.size() / 2;
            HoleSize first = size(shape.axialA(), body, strut, drilling);
            byEnd.add(first);
            sizes.add(new PatternBook.Sized(place(type, shape.axialA()), first));
            if (shape.axialA() == shape.axialB()) {
                byEnd.add(first);
            } else {
                HoleSize second = size(shape.axialB(), body, strut, drilling);
                byEnd.add(second);
                sizes.add(new PatternBook.Sized(place(type, shape.axialB()), second));
            }
        }
        boolean complete = byEnd.stream().allMatch(s -> s.cutter().isPresent());
        List<Pattern> patterns = complete ? patterns(hubs, byEnd, body, heights) : List.of();
        return new PatternBook(sizes, patterns, placements(hubs), Optional.empty());
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
