package collarwright.assembly;

import collarwright.dome.Dome;

/** The struts at every hub, in the order of the members. */
final class Links {

    private final int[] first;
    private final int[] member;
    private final int[] other;

    private Links(int[] first, int[] member, int[] other) {
        this.first = first;
        this.member = member;
        this.other = other;
    }

    static Links of(Dome dome) {
        int nodes = dome.nodeCount();
        int[] first = new int[nodes + 1];
        for (int m = 0; m < dome.memberCount(); m++) {
            first[dome.memberA(m) + 1]++;
            first[dome.memberB(m) + 1]++;
        }
        for (int node = 0; node < nodes; node++) {
            first[node + 1] += first[node];
        }
        int[] next = first.clone();
        int[] member = new int[2 * dome.memberCount()];
        int[] other = new int[2 * dome.memberCount()];
        for (int m = 0; m < dome.memberCount(); m++) {
            int a = dome.memberA(m);
            int b = dome.memberB(m);
            member[next[a]] = m;
            other[next[a]++] = b;
            member[next[b]] = m;
            other[next[b]++] = a;
        }
        return new Links(first, member, other);
    }

    /** Where a hub's struts begin; the next hub's begin where they end. */
    int first(int node) {
        return first[node];
    }

    int member(int link) {
        return member[link];
    }

    int other(int link) {
        return other[link];
    }
}
