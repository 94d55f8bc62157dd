package collarwright.machining;

import collarwright.finding.Finding;
import collarwright.units.Ids;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * Lays the collars of an order on sticks of pipe: fewest sticks, then few layouts, then little turning.
 *
 * <p>The result does not depend on the order in which the patterns come, but for what lies nearest to the chuck and for
 * the names of the layouts.
 *
 * @param loads layouts, most runs first; empty if nothing can be made
 * @param count sticks and layouts beside their bounds
 * @param findings STICK_TOO_SHORT or MACHINE_TRAVEL stops
 */
record StickPlan(List<Load> loads, StickCount count, List<Finding> findings) {

    /** Keeps the lists. */
    StickPlan {
        loads = List.copyOf(loads);
        findings = List.copyOf(findings);
    }

    /**
     * Plans the sticks of an order.
     *
     * @param room where collars find room, with every pattern of the order
     * @param runs patterns and counts
     * @param rule whether patterns may be mixed
     * @param turning how far a stick with these patterns turns in all of its programs
     * @return the layouts, or stop findings: STICK_TOO_SHORT if no stick holds one collar, MACHINE_TRAVEL if the tool
     *     cannot reach the first collar along X
     */
    static StickPlan plan(
            StickRoom room, List<PatternRun> runs, StickRule rule, ToDoubleFunction<Set<String>> turning) {
        List<Finding> findings = room.faults();
        if (!findings.isEmpty()) {
            return new StickPlan(List.of(), StickCount.NONE, findings);
        }
        return new Laying(room, runs, turning).plan(rule);
    }

    /** Layouts of some patterns. */
    private record Laid(List<List<String>> places, List<Integer> runs, int leastLayouts) {}

    private static final class Laying {
        private final StickRoom room;
        private final List<PatternRun> runs;
        private final List<PatternRun> mostFirst;
        private final ToDoubleFunction<Set<String>> turning;
        private final Map<Set<String>, Double> turned = new HashMap<>();
        private final int everyone;
        private final int furthest;

        Laying(StickRoom room, List<PatternRun> runs, ToDoubleFunction<Set<String>> turning) {
            this.room = room;
            this.runs = runs;
            this.turning = turning;
            this.mostFirst = runs.stream()
                    .sorted(Comparator.comparingInt((PatternRun r) -> -r.made())
                            .thenComparing(r -> r.pattern().id()))
                    .toList();
            this.everyone = runs.stream().mapToInt(this::capacity).min().orElseThrow();
            // A tool place lies within its collar, so that patterns differ by one place at most.
            this.furthest = StrictMath.min(
                    everyone + 1, runs.stream().mapToInt(this::capacity).max().orElseThrow());
        }

        private int capacity(PatternRun run) {
            return room.capacity(run.pattern().id());
        }

        StickPlan plan(StickRule rule) {
            List<Laid> all = rule == StickRule.MIXED
                    ? List.of(mixed())
                    : runs.stream().map(r -> uniform(List.of(r), capacity(r))).toList();
            List<Load> loads = new ArrayList<>();
            int leastLayouts = 0;
            int sticks = 0;
            for (Laid laid : all) {
                leastLayouts += laid.leastLayouts();
                for (int i = 0; i < laid.places().size(); i++) {
                    loads.add(room.load(
                            Ids.letters('L', loads.size()),
                            laid.places().get(i),
                            laid.runs().get(i)));
                    sticks += laid.runs().get(i);
                }
            }
            int least = StrictMath.toIntExact(leastSticks());
            return new StickPlan(loads, new StickCount(sticks, least, loads.size(), leastLayouts), List.of());
        }

        /** Every stick has a place that some patterns cannot take, or none: either all places or those collars run out. */
        private long leastSticks() {
            long free = total(r -> capacity(r) > everyone);
            long total = total(r -> true);
            return furthest == everyone
                    ? ceil(total, everyone)
                    : StrictMath.max(ceil(total, furthest), ceil(StrictMath.max(0, total - free), everyone));
        }

        private long total(Predicate<PatternRun> which) {
            return runs.stream().filter(which).mapToLong(PatternRun::made).sum();
        }

        private static long ceil(long all, int each) {
            return (all + each - 1) / each;
        }

        private Laid mixed() {
            long sticks = leastSticks();
            long beyond = total(r -> true) - sticks * everyone;
            if (beyond <= 0) {
                Laid laid = uniform(mostFirst, everyone);
                return furthest == everyone ? laid : new Laid(laid.places(), laid.runs(), 1);
            }
            return withLast(beyond);
        }

        /** All patterns reach every place. */
        private Laid uniform(List<PatternRun> some, int places) {
            int[] demand = some.stream().mapToInt(PatternRun::made).toArray();
            FewestLayouts fewest = FewestLayouts.of(demand, places, mix -> turning(some, mix));
            List<List<String>> laid =
                    fewest.mixes().stream().map(m -> places(some, m)).toList();
            return new Laid(laid, fewest.mixes().stream().map(Mix::runs).toList(), fewest.leastLayouts());
        }

        private double turning(List<PatternRun> some, Mix mix) {
            Set<String> on = new TreeSet<>(places(some, mix));
            return turned.computeIfAbsent(on, turning::applyAsDouble);
        }

        /** In the order of the job, from the chuck. */
        private List<String> places(List<PatternRun> some, Mix mix) {
            List<String> places = new ArrayList<>();
            for (PatternRun run : runs) {
                int at = some.indexOf(run);
                for (int i = 0; at >= 0 && i < mix.counts().get(at); i++) {
                    places.add(run.pattern().id());
                }
            }
            return places;
        }

        /** Full sticks, of which some have one more collar at the far end, of a pattern whose tool places allow it. */
        private Laid withLast(long beyond) {
            List<PatternRun> rest = new ArrayList<>();
            List<String> last = new ArrayList<>();
            List<Long> times = new ArrayList<>();
            long open = beyond;
            for (PatternRun run : mostFirst) {
                long taken = capacity(run) > everyone ? StrictMath.min(open, run.made()) : 0;
                if (taken > 0) {
                    last.add(run.pattern().id());
                    times.add(taken);
                    open -= taken;
                }
                if (taken < run.made()) {
                    rest.add(new PatternRun(run.pattern(), (int) (run.made() - taken)));
                }
            }
            Laid full = uniformOf(rest);
            List<List<String>> places = new ArrayList<>();
            List<Integer> runsOf = new ArrayList<>();
            int far = 0;
            for (int i = 0; i < full.places().size(); i++) {
                long left = full.runs().get(i);
                while (left > 0) {
                    boolean more = far < last.size();
                    long run = more ? StrictMath.min(left, times.get(far)) : left;
                    List<String> stick = new ArrayList<>(full.places().get(i));
                    if (more) {
                        stick.add(last.get(far));
                        times.set(far, times.get(far) - run);
                        far += times.get(far) == 0 ? 1 : 0;
                    }
                    places.add(stick);
                    runsOf.add((int) run);
                    left -= run;
                }
            }
            return new Laid(places, runsOf, 1);
        }

        private Laid uniformOf(List<PatternRun> rest) {
            Map<String, PatternRun> byId = new HashMap<>();
            rest.forEach(r -> byId.put(r.pattern().id(), r));
            List<PatternRun> inOrder = runs.stream()
                    .map(r -> byId.get(r.pattern().id()))
                    .filter(Objects::nonNull)
                    .toList();
            return new Laying(room, inOrder, turning).uniform(rest, everyone);
        }
    }
}
