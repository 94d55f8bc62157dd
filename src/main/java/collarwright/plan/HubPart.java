package collarwright.plan;

import collarwright.collar.HubSettings;
import collarwright.hub.HubType;
import collarwright.strut.StrutLayout;
import collarwright.strut.StrutType;
import collarwright.tooling.Pattern;

/** One hub type with everything that was laid out for it. */
record HubPart(HubType type, Pattern pattern, StrutLayout struts, HubSettings settings) {

    int size() {
        return type.struts().size();
    }

    StrutType strut(int hole) {
        return struts.types().get(type.struts().get(hole).strutType());
    }

    // On a sphere both ends of a strut are alike.
    double setback(int hole) {
        return strut(hole).a().setback();
    }

    double axialAngle(int hole) {
        return type.struts().get(hole).axialAngle();
    }

    double largestDiameter(int hole) {
        return pattern.holes().get(hole).cutter().asDrilled().max();
    }
}
