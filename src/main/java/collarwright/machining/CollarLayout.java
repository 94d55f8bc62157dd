package collarwright.machining;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.tooling.Cutter;
import collarwright.tooling.Hole;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Where the tool goes on one collar of a pattern.
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
    private final String pattern;
    private final List<Cutter> cutters;
    private final List<Spot> spots = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    /**
     * A place on a collar, with what is done there.
     *
     * @param cutter what with; an end mill as it stands in the rack
     * @param fromEdge from the collar's edge at the chuck
     * @param azimuth clockwise from above TOP
     * @param exactDegrees the angle that brings it up, in [0, 360), before it is put on the program's grid
     * @param reach how far the tool goes to either side along X: round in a bored hole, else 0
     * @param mark whether it is a dimple
     * @param operation what is done, once its place on a stick is known
     */
    record Spot(
            Cutter cutter,
            double fromEdge,
            double azimuth,
            double exactDegrees,
            double reach,
            boolean mark,
            Function<Operation.Place, Operation> operation) {}

    CollarLayout(RotarySettings settings, PatternRun run) {
        this.settings = settings;
        this.indexing = Indexing.of(settings);
        this.pattern = run.pattern().id();
        this.cutters = run.pattern().holes().stream()
                .map(h -> h.cutter().tool())
                .distinct()
                .toList();
        addMarks(run);
        run.pattern().holes().forEach(this::addHole);
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }

    /** How far from its edge at the chuck the tool goes on a collar. */
    StickRoom.Span span() {
        double middle = settings.work().body().width() / 2;
        double least =
                spots.stream().mapToDouble(s -> s.fromEdge() - s.reach()).min().orElse(middle);
        double most =
                spots.stream().mapToDouble(s -> s.fromEdge() + s.reach()).max().orElse(middle);
        return new StickRoom.Span(least, most);
    }

    /** What is done on each collar of this pattern. */
    List<Spot> spots() {
        return List.copyOf(spots);
    }

    /** The cutters of its holes, end mills as they stand in the rack. */
    List<Cutter> cutters() {
        return cutters;
    }

    private void addHole(Hole hole) {
        Cutter cutter = hole.cutter();
        if (!HoleDepth.check(settings.work(), cutter, settings.overtravel()).isEmpty()) {
            return; // found once for the cutter
        }
        double bottom = settings.grid()
                .snap(HoleDepth.of(settings.work(), cutter, settings.overtravel())
                        .bottom());
        if (cutter.bores()) {
            double diameter = cutter.asDrilled().nominal();
            add(
                    cutter,
                    hole.height(),
                    hole.azimuth(),
                    false,
                    p -> new Operation.Bore(p, hole.number(), cutter.tool(), diameter, bottom));
            return;
        }
        add(cutter, hole.height(), hole.azimuth(), false, p -> new Operation.Drill(p, hole.number(), cutter, bottom));
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
        add(cutter, height, 0, true, p -> new Operation.Mark(p, Operation.Meaning.ZERO_LINE, cutter, bottom));
        add(cutter, height, turn, true, p -> new Operation.Mark(p, Operation.Meaning.TOP, cutter, bottom));
    }

    /** Z of a dimple's point: deep enough to show where the pipe is low, never past half the thinnest wall. */
    static double markBottom(RotarySettings settings) {
        Workpiece work = settings.work();
        double asked = settings.mark().depth() + work.outOfRound() / 2;
        double depth = StrictMath.min(asked, work.body().wall().min() / 2);
        return settings.grid().snap(work.body().outerRadius() - depth);
    }

    private void add(
            Cutter cutter,
            double height,
            double azimuth,
            boolean mark,
            Function<Operation.Place, Operation> operation) {
        double fromEdge = indexing.fromEdge(settings.work().body().width(), height);
        double reach = cutter.bores() ? (cutter.asDrilled().max() - cutter.size()) / 2 : 0;
        double exact = indexing.exactDegrees(azimuth);
        spots.add(new Spot(cutter.tool(), fromEdge, azimuth, exact, reach, mark, operation));
        clampZone(cutter, fromEdge);
    }

    /** A cutter over the jaws meets them before it meets the pipe. */
    private void clampZone(Cutter cutter, double fromEdge) {
        double side =
                StickRoom.firstEdge(settings) + fromEdge - cutter.asDrilled().max() / 2;
        if (side < 0) {
            findings.add(Finding.stop(
                    Code.CLAMP_ZONE,
                    new Where.Part("pattern " + pattern + " / cutter " + cutter.id()),
                    "the side of the cutter in front of the jaw face, X 0 or more",
                    "X " + Sizes.both(side) + " on the first collar",
                    "leave more clearance at the jaws (jaw-clear in the machine's profile)",
                    "or make the collar wider"));
        }
    }
}
