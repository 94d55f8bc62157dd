package collarwright.machining;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.IntPredicate;

/**
 * How many collars a stick holds, and where they lie.
 *
 * <p>A stick from the chuck outward: chuck length, jaw clearance (the first parting cut falls into it), then collars
 * with a parting kerf between them, then the end trim. However long stick and travel are, no stick gets more than 500
 * collars. The work does not grow with the order.
 *
 * @param settings machine and pipe
 * @param spans for each pattern of the order where on a collar the tool goes
 */
record StickRoom(RotarySettings settings, Map<String, Span> spans) {

    /** Lengths nearer than this count as equal: far below any saw, far above rounding. */
    private static final double EQUAL = 1e-9;

    /** Keeps the order of the patterns. */
    StickRoom {
        spans = Collections.unmodifiableMap(new LinkedHashMap<>(spans));
    }

    /** A stick with more collars would give programs longer than anyone can follow: our choice, no source. */
    static final int MOST_COLLARS = 500;

    /**
     * Where on a collar the tool goes.
     *
     * @param least smallest distance of a hole or mark from the collar's edge at the chuck
     * @param most largest such distance
     */
    record Span(double least, double most) {}

    List<Finding> faults() {
        List<Finding> findings = new ArrayList<>();
        double longest = sticks().stream().mapToDouble(d -> d).max().orElse(0);
        if (needed(1) > longest + EQUAL) {
            findings.add(tooShort(longest));
        }
        Machine.Travel travel = settings.machine().travel();
        spans.forEach((pattern, span) -> {
            if (firstEdge() + span.least() < travel.minX() || lastX(1, span) > travel.maxX()) {
                findings.add(beyond(pattern, span));
            }
        });
        return findings;
    }

    private Finding beyond(String pattern, Span span) {
        Machine.Travel travel = settings.machine().travel();
        return Finding.stop(
                Code.MACHINE_TRAVEL,
                new Where.Part("pattern " + pattern + " / stick"),
                "X of the first collar between " + Sizes.both(travel.minX()) + " and " + Sizes.both(travel.maxX())
                        + ", the travel of " + settings.machine().name(),
                "X " + Sizes.both(firstEdge() + span.least()) + " to " + Sizes.both(lastX(1, span)),
                "take less clearance at the jaws, or move the chuck",
                "use a machine with more X travel, or narrower collars");
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

    Load load(String id, List<String> patterns, int runs) {
        double needed = needed(patterns.size());
        Optional<Double> from = settings.work().lengths().stream()
                .filter(l ->
                        byLength(StrictMath.min(l, settings.machine().rotary().maxStick())) >= patterns.size())
                .findFirst();
        double kerf = settings.machine().rotary().partingKerf();
        int perLength = from.map(l -> (int) StrictMath.floor((l + kerf + EQUAL) / (needed + kerf)))
                .orElse(1);
        return new Load(id, patterns, runs, firstEdge(), pitch(), needed, from, StrictMath.max(1, perLength));
    }

    /** Collars of one pattern that a stick holds: by length, and by the travel to the last one's own tool places. */
    int capacity(String pattern) {
        Span span = Objects.requireNonNull(spans.get(pattern), pattern);
        return StrictMath.min(
                sticks().stream().mapToInt(this::byLength).max().orElse(0),
                most(
                        (settings.machine().travel().maxX() - lastX(0, span)) / pitch(),
                        n -> lastX(n, span) <= settings.machine().travel().maxX()));
    }

    private int byLength(double stick) {
        return most((stick - needed(0)) / pitch(), n -> needed(n) <= stick + EQUAL);
    }

    /** A division; a collar more or less where rounding stands at the edge. */
    private static int most(double quotient, IntPredicate fits) {
        int collars = (int) StrictMath.max(0, StrictMath.min(MOST_COLLARS, StrictMath.floor(quotient)));
        if (collars > 0 && !fits.test(collars)) {
            return collars - 1;
        }
        return collars < MOST_COLLARS && fits.test(collars + 1) ? collars + 1 : collars;
    }

    /** Lengths that can be put in the machine. */
    private List<Double> sticks() {
        double most = settings.machine().rotary().maxStick();
        List<Double> lengths = settings.work().lengths();
        return lengths.isEmpty()
                ? List.of(most)
                : lengths.stream().map(l -> StrictMath.min(l, most)).toList();
    }

    private double needed(int collars) {
        Machine.Rotary rotary = settings.machine().rotary();
        return rotary.chuckLength()
                + firstEdge()
                + collars * width()
                + (collars - 1) * rotary.partingKerf()
                + rotary.endTrim();
    }

    private double lastX(int collars, Span span) {
        return firstEdge() + (collars - 1) * pitch() + span.most();
    }

    private double firstEdge() {
        return firstEdge(settings);
    }

    /** The first collar is parted from the chuck end, so its kerf needs room there. */
    static double firstEdge(RotarySettings settings) {
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
