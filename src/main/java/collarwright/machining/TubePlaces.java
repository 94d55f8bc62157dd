package collarwright.machining;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.tooling.Cutter;
import collarwright.tooling.Hole;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * What a tube cutter does on a stick, and in which order: the spots that mark, then the holes, both with A rising and X to
 * and fro; then, if it parts collars off, the cuts all round, from the free end inward, so that the stick stays held.
 */
final class TubePlaces {

    /** The same places as on the rotary mill. Our own convention. */
    private static final double MARK_FROM_EDGE = 5;

    private static final double MARK_ARC = 6;

    private final RotarySettings settings;
    private final TubeCutter tube;
    private final Cutter cutter;
    private final TubeHeights heights;
    private final Indexing indexing;
    private final Map<String, PatternRun> runs = new LinkedHashMap<>();

    TubePlaces(RotarySettings settings, List<PatternRun> runs) {
        this.settings = settings;
        this.tube = settings.machine().tube().orElseThrow();
        this.cutter = tube.cutter();
        this.heights = TubeHeights.of(settings);
        this.indexing = Indexing.of(settings);
        runs.forEach(r -> this.runs.put(r.pattern().id(), r));
    }

    /** Where on a collar of each pattern the middle of the cut goes, from the collar's edge at the chuck. */
    Map<String, StickRoom.Span> spans() {
        Map<String, StickRoom.Span> spans = new LinkedHashMap<>();
        runs.forEach((id, run) -> spans.put(id, span(run)));
        return spans;
    }

    private StickRoom.Span span(PatternRun run) {
        double width = settings.work().body().width();
        double half = tube.kerf() / 2;
        double least = tube.limits().parts() ? -half : width;
        double most = tube.limits().parts() ? width + half : 0;
        for (Hole hole : run.pattern().holes()) {
            double middle = indexing.fromEdge(width, hole.height());
            least = StrictMath.min(least, middle - hole.diameter() / 2 + half);
            most = StrictMath.max(most, middle + hole.diameter() / 2 - half);
        }
        if (marks()) {
            double mark = indexing.fromEdge(width, markHeight(run));
            least = StrictMath.min(least, mark);
            most = StrictMath.max(most, mark);
        }
        return new StickRoom.Span(least, most);
    }

    /** A mark needs a web between hole 1 and the TOP edge, and the jaws need to be left alone. */
    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        runs.forEach((id, run) -> {
            double web = web(run);
            if (marks() && !(web > 0)) {
                findings.add(Finding.stop(
                        Code.WEB_TO_EDGE,
                        new Where.Part("pattern " + id + " / hole 1"),
                        "a web toward the TOP edge",
                        Sizes.both(web),
                        "make the collar wider"));
            }
            double side = StickRoom.firstEdge(settings) + span(run).least() - tube.kerf() / 2;
            if (side < -1e-9) {
                findings.add(Finding.stop(
                        Code.CLAMP_ZONE,
                        new Where.Part("pattern " + id + " / stick"),
                        "the side of the cut in front of the jaw face, X 0 or more",
                        "X " + Sizes.both(side) + " on the first collar",
                        "leave more clearance at the jaws (jaw-clear in the machine's profile)",
                        "or make the collar wider"));
            }
        });
        return findings;
    }

    private boolean marks() {
        return tube.start().markSeconds() > 0;
    }

    private double web(PatternRun run) {
        Hole first = run.pattern().holes().get(0);
        return settings.work().body().width() / 2 - first.height() - first.diameter() / 2;
    }

    private double markHeight(PatternRun run) {
        return settings.work().body().width() / 2 - StrictMath.min(MARK_FROM_EDGE, web(run) / 2);
    }

    /** Everything on a stick, in order. */
    List<Operation> operations(Load load) {
        List<Operation> spots = new ArrayList<>();
        List<Operation> holes = new ArrayList<>();
        for (int collar = 1; collar <= load.collars(); collar++) {
            PatternRun run = Objects.requireNonNull(runs.get(load.pattern(collar)), "laid before");
            if (marks()) {
                spots.add(mark(load, collar, 0, Operation.Meaning.ZERO_LINE));
                double turn = MARK_ARC / settings.work().body().outerRadius();
                spots.add(mark(load, collar, turn, Operation.Meaning.TOP));
            }
            for (Hole hole : run.pattern().holes()) {
                Operation.Place place = place(load, collar, hole.height(), hole.azimuth());
                holes.add(new Operation.Contour(place, hole.number(), cutter, hole.diameter(), heights.cut()));
            }
        }
        List<Operation> all = swept(spots);
        all.addAll(swept(holes));
        if (tube.limits().parts()) {
            all.addAll(partings(load));
        }
        return all;
    }

    private Operation mark(Load load, int collar, double azimuth, Operation.Meaning meaning) {
        PatternRun run = Objects.requireNonNull(runs.get(load.pattern(collar)), "laid before");
        Operation.Place place = place(load, collar, markHeight(run), azimuth);
        return new Operation.Mark(place, meaning, cutter, heights.pierce());
    }

    private Operation.Place place(Load load, int collar, double height, double azimuth) {
        double fromEdge = indexing.fromEdge(settings.work().body().width(), height);
        double x = settings.grid().snap(load.edge(collar) + fromEdge);
        return new Operation.Place(collar, x, azimuth, indexing.angleDegrees(azimuth));
    }

    /** First the free end is trimmed; then the outermost collar comes off, and so on toward the chuck. */
    private List<Operation> partings(Load load) {
        List<Operation> cuts = new ArrayList<>();
        int last = load.collars();
        double half = tube.kerf() / 2;
        double end = load.edge(last) + settings.work().body().width() + half;
        cuts.add(parting(last, end, true));
        for (int collar = last; collar >= 1; collar--) {
            cuts.add(parting(collar, load.edge(collar) - half, false));
        }
        return cuts;
    }

    private Operation parting(int collar, double x, boolean trim) {
        Operation.Place place = new Operation.Place(collar, settings.grid().snap(x), 0, 0);
        return new Operation.PartOff(place, trim, cutter, heights.cut());
    }

    /** A rises; at one angle X goes to and fro. */
    private static List<Operation> swept(List<Operation> operations) {
        TreeMap<Double, List<Operation>> byAngle = new TreeMap<>();
        operations.forEach(o -> byAngle.computeIfAbsent(o.place().angleDegrees(), a -> new ArrayList<>())
                .add(o));
        List<Operation> all = new ArrayList<>();
        Comparator<Operation> outward =
                Comparator.comparingDouble(o -> o.place().x());
        boolean out = true;
        for (List<Operation> group : byAngle.values()) {
            group.sort(out ? outward : outward.reversed());
            all.addAll(group);
            out = !out;
        }
        return all;
    }
}
