package collarwright.assembly;

import collarwright.assembly.RaisingStep.Way;
import collarwright.hub.Hubs;
import java.util.ArrayList;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.IntConsumer;

/**
 * Puts steps that can be done in one order into the order in which people would do them: by the hub that is raised later,
 * its strut to the hub raised first before the others. It keeps what matters: the strut that a hub comes with is that
 * hub's first, and a strut that is pushed into a collar goes in before those that would be in its way there.
 */
final class Sequencing {

    private final Hubs hubs;
    private final Links links;
    private final int[] order;
    private final int[] place;
    private final RaisingStep[] stepOf;
    private final int[] before;
    private final boolean[] stands;
    private final List<List<Integer>> parked;
    private final PriorityQueue<Integer> ready = new PriorityQueue<>();
    private final PriorityQueue<Integer> apart = new PriorityQueue<>();
    private final Joints joints;
    private final double[] room;

    Sequencing(Joints joints, Links links, HubRanks ranks, double[] room) {
        this.joints = joints;
        this.hubs = joints.hubs();
        this.links = links;
        this.order = ranks.members(hubs);
        this.place = new int[order.length];
        for (int i = 0; i < order.length; i++) {
            place[order[i]] = i;
        }
        this.room = room;
        int nodes = hubs.dome().nodeCount();
        this.stepOf = new RaisingStep[joints.count()];
        this.before = new int[joints.count()];
        this.stands = new boolean[nodes];
        this.parked = new ArrayList<>();
        for (int node = 0; node < nodes; node++) {
            stands[node] = ranks.grounded(node);
            parked.add(new ArrayList<>(0));
        }
    }

    List<RaisingStep> inOrder(List<RaisingStep> possible) {
        for (RaisingStep step : possible) {
            stepOf[step.member()] = step;
            forEachLater(step, m -> before[m]++);
        }
        for (RaisingStep step : possible) {
            if (before[step.member()] == 0) {
                open(step.member());
            }
        }
        List<RaisingStep> steps = new ArrayList<>(possible.size());
        boolean[] done = new boolean[joints.count()];
        while (steps.size() < possible.size()) {
            int m = order[(ready.isEmpty() ? apart : ready).remove()];
            if (!done[m]) {
                done[m] = true;
                steps.add(stepOf[m]);
                forEachLater(stepOf[m], later -> {
                    if (--before[later] == 0) {
                        open(later);
                    }
                });
                stand(hubs.nodeAtA(m));
                stand(hubs.nodeAtB(m));
            }
        }
        return steps;
    }

    private void open(int member) {
        int a = hubs.nodeAtA(member);
        int b = hubs.nodeAtB(member);
        if (stands[a] || stands[b]) {
            ready.add(place[member]);
        } else {
            apart.add(place[member]);
            parked.get(a).add(member);
            parked.get(b).add(member);
        }
    }

    private void stand(int node) {
        if (!stands[node]) {
            stands[node] = true;
            parked.get(node).forEach(m -> ready.add(place[m]));
        }
    }

    private void forEachLater(RaisingStep step, IntConsumer action) {
        for (int i = links.first(step.hub()); i < links.first(step.hub() + 1); i++) {
            int m = links.member(i);
            if (m != step.member() && (step.way() == Way.JOIN || inTheWay(step, m))) {
                action.accept(m);
            }
        }
    }

    private boolean inTheWay(RaisingStep step, int other) {
        Joint joint = joints.of(step.member());
        Joint.End end = hubs.nodeAtA(step.member()) == step.hub() ? joint.a() : joint.b();
        int hole = (hubs.nodeAtA(other) == step.hub() ? hubs.holeAtA(other) : hubs.holeAtB(other)) - 1;
        double past = end.hub().holes().get(end.hole()).past().get(hole);
        return past < StrictMath.min(end.travel(), room[step.member()]) - Joint.SAME;
    }
}
