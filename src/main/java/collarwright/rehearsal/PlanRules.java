package collarwright.rehearsal;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.geometry.Vec3;
import collarwright.machining.Load;
import collarwright.machining.Machine;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramFile;
import collarwright.machining.RotaryPlan;
import collarwright.machining.RotarySettings;
import collarwright.machining.SetupSheet;
import collarwright.tooling.Cutter;
import collarwright.tooling.Hole;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Holds all programs of a plan together against the patterns: no hole and no dimple left out or made twice, every stick long enough. */
final class PlanRules {

    private final RotaryPlan plan;
    private final RotarySettings settings;
    private final List<Finding> findings = new ArrayList<>();

    private PlanRules(RotaryPlan plan, RotarySettings settings) {
        this.plan = plan;
        this.settings = settings;
    }

    static List<Finding> check(RotaryPlan plan, RotarySettings settings, List<PatternRun> runs) {
        PlanRules rules = new PlanRules(plan, settings);
        runs.forEach(rules::pattern);
        rules.names();
        return rules.findings;
    }

    /** A hole as the text made it, in the pipe's frame. */
    private record Made(String file, double x, Vec3 direction, double diameter) {}

    /** Where something belongs: X of the collar's edge at the chuck, place on the collar, size. */
    private record Place(double edge, double height, double azimuth, double diameter) {}

    private void pattern(PatternRun run) {
        List<SetupSheet> setups = plan.setups().stream()
                .filter(s -> s.pattern().equals(run.pattern().id()))
                .toList();
        int made = setups.stream()
                .mapToInt(s -> s.load().collars() * s.load().runs())
                .sum();
        if (made != run.made()) {
            fault(run, run.made() + " collars", made + " on all sticks");
        }
        setups.forEach(s -> {
            stick(run, s.load());
            holes(run, s.load());
            dimples(run, s.load());
        });
    }

    /** No two programs overwrite each other, in a folder or in a control, and a cutter's number means one cutter. */
    private void names() {
        distinct(
                "file names",
                plan.programs().stream()
                        .map(f -> f.name().toLowerCase(Locale.ROOT))
                        .toList());
        if (settings.machine().post().layout().habits().programNumber() > 0) {
            distinct(
                    "program numbers",
                    plan.programs().stream().map(PlanRules::programNumber).toList());
        }
        Map<Integer, Cutter> cutters = new HashMap<>();
        for (ProgramFile file : plan.programs()) {
            for (ProgramFile view : file.byTask()) {
                view.task()
                        .filter(t -> settings.machine().post().layout().habits().allInOneFile())
                        .ifPresent(t -> {
                            Cutter before = cutters.putIfAbsent(t.tool(), t.cutter());
                            if (before != null && !before.equals(t.cutter())) {
                                fault(
                                        "program " + file.name(),
                                        "cutter " + t.tool() + " always " + before.id(),
                                        t.cutter().id());
                            }
                        });
            }
        }
    }

    private void distinct(String things, List<String> names) {
        int different = new HashSet<>(names).size();
        if (different < names.size()) {
            fault("all programs", names.size() + " different " + things, different + " different ones");
        }
    }

    private static String programNumber(ProgramFile file) {
        return BlockReader.read(file.text()).blocks().stream()
                .findFirst()
                .flatMap(b -> b.value('O'))
                .map(String::valueOf)
                .orElse("none");
    }

    private void stick(PatternRun run, Load load) {
        Machine.Rotary rotary = settings.machine().rotary();
        double width = settings.work().body().width();
        double used = rotary.chuckLength() + rotary.endTrim() + StrictMath.max(rotary.jawClear(), rotary.partingKerf());
        for (int i = 0; i < load.collars(); i++) {
            used += width + (i == 0 ? 0 : rotary.partingKerf());
        }
        double most = load.fromLength().orElse(rotary.maxStick());
        if (used > load.stickLength() + 1e-6
                || load.stickLength() > StrictMath.min(most, rotary.maxStick()) + 1e-6
                || load.pitch() < width + rotary.partingKerf() - 1e-9
                || load.firstEdge() < StrictMath.max(rotary.jawClear(), rotary.partingKerf()) - 1e-9) {
            fault(run, "a stick of " + mm(used) + " with room for every cut", laid(load));
        }
    }

    private void holes(PatternRun run, Load load) {
        List<Made> made = made(run, load, false);
        for (int collar = 1; collar <= load.collars(); collar++) {
            for (Hole hole : run.pattern().holes()) {
                Place place = new Place(load.edge(collar), hole.height(), hole.azimuth(), hole.diameter());
                once(run, "collar " + collar + ", hole " + hole.number(), count(made, place));
            }
        }
        inAll(run, load, load.collars() * run.pattern().holes().size(), made.size(), "holes");
    }

    private void dimples(PatternRun run, Load load) {
        List<Made> made = made(run, load, true);
        List<DimplePlace> dimples = DimplePlace.of(run.pattern(), settings);
        double diameter = settings.mark().cutter().asDrilled().nominal();
        for (int collar = 1; collar <= load.collars(); collar++) {
            for (DimplePlace dimple : dimples) {
                Place place = new Place(load.edge(collar), dimple.height(), dimple.azimuth(), diameter);
                once(run, "collar " + collar + ", " + dimple.title(), count(made, place));
            }
        }
        inAll(run, load, load.collars() * dimples.size(), made.size(), "dimples");
    }

    private void once(PatternRun run, String what, long found) {
        if (found != 1) {
            fault(run, what + " made once", found + " times");
        }
    }

    private void inAll(PatternRun run, Load load, int planned, int made, String things) {
        if (made != planned) {
            fault(run, planned + " " + things + " on stick " + load.number(), made + " made");
        }
    }

    private List<Made> made(PatternRun run, Load load, boolean marks) {
        List<Made> made = new ArrayList<>();
        for (ProgramFile file : plan.programs()) {
            if (file.purpose() != ProgramFile.Purpose.CUT
                    || file.byTask().stream().noneMatch(f -> ours(f, run, load, marks))) {
                continue;
            }
            BlockReader reader = BlockReader.read(file.text());
            List<Event> events = Interpreter.run(reader.blocks(), Pose.UNKNOWN, Interpreter.Dialect.of(settings))
                    .events();
            for (Section section :
                    Section.of(file, events, settings.machine().rotary().form().byY())) {
                if (ours(section.file(), run, load, marks)) {
                    made(new Proof(section.file(), settings, reader.blocks(), section.events()), made);
                }
            }
        }
        return made;
    }

    private void made(Proof proof, List<Made> made) {
        double diameter = proof.file().task().orElseThrow().cutter().asDrilled().nominal();
        boolean positive = settings.machine().rotary().positive();
        DrilledHole.from(proof)
                .forEach(h -> made.add(
                        new Made(proof.file().name(), h.at().x(), Wrap.drilled(h.at().a(), positive), diameter)));
    }

    private static boolean ours(ProgramFile file, PatternRun run, Load load, boolean marks) {
        return file.task()
                .filter(t -> t.marks() == marks
                        && t.pattern().equals(run.pattern().id())
                        && t.load().equals(load))
                .isPresent();
    }

    private long count(List<Made> made, Place place) {
        boolean chuckward = settings.machine().rotary().topTowardChuck();
        Vec3 top = new Vec3(chuckward ? -1 : 1, 0, 0);
        double middle = place.edge() + settings.work().body().width() / 2;
        double x = middle + place.height() * top.x();
        double slack = settings.grid().step();
        double slackDegrees =
                1.5 * new Proof(plan.programs().get(0), settings, List.of(), List.of()).angleStepDegrees();
        return made.stream()
                .filter(m -> StrictMath.abs(m.x() - x) <= slack)
                .filter(m -> m.diameter() == place.diameter())
                .filter(m -> Wrap.offDegrees(m.direction(), place.azimuth(), top) <= slackDegrees)
                .count();
    }

    private static String mm(double length) {
        return Decimals.fixed(length, 3) + " mm";
    }

    private static String laid(Load load) {
        return "a stick of " + mm(load.stickLength()) + ", " + load.collars() + " collars from X "
                + mm(load.firstEdge()) + ", pitch " + mm(load.pitch())
                + load.fromLength().map(l -> ", cut from " + mm(l)).orElse("");
    }

    private void fault(PatternRun run, String expected, String found) {
        fault("pattern " + run.pattern().id(), expected, found);
    }

    private void fault(String where, String expected, String found) {
        findings.add(Finding.stop(
                Code.REHEARSAL_FAILED,
                new Where.Part(where),
                expected,
                found,
                "do not run these programs: together they do not make the pattern",
                "report it with the job file: whatever wrote them is at fault"));
    }
}
