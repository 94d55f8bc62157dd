package collarwright.plan;

import collarwright.assembly.Assembly;
import collarwright.assembly.RaisingOrder.Stage;
import collarwright.assembly.RaisingStep;
import collarwright.assembly.RaisingStep.Way;
import collarwright.dome.Dome;
import collarwright.hub.Hubs;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * One strut as it is put in, told for whoever stands at the hub.
 *
 * @param order from 1, over the whole frame
 * @param go the go that it belongs to, from 1
 * @param step what is done
 * @param at the hub that comes with the strut, or the one into whose collar it is pushed first
 * @param other the hub at its other end
 */
public record RaisingLine(int order, int go, RaisingStep step, Seat at, Seat other) {

    /**
     * One end of the strut.
     *
     * @param node node index
     * @param hole hole on the pattern, from 1
     * @param atA whether the strut's end a is here
     * @param empty the holes of this hub that still wait for a strut when this one is in, ascending, from 1
     */
    public record Seat(int node, int hole, boolean atA, List<Integer> empty) {
        /** Keeps the list. */
        public Seat {
            empty = List.copyOf(empty);
        }
    }

    /**
     * Says how the strut goes in, in one word or two.
     *
     * @return such as {@code push}
     */
    public String way() {
        return switch (step.way()) {
            case JOIN -> "comes with it";
            case SLIDE -> "push";
            case BOW -> "bow";
            case STUCK -> "no room";
        };
    }

    /**
     * Lists all struts in raising order.
     *
     * @param plan the plan
     * @param assembly how its frame goes together
     * @return one line for each member
     */
    public static List<RaisingLine> all(Plan plan, Assembly assembly) {
        Hubs hubs = plan.hubs();
        Dome dome = hubs.dome();
        List<TreeSet<Integer>> empty = new ArrayList<>();
        for (int node = 0; node < dome.nodeCount(); node++) {
            empty.add(new TreeSet<>());
        }
        for (int m = 0; m < dome.memberCount(); m++) {
            empty.get(hubs.nodeAtA(m)).add(plan.holeAtA(m));
            empty.get(hubs.nodeAtB(m)).add(plan.holeAtB(m));
        }
        List<RaisingLine> lines = new ArrayList<>();
        int go = 0;
        for (Stage stage : assembly.order().stages()) {
            go++;
            for (RaisingStep step : stage.steps()) {
                int m = step.member();
                empty.get(hubs.nodeAtA(m)).remove(plan.holeAtA(m));
                empty.get(hubs.nodeAtB(m)).remove(plan.holeAtB(m));
                Seat a = new Seat(hubs.nodeAtA(m), plan.holeAtA(m), true, List.copyOf(empty.get(hubs.nodeAtA(m))));
                Seat b = new Seat(hubs.nodeAtB(m), plan.holeAtB(m), false, List.copyOf(empty.get(hubs.nodeAtB(m))));
                boolean atA = step.hub() == a.node();
                lines.add(new RaisingLine(lines.size() + 1, go, step, atA ? a : b, atA ? b : a));
            }
        }
        return List.copyOf(lines);
    }

    /**
     * Gives every member its place in the order.
     *
     * @param plan the plan
     * @param assembly how its frame goes together
     * @return by member index, from 1
     */
    public static List<Integer> orders(Plan plan, Assembly assembly) {
        Integer[] orders = new Integer[plan.hubs().dome().memberCount()];
        all(plan, assembly).forEach(line -> orders[line.step().member()] = line.order());
        return List.of(orders);
    }

    /**
     * Tells whether a hub comes with this strut.
     *
     * @return true for the first strut of a hub
     */
    public boolean joins() {
        return step.way() == Way.JOIN;
    }
}
