package collarwright.tooling;

import collarwright.collar.StrutLine;
import collarwright.hub.Hubs;
import collarwright.strut.StrutLayout;
import collarwright.strut.StrutType;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Finds the joints of a dome, and the lines of their struts when hub types share patterns. */
final class Joints {

    private Joints() {}

    /** The joints without their lines: those of the ideal strut. */
    private record Key(int strutType, Joint.At a, Joint.At b) {}

    /**
     * Lays the struts through their holes.
     *
     * @param hubs the hubs
     * @param struts the struts
     * @param midRadius radius of the middle of the collar's wall
     * @param errors azimuth of a hole less that of its strut, by hub type and strut
     * @return all joints, in the order of the members
     */
    static List<Joint> of(Hubs hubs, StrutLayout struts, double midRadius, List<double[]> errors) {
        Map<Key, Integer> counts = new LinkedHashMap<>();
        for (int member = 0; member < hubs.dome().memberCount(); member++) {
            Joint.At a = new Joint.At(hubs.typeOf(hubs.nodeAtA(member)), hubs.holeAtA(member) - 1);
            Joint.At b = new Joint.At(hubs.typeOf(hubs.nodeAtB(member)), hubs.holeAtB(member) - 1);
            counts.merge(new Key(hubs.strutTypeOf(member), a, b), 1, Integer::sum);
        }
        List<Joint> joints = new ArrayList<>(counts.size());
        counts.forEach((key, count) -> {
            StrutType type = struts.types().get(key.strutType());
            StrutLine.Ideal ideal = new StrutLine.Ideal(
                    type.chord(), type.a().axialAngle(), type.b().axialAngle(), type.twist());
            double errorA = errors.get(key.a().hubType())[key.a().strut()];
            double errorB = errors.get(key.b().hubType())[key.b().strut()];
            StrutLine line = StrutLine.of(ideal, midRadius, errorA, errorB);
            joints.add(new Joint(key.strutType(), key.a(), key.b(), count, line));
        });
        return joints;
    }
}
