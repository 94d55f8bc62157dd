package collarwright.rehearsal;

import collarwright.machining.Operation;
import collarwright.machining.RotarySettings;
import collarwright.units.Angles;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which made hole stands for which planned one: nearest first, on the outside of the pipe; one that is further from any
 * than {@link #FURTHEST} is one too many.
 *
 * @param plannedOf for each made hole that has one, by its place in the order made, the planned one's place
 */
record HolePairs(Map<Integer, Integer> plannedOf) {

    /** Further than this a hole was not moved, it is another one: our choice, no source. */
    static final double FURTHEST = 20;

    private record Pair(int made, int planned, double distance) {}

    static HolePairs of(List<Place> made, List<Operation> planned, RotarySettings settings) {
        double radius = settings.work().body().outerRadius();
        List<Pair> near = new ArrayList<>();
        for (int i = 0; i < made.size(); i++) {
            for (int j = 0; j < planned.size(); j++) {
                double along = made.get(i).x() - planned.get(j).place().x();
                if (StrictMath.abs(along) <= FURTHEST) {
                    double turn = Angles.radians(
                            made.get(i).offDegrees(planned.get(j).place().angleDegrees()));
                    double distance = StrictMath.hypot(along, turn * radius);
                    if (distance <= FURTHEST) {
                        near.add(new Pair(i, j, distance));
                    }
                }
            }
        }
        near.sort(Comparator.comparingDouble(Pair::distance).thenComparingInt(p -> StrictMath.abs(p.made - p.planned)));
        Map<Integer, Integer> of = new LinkedHashMap<>();
        boolean[] taken = new boolean[planned.size()];
        for (Pair pair : near) {
            if (!of.containsKey(pair.made) && !taken[pair.planned]) {
                of.put(pair.made, pair.planned);
                taken[pair.planned] = true;
            }
        }
        return new HolePairs(of);
    }

    /**
     * Where a hole was made.
     *
     * @param x along the pipe
     * @param angleDegrees the A word
     */
    record Place(double x, double angleDegrees) {

        /** How far the A word lies above another, the short way round, in (−180, 180]. */
        double offDegrees(double otherDegrees) {
            double off = (angleDegrees - otherDegrees) % 360;
            return off > 180 ? off - 360 : off <= -180 ? off + 360 : off;
        }
    }
}
