package collarwright.assembly;

import collarwright.dome.Dome;
import collarwright.hub.Hubs;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.stream.IntStream;

/**
 * The order in which hubs are raised: from the foot up, tier by tier, around each tier by place. A frame without tiers goes
 * by the number of struts from its feet. A hub comes only after a neighbour, unless it is a foot, which stands on the
 * ground, or nothing else is left to begin with.
 */
final class HubRanks {

    private final int[] level;
    private final int[] rank;
    private final boolean[] grounded;

    private HubRanks(int[] level, int[] rank, boolean[] grounded) {
        this.level = level;
        this.rank = rank;
        this.grounded = grounded;
    }

    static HubRanks of(Dome dome, Links links) {
        int nodes = dome.nodeCount();
        boolean[] grounded = new boolean[nodes];
        dome.feet().forEach(foot -> grounded[foot] = true);
        int[] level = dome.hasTiers() ? tiers(dome) : distances(dome, links);
        int[] rank = new int[nodes];
        Arrays.fill(rank, -1);
        boolean[] waiting = new boolean[nodes];
        PriorityQueue<Long> near = new PriorityQueue<>();
        for (int foot : dome.feet()) {
            near.add(key(level, foot));
            waiting[foot] = true;
        }
        long[] all = new long[nodes];
        Arrays.setAll(all, node -> key(level, node));
        Arrays.sort(all);
        int next = 0;
        for (int placed = 0; placed < nodes; placed++) {
            if (near.isEmpty()) {
                while (rank[node(all[next])] >= 0) {
                    next++;
                }
                near.add(all[next]);
                grounded[node(all[next])] = true;
            }
            int node = node(near.remove());
            rank[node] = placed;
            for (int i = links.first(node); i < links.first(node + 1); i++) {
                int other = links.other(i);
                if (!waiting[other] && rank[other] < 0) {
                    waiting[other] = true;
                    near.add(key(level, other));
                }
            }
        }
        return new HubRanks(level, rank, grounded);
    }

    private static long key(int[] level, int node) {
        return ((long) level[node] << Integer.SIZE) + node;
    }

    private static int node(long key) {
        return (int) key;
    }

    private static int[] tiers(Dome dome) {
        int[] level = new int[dome.nodeCount()];
        Arrays.setAll(level, node -> dome.tierCount() - 1 - dome.tierOf(node));
        return level;
    }

    private static int[] distances(Dome dome, Links links) {
        int[] level = new int[dome.nodeCount()];
        Arrays.fill(level, -1);
        ArrayDeque<Integer> next = new ArrayDeque<>();
        for (int node : dome.feet().isEmpty() ? List.of(0) : dome.feet()) {
            level[node] = 0;
            next.add(node);
        }
        while (!next.isEmpty()) {
            int node = next.remove();
            for (int i = links.first(node); i < links.first(node + 1); i++) {
                if (level[links.other(i)] < 0) {
                    level[links.other(i)] = level[node] + 1;
                    next.add(links.other(i));
                }
            }
        }
        for (int node = 0; node < level.length; node++) {
            level[node] = StrictMath.max(0, level[node]);
        }
        return level;
    }

    /** How far up the hub stands, from 0 at the foot. */
    int level(int node) {
        return level[node];
    }

    /** Its place in the order, from 0. */
    int rank(int node) {
        return rank[node];
    }

    /** Whether it stands on the ground, or is where a frame without feet begins. */
    boolean grounded(int node) {
        return grounded[node];
    }

    /** The members by the hub that is raised later; of its struts, the one to the hub raised first comes first. */
    int[] members(Hubs hubs) {
        int members = hubs.dome().memberCount();
        long[] keys = new long[members];
        for (int m = 0; m < members; m++) {
            int one = rank[hubs.nodeAtA(m)];
            int two = rank[hubs.nodeAtB(m)];
            keys[m] = ((long) StrictMath.max(one, two) << Integer.SIZE) + StrictMath.min(one, two);
        }
        return IntStream.range(0, members)
                .boxed()
                .sorted(Comparator.comparingLong(m -> keys[m]))
                .mapToInt(m -> m)
                .toArray();
    }
}
