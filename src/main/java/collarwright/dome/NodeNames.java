package collarwright.dome;

import java.util.Arrays;

/**
 * What the nodes of a dome are called: by tier and place, or by number. Ids stay with their nodes when others are taken
 * out.
 */
final class NodeNames {

    private final int[] tierStart;
    private final int[] place;
    private final int digits;
    private final boolean fromFoot;
    private final boolean tiers;

    private NodeNames(int[] tierStart, int[] place, int digits, boolean fromFoot, boolean tiers) {
        this.tierStart = tierStart;
        this.place = place;
        this.digits = digits;
        this.fromFoot = fromFoot;
        this.tiers = tiers;
    }

    /** Names by tier and place, such as T3-07, or F0-07 where tiers count from the foot. */
    static NodeNames tiers(int[] tierStart, boolean fromFoot) {
        int widest = 1;
        int[] place = new int[tierStart[tierStart.length - 1]];
        for (int tier = 0; tier + 1 < tierStart.length; tier++) {
            widest = StrictMath.max(widest, tierStart[tier + 1] - tierStart[tier]);
            for (int node = tierStart[tier]; node < tierStart[tier + 1]; node++) {
                place[node] = node - tierStart[tier] + 1;
            }
        }
        return new NodeNames(tierStart, place, Integer.toString(widest).length(), fromFoot, true);
    }

    /** Names by number, such as N007. */
    static NodeNames numbers(int count) {
        int[] place = new int[count];
        Arrays.setAll(place, i -> i + 1);
        return new NodeNames(
                new int[] {0, count},
                place,
                StrictMath.max(3, Integer.toString(count).length()),
                false,
                false);
    }

    /** The same names with one tier more, of nodes that come after all others. */
    NodeNames withTier(int size) {
        int[] starts = Arrays.copyOf(tierStart, tierStart.length + 1);
        starts[tierStart.length] = starts[tierStart.length - 1] + size;
        return tiers(starts, fromFoot);
    }

    /** The names of the nodes that are kept. */
    NodeNames kept(int[] nodes) {
        int[] starts = new int[tierStart.length];
        int[] places = new int[nodes.length];
        for (int i = 0; i < nodes.length; i++) {
            places[i] = place[nodes[i]];
            starts[tier(nodes[i]) + 1]++;
        }
        for (int tier = 1; tier < starts.length; tier++) {
            starts[tier] += starts[tier - 1];
        }
        return new NodeNames(starts, places, digits, fromFoot, tiers);
    }

    boolean hasTiers() {
        return tiers;
    }

    int count() {
        return place.length;
    }

    int tierCount() {
        return tierStart.length - 1;
    }

    int firstOfTier(int tier) {
        return tierStart[tier];
    }

    int tier(int node) {
        int tier = Arrays.binarySearch(tierStart, node);
        if (tier < 0) {
            return -tier - 2;
        }
        // An emptied tier starts where the next one does.
        while (tier + 1 < tierStart.length && tierStart[tier + 1] == node) {
            tier++;
        }
        return tier;
    }

    int place(int node) {
        return place[node];
    }

    /** The number of a node's tier as it is counted on papers. */
    int countedTier(int node) {
        return fromFoot ? tierCount() - 1 - tier(node) : tier(node);
    }

    String id(int node) {
        String number = Integer.toString(place[node]);
        String padded = "0".repeat(digits - number.length()) + number;
        return tiers ? (fromFoot ? "F" : "T") + countedTier(node) + "-" + padded : "N" + padded;
    }
}
