package collarwright.plan;

import collarwright.collar.HubSettings;
import collarwright.hub.HubType;
import collarwright.strut.StrutLayout;
import collarwright.strut.StrutType;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import java.util.Optional;

/**
 * One hub type with everything that was laid out for it.
 *
 * @param id its pattern's name
 * @param pattern its holes; empty where one of them has no cutter
 */
record HubPart(HubType type, String id, Optional<Pattern> pattern, StrutLayout struts, HubSettings settings) {

    static HubPart of(HubType type, Pattern pattern, StrutLayout struts, HubSettings settings) {
        return new HubPart(type, pattern.id(), Optional.of(pattern), struts, settings);
    }

    Hole hole(int hole) {
        return pattern.orElseThrow().holes().get(hole);
    }

    int size() {
        return type.struts().size();
    }

    StrutType strut(int hole) {
        return struts.types().get(type.struts().get(hole).strutType());
    }

    double setback(int hole) {
        return strut(hole).end(type.struts().get(hole).tip()).setback();
    }

    double axialAngle(int hole) {
        return type.struts().get(hole).axialAngle();
    }

    double largestDiameter(int hole) {
        return hole(hole).cutter().asDrilled().max();
    }
}
