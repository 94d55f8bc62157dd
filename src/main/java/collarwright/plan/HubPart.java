package collarwright.plan;

import collarwright.collar.HubSettings;
import collarwright.collar.NodeOffset;
import collarwright.collar.StrutLine;
import collarwright.hub.HubStrut;
import collarwright.hub.HubType;
import collarwright.hub.Hubs;
import collarwright.strut.StrutLayout;
import collarwright.strut.StrutType;
import collarwright.tooling.Hole;
import collarwright.tooling.Joint;
import collarwright.tooling.Pattern;
import collarwright.tooling.PatternBook;
import collarwright.tooling.Placement;
import collarwright.units.Ids;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One hub type on its pattern, with everything that was laid out for it.
 *
 * @param type the hub type
 * @param id its name
 * @param placement how it sits on its pattern
 * @param pattern its pattern; empty where a hole has no cutter
 * @param shares whether hub types share patterns, so that the pattern does not say which hub type it is
 * @param heights of its struts' holes from the mid-plane, + away from the inside of the dome, by strut
 * @param lines the lines that its struts take, by strut; empty lists where they go straight to the nodes
 * @param struts all struts
 * @param settings what the hub is made of
 */
record HubPart(
        HubType type,
        String id,
        Placement placement,
        Optional<Pattern> pattern,
        boolean shares,
        List<Double> heights,
        List<List<Line>> lines,
        StrutLayout struts,
        HubSettings settings) {

    HubPart {
        heights = List.copyOf(heights);
        lines = List.copyOf(lines);
    }

    /**
     * A line that a strut takes through its hole.
     *
     * @param end where it points and where it passes the hub's axis
     * @param growth how much longer it is from hub to hub than the strut's chord
     */
    record Line(StrutLine.End end, double growth) {}

    /** All hub types of a plan, in their order. */
    static List<HubPart> all(Hubs hubs, StrutLayout struts, PatternBook book, HubSettings settings) {
        List<List<List<Line>>> lines = new ArrayList<>();
        for (HubType type : hubs.types()) {
            List<List<Line>> own = new ArrayList<>();
            type.struts().forEach(s -> own.add(new ArrayList<>()));
            lines.add(own);
        }
        book.sharing()
                .ifPresent(sharing -> sharing.joints().forEach(joint -> {
                    add(
                            lines,
                            joint.a(),
                            new Line(joint.line().a(), joint.line().growth()));
                    add(
                            lines,
                            joint.b(),
                            new Line(joint.line().b(), joint.line().growth()));
                }));
        List<HubPart> parts = new ArrayList<>();
        for (int i = 0; i < hubs.types().size(); i++) {
            HubType type = hubs.types().get(i);
            Placement placement = book.placements().get(i);
            Optional<Pattern> pattern = book.patterns().isEmpty()
                    ? Optional.empty()
                    : Optional.of(book.patterns().get(placement.pattern()));
            List<Double> tilts =
                    type.struts().stream().map(HubStrut::axialAngle).toList();
            List<Double> heights = pattern.map(p -> placement.holes().stream()
                            .map(hole -> placement.outward(p.holes().get(hole).height()))
                            .toList())
                    .orElseGet(() -> settings.heights().of(settings.body().midRadius(), tilts));
            parts.add(new HubPart(
                    type,
                    Ids.letters('H', i),
                    placement,
                    pattern,
                    book.hubsShare(),
                    heights,
                    lines.get(i),
                    struts,
                    settings));
        }
        return parts;
    }

    private static void add(List<List<List<Line>>> lines, Joint.At at, Line line) {
        lines.get(at.hubType()).get(at.strut()).add(line);
    }

    /** How the collar sits below its node. */
    NodeOffset offset() {
        List<Double> tilts = type.struts().stream().map(HubStrut::axialAngle).toList();
        return NodeOffset.of(settings.body().midRadius(), tilts, heights);
    }

    String patternId() {
        return Ids.letters('C', placement.pattern());
    }

    Hole hole(int strut) {
        return pattern.orElseThrow().holes().get(placement.holes().get(strut));
    }

    int size() {
        return type.struts().size();
    }

    StrutType strut(int strut) {
        return struts.types().get(type.struts().get(strut).strutType());
    }

    double setback(int strut) {
        return strut(strut).end(type.struts().get(strut).tip()).setback();
    }

    double axialAngle(int strut) {
        return type.struts().get(strut).axialAngle();
    }

    double largestDiameter(int strut) {
        return hole(strut).cutter().asDrilled().max();
    }
}
