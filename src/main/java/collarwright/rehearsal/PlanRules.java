package collarwright.rehearsal;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.geometry.Vec3;
import collarwright.machining.Load;
import collarwright.machining.Machine;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramFile;
import collarwright.machining.ProgramTask;
import collarwright.machining.RotaryPlan;
import collarwright.machining.RotarySettings;
import collarwright.machining.SetupSheet;
import collarwright.tooling.Cutter;
import collarwright.tooling.Hole;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Holds all programs of a plan together against the order: every pattern made as often as ordered, no hole and no dimple
 * left out or made twice, every stick long enough.
 */
final class PlanRules {

    /** A bored hole is made on the grid of the program, and sizes differ by a hundredth or more. */
    private static final double SAME_DIAMETER = 0.006;

    private final RotaryPlan plan;
    private final RotarySettings settings;
    private final double slackDegrees;
    private final Map<String, PatternRun> ordered = new LinkedHashMap<>();
    private final Map<Load, List<Reading>> files = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();

    private PlanRules(RotaryPlan plan, List<Reading> readings, RotarySettings settings, List<PatternRun> runs) {
        this.plan = plan;
        this.settings = settings;
        this.slackDegrees = 1.5 * Proof.angleStepDegrees(settings);
        runs.forEach(r -> ordered.put(r.pattern().id(), r));
        for (Reading reading : readings) {
            if (reading.file().purpose() == ProgramFile.Purpose.CUT) {
                reading.file()
                        .task()
                        .ifPresent(t -> files.computeIfAbsent(t.load(), l -> new ArrayList<>())
                                .add(reading));
            }
        }
    }

    static List<Finding> check(RotaryPlan plan, RotarySettings settings, List<PatternRun> runs) {
        List<Reading> readings =
                plan.programs().stream().map(f -> Reading.of(f, settings)).toList();
        return check(plan, readings, settings, runs);
    }

    static List<Finding> check(
            RotaryPlan plan, List<Reading> readings, RotarySettings settings, List<PatternRun> runs) {
        PlanRules rules = new PlanRules(plan, readings, settings, runs);
        rules.counts();
        for (SetupSheet setup : plan.setups()) {
            rules.stick(setup.load());
            rules.holes(setup.load());
            rules.dimples(setup.load());
            rules.partings(setup.load());
        }
        rules.names();
        readings.stream()
                .filter(r -> r.file().purpose() == ProgramFile.Purpose.DIRECTION_TEST)
                .forEach(rules::direction);
        return rules.findings;
    }

    /** Where something belongs: X of the collar's edge at the chuck, place on the collar, size. */
    private record Place(double edge, double height, double azimuth, double diameter) {}

    /** Collar by collar, whatever the layouts say of themselves. */
    private void counts() {
        Map<String, Long> made = new LinkedHashMap<>();
        ordered.keySet().forEach(p -> made.put(p, 0L));
        for (SetupSheet setup : plan.setups()) {
            for (String pattern : setup.load().patterns()) {
                made.merge(pattern, (long) setup.load().runs(), Long::sum);
            }
        }
        made.forEach((pattern, count) -> {
            PatternRun run = ordered.get(pattern);
            long wanted = run == null ? 0 : run.made();
            if (count != wanted) {
                fault("pattern " + pattern, wanted + " collars", count + " on all sticks");
            }
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

    /** The direction test is clear for every cutter of the job, and takes in one of them. */
    private void direction(Reading test) {
        List<ProgramTask> tasks = plan.programs().stream()
                .flatMap(f -> f.byTask().stream())
                .flatMap(f -> f.task().stream())
                .toList();
        double lead = tasks.stream().mapToDouble(t -> t.cutter().lead()).max().orElse(0);
        List<Event> events = test.run().events();
        Proof proof = new Proof(test.file(), settings, test.blocks().blocks(), events);
        double lowest =
                proof.strokes().stream().mapToDouble(s -> s.to().z()).min().orElse(Double.NaN);
        if (!proof.atClear(lowest - lead)) {
            String wanted = "Z " + proof.text(proof.clear() + lead) + " or higher, clear for the longest cutter";
            fault("program " + test.file().name(), wanted, "Z " + proof.text(lowest));
        }
        for (Event event : events) {
            if (event instanceof Event.Tool tool && tasks.stream().noneMatch(t -> t.tool() == tool.number())) {
                fault("program " + test.file().name(), "a cutter of the job", "cutter " + tool.number());
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

    private void stick(Load load) {
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
            fault(load, "a stick of " + mm(used) + " with room for every cut", laid(load));
        }
    }

    private void holes(Load load) {
        MadeHoles made = made(load, false);
        int planned = 0;
        for (int collar = 1; collar <= load.collars(); collar++) {
            PatternRun run = ordered.get(load.pattern(collar));
            List<Hole> holes = run == null ? List.of() : run.pattern().holes();
            planned += holes.size();
            for (Hole hole : holes) {
                Place place = new Place(load.edge(collar), hole.height(), hole.azimuth(), hole.diameter());
                once(load, "collar " + collar + ", hole " + hole.number(), count(made, place));
            }
        }
        inAll(load, planned, made.size(), "holes");
    }

    private void dimples(Load load) {
        MadeHoles made = made(load, true);
        double diameter = settings.mark().cutter().asDrilled().nominal();
        Map<String, List<DimplePlace>> places = new LinkedHashMap<>();
        if (TubeMade.marks(settings.machine())) {
            ordered.forEach((id, run) -> places.put(id, DimplePlace.of(run.pattern(), settings)));
        }
        int planned = 0;
        for (int collar = 1; collar <= load.collars(); collar++) {
            List<DimplePlace> dimples = places.getOrDefault(load.pattern(collar), List.of());
            planned += dimples.size();
            for (DimplePlace dimple : dimples) {
                Place place = new Place(load.edge(collar), dimple.height(), dimple.azimuth(), diameter);
                once(load, "collar " + collar + ", " + dimple.title(), count(made, place));
            }
        }
        inAll(load, planned, made.size(), "dimples");
    }

    /** A tube cutter that parts collars off leaves each as wide as planned. */
    private void partings(Load load) {
        for (Reading reading : files.getOrDefault(load, List.of())) {
            TubeMade.partings(reading, settings, load)
                    .ifPresent(found -> fault(load, "a cut at each edge of every collar, and no other", found));
        }
    }

    private void once(Load load, String what, long found) {
        if (found != 1) {
            fault(load, what + " made once", found + " times");
        }
    }

    private void inAll(Load load, int planned, int made, String things) {
        if (made != planned) {
            fault(load, planned + " " + things + " on stick " + load.id(), made + " made");
        }
    }

    private MadeHoles made(Load load, boolean marks) {
        MadeHoles made = new MadeHoles();
        if (settings.machine().tube().isPresent()) {
            files.getOrDefault(load, List.of()).forEach(r -> TubeMade.add(made, r, settings, marks));
            return made;
        }
        boolean byY = settings.machine().rotary().form().byY();
        for (Reading reading : files.getOrDefault(load, List.of())) {
            if (reading.file().byTask().stream().noneMatch(f -> marks(f, marks))) {
                continue;
            }
            List<Block> blocks = reading.blocks().blocks();
            for (Section section : Section.of(reading.file(), reading.run().events(), byY)) {
                if (marks(section.file(), marks)) {
                    made(new Proof(section.file(), settings, blocks, section.events()), made);
                }
            }
        }
        return made;
    }

    private void made(Proof proof, MadeHoles made) {
        double diameter = proof.file().task().orElseThrow().cutter().asDrilled().nominal();
        boolean positive = settings.machine().rotary().positive();
        DrilledHole.from(proof)
                .forEach(h -> made.add(
                        h.at().x(),
                        Wrap.drilled(h.at().a(), positive),
                        proof.bores() ? h.bored(diameter).orElse(diameter) : diameter));
    }

    private static boolean marks(ProgramFile file, boolean marks) {
        return file.task().filter(t -> t.marks() == marks).isPresent();
    }

    private long count(MadeHoles made, Place place) {
        boolean chuckward = settings.machine().rotary().topTowardChuck();
        Vec3 top = new Vec3(chuckward ? -1 : 1, 0, 0);
        double middle = place.edge() + settings.work().body().width() / 2;
        double x = middle + place.height() * top.x();
        double same = settings.machine().tube().isPresent() ? 2 * OutlineRules.WIDE : SAME_DIAMETER;
        return made.near(x, settings.grid().step()).stream()
                .filter(m -> StrictMath.abs(m.diameter() - place.diameter()) <= same)
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

    private void fault(Load load, String expected, String found) {
        fault("stick " + load.id(), expected, found);
    }

    private void fault(String part, String expected, String found) {
        findings.add(Finding.stop(
                Code.REHEARSAL_FAILED,
                new Where.Part(part),
                expected,
                found,
                "do not run these programs: together they do not make the order",
                "report it with the job file: whatever wrote them is at fault"));
    }
}
