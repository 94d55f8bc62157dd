package collarwright.hub;

import collarwright.dome.Dome;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Works out {@link Hubs} from a dome, in one pass over its nodes. */
final class HubFinder {

    /** Angles nearer than this to a full turn are 0: the rounding of coordinates must not put uphill at 359.999…°. */
    private static final double FULL_TURN_SNAP = 1e-9;

    private final Dome dome;
    private final StrutKinds kinds;
    private final Alike.Within within;
    private final int[] endStart;
    private final int[] ends;

    private final Map<Long, List<HubCycle>> byStruts = new HashMap<>();
    private final List<HubCycle> cycles = new ArrayList<>();
    private final int[] typeOfNode;
    private final double[] turnOfNode;
    private final byte[] holeOfEnd;

    HubFinder(Dome dome, Alike alike) {
        this.dome = dome;
        this.within = alike.angle();
        this.kinds = StrutKinds.of(dome, alike);
        this.endStart = new int[dome.nodeCount() + 1];
        this.ends = new int[2 * dome.memberCount()];
        this.typeOfNode = new int[dome.nodeCount()];
        this.turnOfNode = new double[dome.nodeCount()];
        this.holeOfEnd = new byte[2 * dome.memberCount()];
        gatherEnds();
    }

    Hubs find() {
        HubRose rose = new HubRose(dome, kinds);
        for (int node = 0; node < dome.nodeCount(); node++) {
            rose.aim(node, ends, endStart[node], endStart[node + 1]);
            place(node, rose);
        }
        List<HubType> types = cycles.stream().map(c -> c.toType(kinds)).toList();
        return new Hubs(
                dome,
                kinds.shapes(),
                types,
                new Hubs.Tables(typeOfNode, turnOfNode, kinds.typeOfMember(), kinds.reversed(), holeOfEnd));
    }

    // Ends of members around each node; an end is 2 · member + (0 at its first node, 1 at its second).
    private void gatherEnds() {
        for (int m = 0; m < dome.memberCount(); m++) {
            endStart[dome.memberA(m) + 1]++;
            endStart[dome.memberB(m) + 1]++;
        }
        for (int node = 0; node < dome.nodeCount(); node++) {
            endStart[node + 1] += endStart[node];
        }
        int[] next = endStart.clone();
        for (int m = 0; m < dome.memberCount(); m++) {
            ends[next[dome.memberA(m)]++] = 2 * m;
            ends[next[dome.memberB(m)]++] = 2 * m + 1;
        }
    }

    private void place(int node, HubRose rose) {
        List<HubCycle> alike = byStruts.computeIfAbsent(rose.strutKey(), k -> new ArrayList<>(2));
        for (HubCycle cycle : alike) {
            if (settle(node, rose, cycle)) {
                return;
            }
        }
        HubCycle cycle = HubCycle.from(rose, cycles.size(), node, within);
        cycles.add(cycle);
        alike.add(cycle);
        settle(node, rose, cycle);
    }

    // Gives the node its place on the cycle, the one with the least turn if there are several; false if it has none.
    private boolean settle(int node, HubRose rose, HubCycle cycle) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int start = 0; start < rose.size(); start++) {
            if (cycle.matches(rose, start)) {
                double turn = turn(rose, start);
                if (turn < least) {
                    least = turn;
                    best = start;
                }
            }
        }
        if (best < 0) {
            return false;
        }
        typeOfNode[node] = cycle.index();
        turnOfNode[node] = least;
        cycle.countOne();
        for (int i = 0; i < rose.size(); i++) {
            holeOfEnd[rose.end(rose.wrap(best + i))] = (byte) i;
        }
        return true;
    }

    // Uphill lies at azimuth 0 of the rose, so from a hole at azimuth a it lies at −a.
    private static double turn(HubRose rose, int start) {
        double turn = -StrictMath.atan2(rose.sin(start), rose.cos(start));
        turn = turn < 0 ? turn + 2 * StrictMath.PI : turn;
        return turn > 2 * StrictMath.PI - FULL_TURN_SNAP || turn < FULL_TURN_SNAP ? 0 : turn;
    }
}
