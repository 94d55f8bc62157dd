package collarwright.plan;

import collarwright.dome.Dome;
import java.util.Arrays;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Counts that hold for a frame whatever its size. */
final class FrameShape {

    /** So many ids are told; the rest are counted. */
    private static final int TOLD = 6;

    private FrameShape() {}

    /** Struts at each node. */
    static int[] struts(Dome dome) {
        int[] struts = new int[dome.nodeCount()];
        for (int m = 0; m < dome.memberCount(); m++) {
            struts[dome.memberA(m)]++;
            struts[dome.memberB(m)]++;
        }
        return struts;
    }

    /** For each node the lowest node that it hangs together with. */
    static int[] pieces(Dome dome) {
        int[] lowest = new int[dome.nodeCount()];
        Arrays.setAll(lowest, node -> node);
        for (int m = 0; m < dome.memberCount(); m++) {
            int a = root(lowest, dome.memberA(m));
            int b = root(lowest, dome.memberB(m));
            lowest[StrictMath.max(a, b)] = StrictMath.min(a, b);
        }
        for (int node = 0; node < lowest.length; node++) {
            lowest[node] = root(lowest, node);
        }
        return lowest;
    }

    private static int root(int[] lowest, int node) {
        int at = node;
        while (lowest[at] != at) {
            lowest[at] = lowest[lowest[at]];
            at = lowest[at];
        }
        return at;
    }

    /** Such as "hub T3-01" or "hubs T3-01, T3-04 and 12 more". */
    static String named(Dome dome, int[] nodes) {
        String told = IntStream.of(nodes).limit(TOLD).mapToObj(dome::nodeId).collect(Collectors.joining(", "));
        String more = nodes.length > TOLD ? " and " + (nodes.length - TOLD) + " more" : "";
        return (nodes.length == 1 ? "hub " : "hubs ") + told + more;
    }
}
