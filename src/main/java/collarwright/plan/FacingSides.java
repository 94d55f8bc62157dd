package collarwright.plan;

import collarwright.dome.Dome;
import collarwright.dome.FrameSettings;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Finds hubs of a frame from outside whose collars' TOP faces the other side than that of their neighbours. */
final class FacingSides {

    /** Members that tell less than this of the sides of their ends tell nothing. Our choice, no source. */
    private static final double CLEAR = 0.1;

    private final Dome dome;
    private final Set<Integer> given;

    private FacingSides(Dome dome, FrameSettings settings) {
        this.dome = dome;
        // Hubs keep their places when others are left out.
        Set<Integer> places =
                settings.axes().stream().map(one -> one.node() + 1).collect(Collectors.toSet());
        this.given = IntStream.range(0, dome.nodeCount())
                .filter(node -> places.contains(dome.placeOf(node)))
                .boxed()
                .collect(Collectors.toSet());
    }

    static List<Finding> of(Dome dome, FrameSettings settings) {
        return new FacingSides(dome, settings).look();
    }

    private List<Finding> look() {
        List<Finding> findings = new ArrayList<>();
        Set<Integer> against = against();
        if (!against.isEmpty()) {
            findings.add(Finding.warn(
                    Code.HUB_AXIS,
                    new Where.Part(named(against)),
                    "a given axis that faces the side that its neighbours face",
                    "it faces the other side",
                    "turn its sign in axes if the collar's TOP is not meant to lie inside the frame"));
        }
        TreeSet<Integer> torn = new TreeSet<>();
        for (int m = 0; m < dome.memberCount(); m++) {
            int a = dome.memberA(m);
            int b = dome.memberB(m);
            if (dome.facing(m) < -CLEAR && !against.contains(a) && !against.contains(b)) {
                torn.add(a);
                torn.add(b);
            }
        }
        if (!torn.isEmpty()) {
            findings.add(Finding.warn(
                    Code.HUB_AXIS,
                    new Where.Part(named(torn)),
                    "a frame with two sides: neighbours whose collars face one of them",
                    "neighbours that face opposite sides, as on a twisted band",
                    "check which way up these collars go, or give their axes"));
        }
        return findings;
    }

    private String named(Set<Integer> nodes) {
        return FrameShape.named(dome, nodes.stream().mapToInt(Integer::intValue).toArray());
    }

    // Given axes that most of their hub's members contradict.
    private Set<Integer> against() {
        int[] votes = new int[dome.nodeCount()];
        for (int m = 0; m < dome.memberCount(); m++) {
            double facing = dome.facing(m);
            int vote = facing < -CLEAR ? 1 : facing > CLEAR ? -1 : 0;
            votes[dome.memberA(m)] += vote;
            votes[dome.memberB(m)] += vote;
        }
        return given.stream().filter(node -> votes[node] > 0).collect(Collectors.toCollection(TreeSet::new));
    }
}
