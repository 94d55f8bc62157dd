package collarwright.assembly;

import collarwright.dome.Dome;
import collarwright.hub.Hubs;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Every member of a frame with its two ends. Members that join the same holes of the same hub types share one joint.
 *
 * @param hubs the frame
 * @param kinds all different joints
 * @param kindOfMember index of each member's joint
 */
record Joints(Hubs hubs, List<Joint> kinds, List<Integer> kindOfMember) {

    static Joints of(Hubs hubs, List<HubTravel> travels, List<Double> lengths) {
        Dome dome = hubs.dome();
        Map<Long, Integer> known = new HashMap<>();
        List<Joint> kinds = new ArrayList<>();
        List<Integer> kindOfMember = new ArrayList<>(dome.memberCount());
        for (int m = 0; m < dome.memberCount(); m++) {
            int typeA = hubs.typeOf(hubs.nodeAtA(m));
            int typeB = hubs.typeOf(hubs.nodeAtB(m));
            int holeA = hubs.holeAtA(m) - 1;
            int holeB = hubs.holeAtB(m) - 1;
            double length = lengths.get(hubs.strutTypeOf(m));
            long key = ((long) typeA * hubs.types().size() + typeB) * 256 + holeA * 16L + holeB;
            Integer kind = known.get(key);
            if (kind == null) {
                kind = kinds.size();
                kinds.add(Joint.of(travels.get(typeA), holeA, travels.get(typeB), holeB, length));
                known.put(key, kind);
            }
            kindOfMember.add(kind);
        }
        return new Joints(hubs, kinds, kindOfMember);
    }

    Joint of(int member) {
        return kinds.get(kindOfMember.get(member));
    }

    int count() {
        return kindOfMember.size();
    }
}
