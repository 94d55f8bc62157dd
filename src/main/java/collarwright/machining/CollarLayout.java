package collarwright.machining;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.tooling.Cutter;
import collarwright.tooling.Hole;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Where the tool goes on one collar, and the same on every collar of a stick.
 *
 * <p>The dimple of the 0° line lies on it between hole 1 and the TOP edge, 5 mm from that edge or half the web if that is
 * less; the TOP dimple lies beside it, 6 mm of arc clockwise from above, as far from the edge. So the pair tells TOP and
 * the clockwise sense. Our own convention.
 */
final class CollarLayout {

    /** From a dimple to the TOP edge, where the web is wide enough: our choice, no source. */
    private static final double MARK_FROM_EDGE = 5;

    /** Two 3 mm dimples that nobody takes for one: our choice, no source. */
    private static final double MARK_ARC = 6;

    private final RotarySettings settings;
    private final Indexing indexing;
    private final List<Spot> spots = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    /** A place on a collar, with what is done there. */
    private record Spot(
            Cutter cutter, double fromEdge, double angleDegrees, Function<Operation.Place, Operation> operation) {}

    CollarLayout(RotarySettings settings, PatternRun run) {
        this.settings = settings;
        this.indexing = Indexing.of(settings);
        addMarks(run);
        run.pattern().holes().forEach(this::addHole);
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }

    /** How far from its edge at the chuck the tool goes on a collar. */
    StickPlan.Span span() {
        double middle = settings.work().body().width() / 2;
        double least = spots.stream().mapToDouble(Spot::fromEdge).min().orElse(middle);
        double most = spots.stream().mapToDouble(Spot::fromEdge).max().orElse(middle);
        return new StickPlan.Span(least, most);
    }

    /** Operations of a whole stick with one cutter: A rising, X to and fro. */
    List<Operation> operations(Load load, Cutter cutter, boolean marks) {
        TreeMap<Double, List<Operation>> byAngle = new TreeMap<>();
        for (int collar = 1; collar <= load.collars(); collar++) {
            for (Spot spot : spots) {
                Operation operation = spot.operation().apply(place(load, collar, spot));
                if (operation instanceof Operation.Mark == marks && cutter.equals(spot.cutter())) {
                    byAngle.computeIfAbsent(spot.angleDegrees(), a -> new ArrayList<>())
                            .add(operation);
                }
            }
        }
        List<Operation> all = new ArrayList<>();
        boolean outward = true;
        for (List<Operation> group : byAngle.values()) {
            Comparator<Operation> byX =
                    Comparator.comparingDouble(o -> o.place().x());
            group.sort(outward ? byX : byX.reversed());
            all.addAll(group);
            outward = !outward;
        }
        return all;
    }

    private Operation.Place place(Load load, int collar, Spot spot) {
        double x = settings.grid().snap(load.edge(collar) + spot.fromEdge());
        return new Operation.Place(collar, x, 0, spot.angleDegrees());
    }

    private void addHole(Hole hole) {
        Cutter cutter = hole.cutter();
        if (!HoleDepth.check(settings.work(), cutter, settings.overtravel()).isEmpty()) {
            return; // found once for the cutter
        }
        double bottom = settings.grid()
                .snap(HoleDepth.of(settings.work(), cutter, settings.overtravel())
                        .bottom());
        add(cutter, hole.height(), hole.azimuth(), p -> new Operation.Drill(p, hole.number(), cutter, bottom));
    }

    private void addMarks(PatternRun run) {
        double half = settings.work().body().width() / 2;
        Hole first = run.pattern().holes().get(0);
        double web = half - first.height() - first.cutter().asDrilled().max() / 2;
        if (!(web > 0)) {
            findings.add(Finding.stop(
                    Code.WEB_TO_EDGE,
                    new Where.Part("pattern " + run.pattern().id() + " / hole 1"),
                    "a web toward the TOP edge",
                    Sizes.both(web),
                    "make the collar wider"));
            return;
        }
        Cutter cutter = settings.mark().cutter();
        double height = half - StrictMath.min(MARK_FROM_EDGE, web / 2);
        double bottom = markBottom(settings);
        double turn = MARK_ARC / settings.work().body().outerRadius();
        add(cutter, height, 0, p -> new Operation.Mark(p, Operation.Meaning.ZERO_LINE, cutter, bottom));
        add(cutter, height, turn, p -> new Operation.Mark(p, Operation.Meaning.TOP, cutter, bottom));
    }

    /** Z of a dimple's point: deep enough to show where the pipe is low, never past half the thinnest wall. */
    static double markBottom(RotarySettings settings) {
        Workpiece work = settings.work();
        double asked = settings.mark().depth() + work.outOfRound() / 2;
        double depth = StrictMath.min(asked, work.body().wall().min() / 2);
        return settings.grid().snap(work.body().outerRadius() - depth);
    }

    private void add(Cutter cutter, double height, double azimuth, Function<Operation.Place, Operation> operation) {
        double fromEdge = indexing.fromEdge(settings.work().body().width(), height);
        spots.add(new Spot(
                cutter,
                fromEdge,
                indexing.angleDegrees(azimuth),
                p -> operation.apply(new Operation.Place(p.collar(), p.x(), azimuth, p.angleDegrees()))));
    }
}
