package collarwright.rehearsal;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.geometry.Vec3;
import collarwright.machining.BenchProgram;
import collarwright.machining.FlatPlan;
import collarwright.machining.FlatSettings;
import collarwright.machining.FlatTask;
import collarwright.tooling.FlatStrip;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads the programs for flat strips back and proves them, before any of them may be written.
 *
 * <p>Steps for each program: its letters, its words, a replay, the rules of motion and spindle, its holes against the strip's
 * thinnest and thickest wall. Then for each pattern the strip is rolled up in space, and every hole has to stand once at its
 * place on the collar, seen from hole 1; no hole may be cut by the strip's ends.
 */
public final class FlatRehearsal {

    private static final Vec3 UP = new Vec3(0, 0, 1);

    private FlatRehearsal() {}

    /**
     * Rehearses all programs.
     *
     * @param plan the programs
     * @param settings what they were made with
     * @param strips the strips that are drilled
     * @param patterns what they have to become; none where no program is asked for
     * @return REHEARSAL_FAILED stops; empty if every program may leave
     */
    public static List<Finding> rehearse(
            FlatPlan plan, FlatSettings settings, List<FlatStrip> strips, List<Pattern> patterns) {
        List<Finding> findings = new ArrayList<>();
        plan.programs().forEach(p -> findings.addAll(rehearse(p, settings)));
        for (Pattern pattern : patterns) {
            strips.stream()
                    .filter(s -> s.pattern().equals(pattern.id()))
                    .forEach(s -> findings.addAll(rolled(plan, settings, s, pattern)));
        }
        return List.copyOf(findings);
    }

    /**
     * Rehearses one program.
     *
     * @param file the program, of which only the text is trusted to be what will run
     * @param settings what it was made with
     * @return REHEARSAL_FAILED stops by line, the first 25 if there are more
     */
    public static List<Finding> rehearse(BenchProgram<FlatTask> file, FlatSettings settings) {
        return BenchRehearsal.rehearse(file, new FlatBench(settings));
    }

    /** Where a hole is on the strip, and what made it. */
    private record Made(double x, double y, double diameter) {}

    private static List<Finding> rolled(FlatPlan plan, FlatSettings settings, FlatStrip strip, Pattern pattern) {
        List<Made> made = made(plan, settings, pattern, false);
        List<Finding> findings = new ArrayList<>();
        if (made.size() != pattern.holes().size()) {
            findings.add(fault(pattern, pattern.holes().size() + " holes", made.size() + " made"));
            return findings;
        }
        for (Made hole : made) {
            double radius = hole.diameter() / 2;
            double end = strip.joint().covered() + radius;
            if (!(hole.x() >= end && hole.x() <= strip.length() - end)) {
                findings.add(fault(pattern, "holes clear of the strip's ends", "one at X " + hole.x()));
            }
        }
        Made first = made.stream()
                .filter(h -> StrictMath.abs(h.x() - strip.holes().get(0).x())
                        <= settings.grid().step())
                .findFirst()
                .orElse(made.get(0));
        for (Hole hole : pattern.holes()) {
            Wanted wanted = new Wanted(hole.azimuth(), hole.height(), hole.diameter());
            once(
                    findings,
                    pattern,
                    "hole " + hole.number(),
                    made.stream()
                            .filter(h -> stands(h, first, wanted, strip, settings))
                            .count());
        }
        List<Made> dimples = made(plan, settings, pattern, true);
        double diameter = settings.mark().cutter().asDrilled().nominal();
        for (DimplePlace dimple : DimplePlace.of(pattern, strip.body())) {
            Wanted wanted = new Wanted(dimple.azimuth(), dimple.height(), diameter);
            // A dimple's arc is stated on the outside, which stretches when the strip is rolled.
            once(
                    findings,
                    pattern,
                    dimple.title(),
                    dimples.stream()
                            .filter(d -> stands(d, first, wanted, strip, settings))
                            .count());
        }
        return findings;
    }

    private static void once(List<Finding> findings, Pattern pattern, String what, long times) {
        if (times != 1) {
            findings.add(fault(pattern, what + " made once", times + " times"));
        }
    }

    private static List<Made> made(FlatPlan plan, FlatSettings settings, Pattern pattern, boolean marks) {
        List<Made> made = new ArrayList<>();
        FlatBench bench = new FlatBench(settings);
        for (BenchProgram<FlatTask> file : plan.programs()) {
            boolean ours = file.task().strip().pattern().equals(pattern.id());
            if (ours && !file.air()) {
                for (BenchProof proof : BenchRehearsal.proofs(file, bench)) {
                    add(proof, marks, made);
                }
            }
        }
        return made;
    }

    private static void add(BenchProof proof, boolean marks, List<Made> made) {
        BenchProof.Tool tool = proof.tool();
        if (tool.dimples() == marks) {
            double diameter = tool.cutter().asDrilled().nominal();
            proof.holes().forEach(h -> made.add(new Made(h.at().x(), h.at().y(), diameter)));
        }
    }

    /** Where something belongs on the rolled collar. */
    private record Wanted(double azimuth, double height, double diameter) {}

    /**
     * Rolls the strip about +Z (TOP up), outer face out: to the right on the strip is counter-clockwise from above.
     */
    private static boolean stands(Made made, Made first, Wanted place, FlatStrip strip, FlatSettings settings) {
        double girth = StrictMath.PI
                * (2 * strip.body().outerRadius() - strip.body().wall().nominal());
        double turn = 2 * StrictMath.PI * (made.x() - first.x()) / girth;
        Vec3 outward = Wrap.turned(new Vec3(1, 0, 0), UP, turn);
        Vec3 wanted = Wrap.turned(new Vec3(1, 0, 0), UP, -place.azimuth());
        double off = StrictMath.atan2(outward.cross(wanted).norm(), outward.dot(wanted)) * girth / 2 / StrictMath.PI;
        double slack = 1.5 * settings.grid().step();
        return off <= slack
                && StrictMath.abs(made.y() - strip.body().width() / 2 - place.height()) <= slack
                && StrictMath.abs(made.diameter() - place.diameter()) <= 1e-9;
    }

    private static Finding fault(Pattern pattern, String expected, String found) {
        return Finding.stop(
                Code.REHEARSAL_FAILED,
                new Where.Part("pattern " + pattern.id()),
                expected,
                found,
                "do not run these programs: together they do not make the pattern",
                "report it with the job file: whatever wrote them is at fault");
    }
}
