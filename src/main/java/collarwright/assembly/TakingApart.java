package collarwright.assembly;

import collarwright.assembly.RaisingStep.Way;
import collarwright.hub.Hubs;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * Finds an order of assembly by taking the whole frame apart in thought, the last hub's struts first. Whatever can be taken
 * out now can still be taken out when other struts have gone, since a strut that is gone is in nobody's way. So nothing
 * has ever to be tried again: if this gets stuck, there is no order at all.
 *
 * <p>Where it does get stuck, the strut that has to bow least is taken out by bowing it, or, if it would not stand that,
 * marked as stuck, and the rest goes on.
 */
final class TakingApart {

    /** Hubs that may be visited in all to see whether parts hang together; beyond it, parts may come out as held. */
    private static final int MOST_VISITS = 20_000_000;

    private final Joints joints;
    private final Hubs hubs;
    private final Links links;
    private final HubRanks ranks;
    private final Bending bending;

    private final int[] order;
    private final int[] place;
    private final int[] seated;
    private final int[] degree;
    private final boolean[] gone;
    private final boolean[] passed;
    private final boolean[] queued;
    /** How far each strut could be pushed where it was pushed in, when it was. */
    private final double[] room;

    private final int[] mark;
    private final int[] stack;
    private int marks;
    private int visits;
    private int passedCount;
    private int next;
    private final PriorityQueue<Integer> again = new PriorityQueue<>();
    private final PriorityQueue<Weak> weakest = new PriorityQueue<>();
    private boolean bowing;
    private final List<RaisingStep> steps = new ArrayList<>();

    /** A strut that would have to bow so much. */
    private record Weak(double strain, int place) implements Comparable<Weak> {
        @Override
        public int compareTo(Weak o) {
            int byStrain = Double.compare(strain, o.strain);
            return byStrain == 0 ? Integer.compare(place, o.place) : byStrain;
        }
    }

    TakingApart(Joints joints, Links links, HubRanks ranks, Bending bending) {
        this.joints = joints;
        this.hubs = joints.hubs();
        this.links = links;
        this.ranks = ranks;
        this.bending = bending;
        int nodes = hubs.dome().nodeCount();
        int members = joints.count();
        this.order = new int[members];
        this.place = new int[members];
        int[] firstToLast = ranks.members(hubs);
        for (int i = 0; i < members; i++) {
            order[i] = firstToLast[members - 1 - i];
            place[order[i]] = i;
        }
        this.room = new double[members];
        this.seated = new int[nodes];
        this.degree = new int[nodes];
        for (int node = 0; node < nodes; node++) {
            degree[node] = links.first(node + 1) - links.first(node);
            seated[node] = (1 << hubs.types().get(hubs.typeOf(node)).struts().size()) - 1;
        }
        this.gone = new boolean[members];
        this.passed = new boolean[members];
        this.queued = new boolean[members];
        this.mark = new int[nodes];
        this.stack = new int[nodes];
    }

    /** The steps of assembly, in an order in which they can be done. */
    List<RaisingStep> steps() {
        while (steps.size() < order.length) {
            int at = nextPlace();
            if (at < 0) {
                // Rather bow a strut than hold up parts; if neither helps, it is stuck.
                boolean out = bow(true) || anyPassed() || bow(false);
                if (!out) {
                    throw new IllegalStateException("struts left, and none of them is the weakest");
                }
            } else if (!gone[order[at]]) {
                tryOut(order[at], false);
            }
        }
        Collections.reverse(steps);
        return steps;
    }

    /** How far each strut could be pushed where it was pushed in, by member; infinite where it did not have to be. */
    double[] room() {
        return room;
    }

    private int nextPlace() {
        if (!again.isEmpty()) {
            int at = again.remove();
            queued[order[at]] = false;
            if (passed[order[at]]) {
                passed[order[at]] = false;
                passedCount--;
            }
            return at;
        }
        return next < order.length ? next++ : -1;
    }

    // Struts that could go if somebody held what would then hang in the air.
    private boolean anyPassed() {
        for (int m : order) {
            if (passed[m] && tryOut(m, true)) {
                return true;
            }
        }
        return false;
    }

    private boolean tryOut(int member, boolean unheld) {
        boolean was = passed[member];
        Optional<RaisingStep> step = outBy(member);
        if (step.isPresent() && (unheld || passedCount == 0 || standsWithout(member))) {
            if (was) {
                passed[member] = false;
                passedCount--;
            }
            take(step.get());
            return true;
        }
        if (!was) {
            passed[member] = true;
            passedCount++;
        }
        return false;
    }

    private Optional<RaisingStep> outBy(int member) {
        int a = hubs.nodeAtA(member);
        int b = hubs.nodeAtB(member);
        int later = ranks.rank(a) > ranks.rank(b) ? a : b;
        int earlier = later == a ? b : a;
        if (degree[later] == 1 || degree[earlier] == 1) {
            return Optional.of(new RaisingStep(member, Way.JOIN, degree[later] == 1 ? later : earlier, false, 0));
        }
        Joint joint = joints.of(member);
        // Where both ends have room with all neighbours seated, the roomier is told for all struts of the kind.
        double roomA = joint.a().margin(joint.a().hub().all());
        double roomB = joint.b().margin(joint.b().hub().all());
        boolean always = StrictMath.max(roomA, roomB) >= -Joint.SAME;
        double leftA = always ? roomA : joint.a().margin(seated[a]);
        double leftB = always ? roomB : joint.b().margin(seated[b]);
        if (StrictMath.max(leftA, leftB) < -Joint.SAME) {
            return Optional.empty();
        }
        boolean alike = leftA == leftB || StrictMath.abs(leftA - leftB) < Joint.SAME;
        int into = alike ? earlier : leftA > leftB ? a : b;
        return Optional.of(new RaisingStep(member, Way.SLIDE, into, false, 0));
    }

    private void take(RaisingStep step) {
        int m = step.member();
        steps.add(step);
        Joint.End end =
                hubs.nodeAtA(m) == step.hub() ? joints.of(m).a() : joints.of(m).b();
        room[m] = step.way() == Way.JOIN ? Double.POSITIVE_INFINITY : end.travel() + end.margin(seated[step.hub()]);
        gone[m] = true;
        int a = hubs.nodeAtA(m);
        int b = hubs.nodeAtB(m);
        seated[a] &= ~(1 << (hubs.holeAtA(m) - 1));
        seated[b] &= ~(1 << (hubs.holeAtB(m) - 1));
        degree[a]--;
        degree[b]--;
        if (passedCount > 0) {
            wake(a);
            wake(b);
        }
    }

    private void wake(int node) {
        for (int i = links.first(node); i < links.first(node + 1); i++) {
            int m = links.member(i);
            if (passed[m] && !gone[m]) {
                if (bowing) {
                    weakest.add(new Weak(strain(m), place[m]));
                }
                if (!queued[m]) {
                    queued[m] = true;
                    again.add(place[m]);
                }
            }
        }
    }

    // Whether what is left still hangs together with the ground when a strut goes.
    private boolean standsWithout(int member) {
        return visits > MOST_VISITS
                || (grounded(hubs.nodeAtA(member), member) && grounded(hubs.nodeAtB(member), member));
    }

    private boolean grounded(int from, int without) {
        if (degree[from] == 1) {
            return true;
        }
        marks++;
        int top = 0;
        stack[top++] = from;
        mark[from] = marks;
        while (top > 0) {
            int node = stack[--top];
            visits++;
            if (ranks.grounded(node)) {
                return true;
            }
            for (int i = links.first(node); i < links.first(node + 1); i++) {
                int other = links.other(i);
                int m = links.member(i);
                if (!gone[m] && m != without && mark[other] != marks) {
                    mark[other] = marks;
                    stack[top++] = other;
                }
            }
        }
        return false;
    }

    // No strut is free: the one that has to bow least goes; within its limit, and with what is left standing, if so
    // asked.
    private boolean bow(boolean well) {
        if (!bowing) {
            bowing = true;
            for (int m : order) {
                if (!gone[m]) {
                    weakest.add(new Weak(strain(m), place[m]));
                }
            }
        }
        List<Weak> aside = new ArrayList<>();
        boolean out = false;
        while (!out && !weakest.isEmpty()) {
            Weak weak = weakest.remove();
            int member = order[weak.place()];
            if (gone[member] || weak.strain() > strain(member)) {
                continue;
            }
            boolean within = weak.strain() <= bending.strainLimit();
            if (well && !within) {
                aside.add(weak);
                break;
            }
            if (well && !standsWithout(member)) {
                aside.add(weak);
                continue;
            }
            passed[member] = false;
            passedCount--;
            take(new RaisingStep(member, within ? Way.BOW : Way.STUCK, intoWhenBowed(member), false, weak.strain()));
            out = true;
        }
        weakest.addAll(aside);
        return out;
    }

    private double shortfall(Joint.End end, int node) {
        return StrictMath.max(0, -end.margin(seated[node]));
    }

    private int intoWhenBowed(int member) {
        Joint joint = joints.of(member);
        int a = hubs.nodeAtA(member);
        int b = hubs.nodeAtB(member);
        return shortfall(joint.a(), a) <= shortfall(joint.b(), b) + Joint.SAME ? a : b;
    }

    private double strain(int member) {
        Joint joint = joints.of(member);
        double shortfall =
                StrictMath.min(shortfall(joint.a(), hubs.nodeAtA(member)), shortfall(joint.b(), hubs.nodeAtB(member)));
        return new Bow(bending.diameter(), joint.length(), shortfall).strain();
    }
}
