package collarwright.machining;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What lies on a stick, in no order yet.
 *
 * @param counts collars of each pattern, in the order of the patterns; 0 or more each
 * @param runs sticks of this kind
 */
record Mix(List<Integer> counts, int runs) {

    /** Most runs first, then what has more of the first patterns. */
    static final Comparator<Mix> ORDER = Comparator.comparingInt((Mix m) -> -m.runs)
            .thenComparing(Mix::counts, (a, b) -> {
                for (int i = 0; i < a.size(); i++) {
                    int sign = Integer.compare(b.get(i), a.get(i));
                    if (sign != 0) {
                        return sign;
                    }
                }
                return 0;
            });

    Mix {
        counts = List.copyOf(counts);
    }

    int collars() {
        return counts.stream().mapToInt(c -> c).sum();
    }

    /** Equal sticks taken together, in order. */
    static List<Mix> gathered(List<Mix> mixes) {
        Map<List<Integer>, Integer> runs = new LinkedHashMap<>();
        mixes.forEach(m -> runs.merge(m.counts, m.runs, Integer::sum));
        List<Mix> all = new ArrayList<>();
        runs.forEach((counts, times) -> all.add(new Mix(counts, times)));
        all.sort(ORDER);
        return List.copyOf(all);
    }
}
