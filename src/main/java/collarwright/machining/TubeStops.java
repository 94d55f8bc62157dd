package collarwright.machining;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.tooling.Hole;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What stops a tube cutter before anything is laid out: pipe, travel, heights, and holes that it cannot cut. */
final class TubeStops {

    private final RotarySettings settings;
    private final TubeCutter tube;
    private final Where machine;
    private final List<Finding> findings = new ArrayList<>();

    private TubeStops(RotarySettings settings) {
        this.settings = settings;
        this.tube = settings.machine().tube().orElseThrow();
        this.machine = new Where.Part("machine " + settings.machine().name());
    }

    static List<Finding> check(RotarySettings settings, List<PatternRun> runs) {
        TubeStops stops = new TubeStops(settings);
        stops.pipe();
        stops.heights();
        Map<Double, String> holes = new LinkedHashMap<>();
        for (PatternRun run : runs) {
            for (Hole hole : run.pattern().holes()) {
                holes.putIfAbsent(hole.diameter(), "pattern " + run.pattern().id() + " / hole " + hole.number());
            }
        }
        holes.forEach(stops::hole);
        return stops.findings;
    }

    private void pipe() {
        double largest =
                2 * settings.work().body().outerRadius() + settings.work().outOfRound();
        if (largest > tube.limits().largestOd()) {
            stop(
                    Code.MACHINE_UNABLE,
                    machine,
                    "a pipe of " + Sizes.both(tube.limits().largestOd()) + " outside diameter or less",
                    Sizes.both(largest),
                    "use a machine with a larger chuck",
                    "use a smaller pipe");
        }
        Machine.Travel travel = settings.machine().travel();
        TubeHeights heights = TubeHeights.of(settings);
        if (heights.cut() < travel.minZ() || heights.clear() > travel.maxZ()) {
            stop(
                    Code.MACHINE_TRAVEL,
                    machine,
                    "Z between " + Sizes.both(travel.minZ()) + " and " + Sizes.both(travel.maxZ()),
                    "Z " + Sizes.both(heights.cut()) + " while it cuts, " + Sizes.both(heights.clear())
                            + " where the pipe turns with nothing cut",
                    "use a machine with more Z travel",
                    "use a smaller pipe");
        }
    }

    /** A jet stays off an out-of-round pipe, and a blade comes through it. */
    private void heights() {
        double cut = tube.heights().cut();
        double outOfRound = settings.work().outOfRound();
        double wall = settings.work().body().wall().max();
        if (tube.process() == CutMeans.KNIFE && -cut < wall + outOfRound) {
            stop(
                    Code.MACHINE_UNABLE,
                    machine,
                    "a blade that goes " + Sizes.both(wall + outOfRound) + " deep or deeper, through the wall",
                    "tube.cut-height of " + Sizes.both(cut),
                    "let it go deeper, if the blade is long enough");
        }
        double lowest = tube.process() == CutMeans.KNIFE ? tube.heights().pierce() : cut;
        if (lowest <= outOfRound) {
            stop(
                    Code.MACHINE_UNABLE,
                    machine,
                    "a tip that stays above the pipe, which is out of round by " + Sizes.both(outOfRound),
                    "Z " + Sizes.both(lowest) + " above the crown",
                    "pierce and cut from further above, if the process allows it",
                    "use a rounder pipe");
        }
    }

    private void hole(double diameter, String where) {
        double bore = settings.work().body().leastInnerRadius();
        if (diameter / 2 >= bore) {
            stop(
                    Code.HOLE_TOO_WIDE,
                    new Where.Part(where),
                    "a hole narrower than the pipe's bore, " + Sizes.both(2 * bore),
                    Sizes.both(diameter),
                    "use a larger pipe or a smaller hole");
            return;
        }
        double widest = diameter;
        TubeOutline outline =
                new TubeOutline(diameter, bore, settings.work().body().outerRadius());
        widest = StrictMath.min(widest, 2 * outline.tightest());
        if (tube.kerf() >= widest) {
            stop(
                    Code.MACHINE_UNABLE,
                    new Where.Part(where),
                    "a cut narrower than " + Sizes.both(widest) + ", the hole and the tightest bend of its outline",
                    "tube.kerf of " + Sizes.both(tube.kerf()),
                    "check the kerf in the machine's profile, and its unit",
                    "cut with something narrower, or use a larger pipe");
        }
    }

    private void stop(Code code, Where where, String expected, String found, String... hints) {
        findings.add(Finding.stop(code, where, expected, found, hints));
    }
}
