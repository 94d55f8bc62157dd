package collarwright.plan;

import collarwright.dome.Dome;
import collarwright.hub.Hubs;
import collarwright.strut.StrutType;
import collarwright.units.Ids;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The ids of everything in a dome, worked out once: what files, marks and papers call the parts.
 *
 * @param nodes such as {@code T3-07}, by node index
 * @param strutTypes such as {@code SA}, by strut type index
 * @param hubTypes such as {@code HA}, by hub type index
 * @param patterns such as {@code CA}, the pattern of each hub type, by hub type index
 * @param members how many members there are
 */
public record PartNames(
        List<String> nodes, List<String> strutTypes, List<String> hubTypes, List<String> patterns, int members) {

    /** Keeps the lists. */
    public PartNames {
        nodes = List.copyOf(nodes);
        strutTypes = List.copyOf(strutTypes);
        hubTypes = List.copyOf(hubTypes);
        patterns = List.copyOf(patterns);
    }

    /**
     * Names the parts of a plan.
     *
     * @param plan the plan
     * @return the names; patterns are named as they would be where a finding kept them from being laid out
     */
    public static PartNames of(Plan plan) {
        Hubs hubs = plan.hubs();
        Dome dome = hubs.dome();
        List<String> nodes = new ArrayList<>(dome.nodeCount());
        for (int node = 0; node < dome.nodeCount(); node++) {
            nodes.add(dome.nodeId(node));
        }
        int types = hubs.types().size();
        List<String> strutTypes =
                plan.struts().types().stream().map(StrutType::id).toList();
        List<String> patterns = IntStream.range(0, types)
                .mapToObj(type -> Ids.letters('C', plan.placement(type).pattern()))
                .toList();
        return new PartNames(nodes, strutTypes, named('H', types), patterns, dome.memberCount());
    }

    private static List<String> named(char kind, int count) {
        return IntStream.range(0, count).mapToObj(i -> Ids.letters(kind, i)).toList();
    }

    /**
     * Names a node.
     *
     * @param index node index
     * @return such as {@code T3-07}
     */
    public String node(int index) {
        return nodes.get(index);
    }

    /**
     * Names a strut type.
     *
     * @param index strut type index
     * @return such as {@code SA}
     */
    public String strutType(int index) {
        return strutTypes.get(index);
    }

    /**
     * Names a hub type.
     *
     * @param index hub type index
     * @return such as {@code HA}
     */
    public String hubType(int index) {
        return hubTypes.get(index);
    }

    /**
     * Names the pattern of a hub type.
     *
     * @param index hub type index
     * @return such as {@code CA}
     */
    public String pattern(int index) {
        return patterns.get(index);
    }

    /**
     * Names a member.
     *
     * @param index member index, from 0
     * @return such as {@code M007}; numbers count from 1 and are padded to the widest
     */
    public String member(int index) {
        String number = Integer.toString(index + 1);
        return "M" + "0".repeat(Integer.toString(members).length() - number.length()) + number;
    }
}
