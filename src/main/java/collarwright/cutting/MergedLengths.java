package collarwright.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Cuts lengths that are nearly equal at one stop. */
public final class MergedLengths {

    private MergedLengths() {}

    /**
     * Gives lengths that differ little one length, their middle, so that no piece is off by more than half of what may be
     * merged. Groups begin at the shortest and do not chain: within one, the longest and the shortest differ by no more than
     * the tolerance.
     *
     * @param lengths mm, in any order
     * @param tolerance mm, 0 or more; 0 leaves every length as it is
     * @return the lengths to cut, in the same order
     */
    public static List<Double> of(List<Double> lengths, double tolerance) {
        List<Integer> ascending = IntStream.range(0, lengths.size())
                .boxed()
                .sorted((a, b) -> Double.compare(lengths.get(a), lengths.get(b)))
                .toList();
        List<Double> merged = new ArrayList<>(lengths);
        int first = 0;
        while (tolerance > 0 && first < ascending.size()) {
            double shortest = lengths.get(ascending.get(first));
            int next = first + 1;
            while (next < ascending.size() && lengths.get(ascending.get(next)) - shortest <= tolerance) {
                next++;
            }
            double longest = lengths.get(ascending.get(next - 1));
            for (int i = first; i < next; i++) {
                merged.set(ascending.get(i), longest > shortest ? (shortest + longest) / 2 : shortest);
            }
            first = next;
        }
        return List.copyOf(merged);
    }
}
