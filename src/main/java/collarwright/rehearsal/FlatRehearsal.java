package collarwright.rehearsal;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.geometry.Interval;
import collarwright.geometry.Vec3;
import collarwright.machining.FlatPlan;
import collarwright.machining.FlatProgram;
import collarwright.machining.FlatSettings;
import collarwright.machining.FlatTask;
import collarwright.tooling.FlatStrip;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

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
    public static List<Finding> rehearse(FlatProgram file, FlatSettings settings) {
        List<Fault> faults =
                new ArrayList<>(TextRules.check(file.text(), settings.machine().post()));
        BlockReader reader = BlockReader.read(file.text());
        faults.addAll(reader.faults());
        Interpreter.Run run = Interpreter.run(reader.blocks(), Pose.UNKNOWN);
        faults.addAll(run.faults());
        faults.addAll(WordRules.check(settings.machine(), settings.cuts().units(), reader.blocks()));
        int rpm = file.task().cut().rpm();
        faults.addAll(SpindleRules.check(settings.machine(), run.events(), OptionalInt.of(rpm)));
        BenchProof proof = proof(file, settings, run.events());
        faults.addAll(BenchMotion.check(proof, new BenchMotion.Ways("ZXY", false, Double.NEGATIVE_INFINITY)));
        faults.addAll(RapidRules.check(proof, Ground.of(proof, file.task())));
        faults.addAll(BenchCuts.check(proof));
        return FaultyProgram.findings(file.name(), faults);
    }

    private static BenchProof proof(FlatProgram file, FlatSettings settings, List<Event> events) {
        FlatTask task = file.task();
        Interval wall = task.strip().body().wall();
        double clear = settings.table().clampHeight()
                + settings.machine().travel().clearGap()
                + task.cutter().lead();
        BenchProof.Levels levels = task.marks()
                ? new BenchProof.Levels(0, 0, -wall.min(), clear, file.lift())
                : new BenchProof.Levels(
                        0, -wall.max(), -wall.min() - settings.table().under(), clear, file.lift());
        BenchProof.Tool tool = new BenchProof.Tool(task.cutter(), task.cut(), task.marks());
        return new BenchProof(settings.machine(), settings.cuts().units(), tool, levels, events);
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
        for (FlatProgram file : plan.programs()) {
            boolean ours = file.task().marks() == marks
                    && file.task().strip().pattern().equals(pattern.id());
            if (ours && !file.air()) {
                List<Block> blocks = BlockReader.read(file.text()).blocks();
                double diameter = file.task().cutter().asDrilled().nominal();
                proof(file, settings, Interpreter.run(blocks, Pose.UNKNOWN).events())
                        .holes()
                        .forEach(h -> made.add(new Made(h.at().x(), h.at().y(), diameter)));
            }
        }
        return made;
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
