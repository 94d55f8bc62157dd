package collarwright.assembly;

import collarwright.assembly.RaisingStep.Way;
import collarwright.hub.Hubs;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * An order in which a frame can be raised, from the feet up, tier by tier, around each tier by place; the centre rings go
 * in when all struts are in.
 *
 * <p>A hub stands from the moment that its first strut joins it; that strut needs no room, because the hub is slid over
 * its end. Every other strut closes a gap between two hubs that stand, and has to be pushed into one collar as far as it
 * has to enter the other, past whatever sits there by then. (Two hubs on the ground can be shifted; that is not counted
 * on.) So in every tier the last hub and its struts, and the apex, are held to the same rule as all others.
 *
 * @param stages in turn
 */
public record RaisingOrder(List<Stage> stages) {

    /** Keeps the list. */
    public RaisingOrder {
        stages = List.copyOf(stages);
    }

    /**
     * One go around a tier, or a part of one.
     *
     * @param level how far up, from 0 at the foot
     * @param hubs nodes that come to stand, in order
     * @param steps struts in order
     */
    public record Stage(int level, List<Integer> hubs, List<RaisingStep> steps) {
        /** Keeps the lists. */
        public Stage {
            hubs = List.copyOf(hubs);
            steps = List.copyOf(steps);
        }
    }

    /**
     * Finds the order.
     *
     * @param hubs the frame
     * @param travels by hub type
     * @param bending how far struts may bow where there is not enough room
     * @return the order; a strut that cannot be put in is marked
     */
    static RaisingOrder of(Hubs hubs, List<HubTravel> travels, Bending bending) {
        Joints joints = Joints.of(hubs, travels, bending.lengths());
        Links links = Links.of(hubs.dome());
        HubRanks ranks = HubRanks.of(hubs.dome(), links);
        TakingApart apart = new TakingApart(joints, links, ranks, bending);
        List<RaisingStep> possible = apart.steps();
        List<RaisingStep> steps = new Sequencing(joints, links, ranks, apart.room()).inOrder(possible);
        return new RaisingOrder(new Staging(hubs, ranks).stages(steps));
    }

    /**
     * All steps.
     *
     * @return in order
     */
    public List<RaisingStep> steps() {
        return stages.stream().flatMap(s -> s.steps().stream()).toList();
    }

    /**
     * The steps that cannot be done as they should.
     *
     * @param way bowed or stuck
     * @return in order
     */
    public List<RaisingStep> steps(Way way) {
        return steps().stream().filter(s -> s.way() == way).toList();
    }

    /** Puts steps into stages, and sees which parts have to be held. */
    private static final class Staging {
        private final Hubs hubs;
        private final HubRanks ranks;
        private final boolean[] stands;
        private final int[] piece;
        private final boolean[] onGround;

        Staging(Hubs hubs, HubRanks ranks) {
            this.hubs = hubs;
            this.ranks = ranks;
            int nodes = hubs.dome().nodeCount();
            this.stands = new boolean[nodes];
            this.piece = new int[nodes];
            this.onGround = new boolean[nodes];
            Arrays.setAll(piece, node -> node);
            for (int node = 0; node < nodes; node++) {
                onGround[node] = ranks.grounded(node);
            }
        }

        List<Stage> stages(List<RaisingStep> steps) {
            List<Stage> stages = new ArrayList<>();
            List<Integer> standing = new ArrayList<>();
            List<RaisingStep> done = new ArrayList<>();
            int level = 0;
            for (RaisingStep step : steps) {
                int a = hubs.nodeAtA(step.member());
                int b = hubs.nodeAtB(step.member());
                int now = ranks.level(ranks.rank(a) > ranks.rank(b) ? a : b);
                if (now != level && !done.isEmpty()) {
                    stages.add(new Stage(level, standing, done));
                    standing.clear();
                    done.clear();
                }
                level = now;
                boolean firstA = ranks.rank(a) < ranks.rank(b);
                stand(firstA ? a : b, standing);
                stand(firstA ? b : a, standing);
                done.add(step.held(!join(a, b)));
            }
            stages.add(new Stage(level, standing, done));
            return stages;
        }

        private void stand(int node, List<Integer> standing) {
            if (!stands[node]) {
                stands[node] = true;
                standing.add(node);
            }
        }

        private boolean join(int a, int b) {
            int one = root(a);
            int two = root(b);
            piece[one] = two;
            onGround[two] |= onGround[one];
            return onGround[two];
        }

        private int root(int node) {
            int at = node;
            while (piece[at] != at) {
                piece[at] = piece[piece[at]];
                at = piece[at];
            }
            return at;
        }
    }
}
