package collarwright.machining;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Lays equal collars on sticks of pipe so that the fewest sticks are loaded.
 *
 * <p>A stick from the chuck outward: chuck length, jaw clearance (the first parting cut falls into it), then collars
 * with a parting kerf between them, then the end trim. Full sticks first, then one remainder load if any. However long
 * stick and travel are, no stick gets more than 500 collars. The work does not grow with the order.
 *
 * @param loads full sticks, then the remainder; empty if nothing can be made
 * @param findings STICK_TOO_SHORT or MACHINE_TRAVEL stops
 */
public record StickPlan(List<Load> loads, List<Finding> findings) {

    /** Lengths nearer than this count as equal: far below any saw, far above rounding. */
    private static final double EQUAL = 1e-9;

    /** A stick with more collars would give programs longer than anyone can follow: our choice, no source. */
    private static final int MOST_COLLARS = 500;

    /** Keeps the lists. */
    public StickPlan {
        loads = List.copyOf(loads);
        findings = List.copyOf(findings);
    }

    /**
     * Where on a collar the tool goes.
     *
     * @param least smallest distance of a hole or mark from the collar's edge at the chuck
     * @param most largest such distance
     */
    public record Span(double least, double most) {}

    /**
     * Plans the loads of one pattern.
     *
     * @param settings machine and pipe
     * @param run pattern and count
     * @param span where on a collar the tool goes
     * @return the loads, or stop findings: STICK_TOO_SHORT if no stick holds one collar, MACHINE_TRAVEL if the tool
     *     cannot reach the first collar along X
     */
    public static StickPlan plan(RotarySettings settings, PatternRun run, Span span) {
        return new Layout(settings, span).plan(run);
    }

    private record Layout(RotarySettings settings, Span span) {

        StickPlan plan(PatternRun run) {
            List<Finding> findings = faults(run);
            if (!findings.isEmpty()) {
                return new StickPlan(List.of(), findings);
            }
            int most = sticks().stream().mapToInt(this::capacity).max().orElse(0);
            List<Load> loads = new ArrayList<>();
            if (run.made() >= most) {
                loads.add(load(1, most, run.made() / most));
            }
            if (run.made() % most > 0) {
                loads.add(load(loads.size() + 1, run.made() % most, 1));
            }
            return new StickPlan(loads, List.of());
        }

        private List<Finding> faults(PatternRun run) {
            List<Finding> findings = new ArrayList<>();
            double longest = sticks().stream().mapToDouble(d -> d).max().orElse(0);
            Where where = new Where.Part("pattern " + run.pattern().id() + " / stick");
            if (needed(1) > longest + EQUAL) {
                findings.add(tooShort(longest));
            }
            Machine.Travel travel = settings.machine().travel();
            if (firstEdge() + span.least() < travel.minX() || lastX(1) > travel.maxX()) {
                findings.add(Finding.stop(
                        Code.MACHINE_TRAVEL,
                        where,
                        "X of the first collar between " + Sizes.both(travel.minX()) + " and "
                                + Sizes.both(travel.maxX()) + ", the travel of "
                                + settings.machine().name(),
                        "X " + Sizes.both(firstEdge() + span.least()) + " to " + Sizes.both(lastX(1)),
                        "take less clearance at the jaws, or move the chuck",
                        "use a machine with more X travel, or narrower collars"));
            }
            return findings;
        }

        private Finding tooShort(double longest) {
            Machine.Rotary rotary = settings.machine().rotary();
            boolean machine = longest >= rotary.maxStick() - EQUAL;
            return Finding.stop(
                    Code.STICK_TOO_SHORT,
                    new Where.Part("stick"),
                    "a stick of " + Sizes.both(needed(1)) + " or more: chuck " + Sizes.both(rotary.chuckLength())
                            + ", jaw clearance " + Sizes.both(firstEdge()) + ", one collar "
                            + Sizes.both(width()) + ", end trim " + Sizes.both(rotary.endTrim()),
                    machine
                            ? "the longest stick that " + settings.machine().name() + " takes: " + Sizes.both(longest)
                            : "the longest stock length: " + Sizes.both(longest),
                    machine ? "use a machine that takes longer sticks" : "buy the pipe in longer lengths",
                    "make the collars narrower, or hold less pipe in the chuck");
        }

        private Load load(int number, int collars, int runs) {
            double needed = needed(collars);
            Optional<Double> from = settings.work().lengths().stream()
                    .filter(l -> capacity(StrictMath.min(
                                    l, settings.machine().rotary().maxStick()))
                            >= collars)
                    .findFirst();
            double kerf = settings.machine().rotary().partingKerf();
            int perLength = from.map(l -> (int) StrictMath.floor((l + kerf + EQUAL) / (needed + kerf)))
                    .orElse(1);
            return new Load(number, collars, runs, firstEdge(), pitch(), needed, from, StrictMath.max(1, perLength));
        }

        /** Lengths that can be put in the machine. */
        private List<Double> sticks() {
            double most = settings.machine().rotary().maxStick();
            List<Double> lengths = settings.work().lengths();
            return lengths.isEmpty()
                    ? List.of(most)
                    : lengths.stream().map(l -> StrictMath.min(l, most)).toList();
        }

        /** By length and by travel, each a division; a collar more or less where rounding stands at the edge. */
        private int capacity(double stick) {
            double byLength = (stick - needed(0)) / pitch();
            double byTravel = (settings.machine().travel().maxX() - lastX(0)) / pitch();
            double least = StrictMath.min(byLength, byTravel);
            int collars = (int) StrictMath.max(0, StrictMath.min(MOST_COLLARS, StrictMath.floor(least)));
            if (collars > 0 && !fits(collars, stick)) {
                return collars - 1;
            }
            return collars < MOST_COLLARS && fits(collars + 1, stick) ? collars + 1 : collars;
        }

        private boolean fits(int collars, double stick) {
            return needed(collars) <= stick + EQUAL
                    && lastX(collars) <= settings.machine().travel().maxX();
        }

        private double needed(int collars) {
            Machine.Rotary rotary = settings.machine().rotary();
            return rotary.chuckLength()
                    + firstEdge()
                    + collars * width()
                    + (collars - 1) * rotary.partingKerf()
                    + rotary.endTrim();
        }

        private double lastX(int collars) {
            return firstEdge() + (collars - 1) * pitch() + span.most();
        }

        /** The first collar is parted from the chuck end, so its kerf needs room there. */
        private double firstEdge() {
            Machine.Rotary rotary = settings.machine().rotary();
            return StrictMath.max(rotary.jawClear(), rotary.partingKerf());
        }

        private double width() {
            return settings.work().body().width();
        }

        private double pitch() {
            return width() + settings.machine().rotary().partingKerf();
        }
    }
}
