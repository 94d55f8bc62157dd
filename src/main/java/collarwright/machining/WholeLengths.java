package collarwright.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * How many stock lengths of one kind to buy so that every stick comes out of one piece. Sticks that are equally long share
 * lengths; what is left of a length is not counted on for others.
 *
 * @param length of the stock, mm
 * @param count lengths, 1 or more
 * @param sticks that are cut from them
 */
public record WholeLengths(double length, int count, int sticks) {

    /**
     * Counts.
     *
     * @param setups the layouts with the sticks to run
     * @return by length, ascending; empty where nobody knows the lengths that the pipe is sold in
     */
    public static List<WholeLengths> of(List<SetupSheet> setups) {
        TreeMap<Double, TreeMap<Integer, Integer>> sticks = new TreeMap<>();
        for (SetupSheet setup : setups) {
            Load load = setup.load();
            if (load.fromLength().isEmpty()) {
                return List.of();
            }
            sticks.computeIfAbsent(load.fromLength().get(), l -> new TreeMap<>())
                    .merge(load.sticksPerLength(), load.runs(), Integer::sum);
        }
        List<WholeLengths> all = new ArrayList<>();
        sticks.forEach((length, kinds) -> {
            int count = 0;
            int sum = 0;
            for (var kind : kinds.entrySet()) {
                count += (kind.getValue() + kind.getKey() - 1) / kind.getKey();
                sum += kind.getValue();
            }
            all.add(new WholeLengths(length, count, sum));
        });
        return List.copyOf(all);
    }
}
