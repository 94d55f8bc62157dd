package collarwright.machining;

import collarwright.tooling.Cutter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * In which order a cutter visits the collars of a stick: A rising once, X to and fro, with the least travel that this
 * leaves.
 *
 * <p>1. Holes whose angles lie within half a step of the program's grid are drilled at one angle: the middle, so that none
 * is off by more than three quarters of a step. 2. At each angle the tool sweeps along X one way or the other; which way
 * is chosen for all angles together, by the shortest of all ways (two ends for each sweep, one after the other).
 */
final class SweepOrder {

    private final RotarySettings settings;
    private final Map<String, CollarLayout> layouts;
    private final Indexing indexing;

    SweepOrder(RotarySettings settings, Map<String, CollarLayout> layouts) {
        this.settings = settings;
        this.layouts = Map.copyOf(layouts);
        this.indexing = Indexing.of(settings);
    }

    /** A spot of one collar. */
    private record Visit(int collar, CollarLayout.Spot spot) {}

    /** Operations of a whole stick with one cutter: all dimples, or all holes. */
    List<Operation> operations(Load load, Cutter cutter, boolean marks) {
        List<Visit> visits = new ArrayList<>();
        for (int collar = 1; collar <= load.collars(); collar++) {
            for (CollarLayout.Spot spot : layout(load.pattern(collar)).spots()) {
                if (spot.mark() == marks && cutter.equals(spot.cutter())) {
                    visits.add(new Visit(collar, spot));
                }
            }
        }
        visits.sort(Comparator.comparingDouble(v -> v.spot().exactDegrees()));
        TreeMap<Double, List<Operation>> byAngle = new TreeMap<>();
        int first = 0;
        for (int i = 1; i <= visits.size(); i++) {
            if (i == visits.size() || angle(visits.get(i)) - angle(visits.get(first)) > together()) {
                double middle = (angle(visits.get(first)) + angle(visits.get(i - 1))) / 2;
                double a = indexing.word(middle);
                List<Operation> group = byAngle.computeIfAbsent(a, x -> new ArrayList<>());
                visits.subList(first, i).forEach(v -> group.add(operation(load, v, a)));
                first = i;
            }
        }
        return swept(new ArrayList<>(byAngle.values()));
    }

    private CollarLayout layout(String pattern) {
        return Objects.requireNonNull(layouts.get(pattern), pattern);
    }

    private static double angle(Visit visit) {
        return visit.spot().exactDegrees();
    }

    private double together() {
        return 0.5 * StrictMath.pow(10, -settings.grid().angleDecimals());
    }

    private Operation operation(Load load, Visit visit, double angleDegrees) {
        CollarLayout.Spot spot = visit.spot();
        double x = settings.grid().snap(load.edge(visit.collar()) + spot.fromEdge());
        return spot.operation().apply(new Operation.Place(visit.collar(), x, spot.azimuth(), angleDegrees));
    }

    /** Sorts each group along X, outward or inward, for the least way in all; outward where both are as long. */
    private static List<Operation> swept(List<List<Operation>> groups) {
        Comparator<Operation> byX = Comparator.comparingDouble(o -> o.place().x());
        groups.forEach(g -> g.sort(byX));
        int count = groups.size();
        // Least way from the start of a sweep, outward or inward, to the end of all.
        double[] outward = new double[count + 1];
        double[] inward = new double[count + 1];
        for (int i = count - 1; i >= 0; i--) {
            double length = last(groups.get(i)) - first(groups.get(i));
            outward[i] = length + after(groups, i, last(groups.get(i)), outward, inward);
            inward[i] = length + after(groups, i, first(groups.get(i)), outward, inward);
        }
        List<Operation> all = new ArrayList<>();
        double at = Double.NaN;
        for (int i = 0; i < count; i++) {
            List<Operation> group = groups.get(i);
            double out = outward[i] + (i == 0 ? 0 : StrictMath.abs(first(group) - at));
            double in = inward[i] + (i == 0 ? 0 : StrictMath.abs(last(group) - at));
            if (in < out - 1e-9) {
                group.sort(byX.reversed());
                at = group.get(group.size() - 1).place().x();
            } else {
                at = last(group);
            }
            all.addAll(group);
        }
        return all;
    }

    private static double after(List<List<Operation>> groups, int i, double at, double[] outward, double[] inward) {
        if (i + 1 == groups.size()) {
            return 0;
        }
        List<Operation> next = groups.get(i + 1);
        return StrictMath.min(
                StrictMath.abs(first(next) - at) + outward[i + 1], StrictMath.abs(last(next) - at) + inward[i + 1]);
    }

    private static double first(List<Operation> sorted) {
        return sorted.get(0).place().x();
    }

    private static double last(List<Operation> sorted) {
        return sorted.get(sorted.size() - 1).place().x();
    }

    /** How far A rises in all programs of a stick with these patterns: for the dimples, then for each cutter. */
    double turning(Set<String> patterns) {
        Map<String, TreeSet<Double>> angles = new TreeMap<>();
        for (String pattern : patterns) {
            for (CollarLayout.Spot spot : layout(pattern).spots()) {
                String program = spot.mark() ? "" : spot.cutter().id();
                angles.computeIfAbsent(program, k -> new TreeSet<>()).add(spot.exactDegrees());
            }
        }
        double turned = 0;
        for (TreeSet<Double> each : angles.values()) {
            turned += each.last() - each.first();
        }
        return turned;
    }
}
