package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.job.BundledProfiles;
import collarwright.job.Profiles;
import collarwright.machining.ControlHabits;
import collarwright.machining.Machine;
import collarwright.machining.Operation;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramFile;
import collarwright.machining.ProgramTask;
import collarwright.machining.ProgramUnits;
import collarwright.machining.ProgramWords;
import collarwright.machining.RotaryForm;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotaryPlan;
import collarwright.machining.RotarySamples;
import collarwright.machining.RotarySettings;
import collarwright.testing.CanonicalMove;
import collarwright.testing.CanonicalMove.Kind;
import collarwright.testing.Checker;
import collarwright.testing.NeedsChecker;
import collarwright.testing.Rs274;
import collarwright.tooling.Cutter;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What every machine profile of the folder promises: its programs pass their replay in both units, with TOP either way and
 * both signs of A; rs274 (Debian's linuxcnc-uspace), which knows nothing of us, drills the planned holes from them; and
 * cycles are the same moves as those written out.
 */
@NeedsChecker(Checker.RS274)
class MachineContractTest {

    static final Rs274 CONTROL = new Rs274(
            IntStream.rangeClosed(1, 9).mapToObj(n -> new Rs274.Tool(n, 0, 6)).toList());

    static Stream<String> machines() {
        Profiles profiles = Profiles.load(List.of(new BundledProfiles()));
        return profiles.names(Profiles.Kind.MACHINE).stream()
                .filter(n -> profiles.machine(n).orElseThrow().kind() == Machine.Kind.ROTARY);
    }

    /** Two cutters, so that tool changes happen. */
    private static List<PatternRun> runs(boolean inch) {
        Cutter large = inch ? RotarySamples.TWIST_1_1_8 : RotarySamples.HOLE_SAW_44;
        Cutter small = RotarySamples.twist(12);
        List<Hole> holes = List.of(
                RotarySamples.hole(1, 0, 0, large),
                RotarySamples.hole(2, 58.28252559, 0, small),
                RotarySamples.hole(3, 121.71747441, 0, large),
                RotarySamples.hole(4, 180, 0, small),
                RotarySamples.hole(5, 287.65, 0, large));
        Pattern mixed = new Pattern("Hub A-2", 1, holes, "FFFFFFFF");
        return List.of(new PatternRun(mixed, 4), new PatternRun(RotarySamples.sixWay(large), 2));
    }

    private static List<RotarySettings> settings(String name) {
        Machine machine =
                Profiles.load(List.of(new BundledProfiles())).machine(name).orElseThrow();
        List<RotarySettings> all = new ArrayList<>();
        boolean degreesByY = machine.rotary().form().word() == RotaryForm.Word.Y_DEGREES;
        for (boolean inch : degreesByY ? List.of(false) : List.of(false, true)) {
            for (int i = 0; i < 4; i++) {
                Machine turned = RotarySamples.turned(machine, i % 2 == 0, i < 2);
                Machine.Rotary rotary = turned.rotary().with(machine.rotary().form());
                RotarySettings base = inch ? RotarySamples.inch(false) : RotarySamples.metric(false);
                all.add(RotarySamples.on(base, RotarySamples.with(turned, rotary)));
            }
        }
        return all;
    }

    private static RotaryPlan plan(RotarySettings settings) {
        RotaryPlan plan = RotaryJob.plan(settings, runs(settings.units() == ProgramUnits.INCH));
        assertThat(plan.findings()).extracting(Finding::level).doesNotContain(Level.STOP);
        assertThat(plan.programs()).hasSizeGreaterThanOrEqualTo(3);
        return plan;
    }

    @ParameterizedTest
    @MethodSource("machines")
    void programs_passTheirReplay(String name) {
        for (RotarySettings settings : settings(name)) {
            RotaryPlan plan = plan(settings);
            List<PatternRun> runs = runs(settings.units() == ProgramUnits.INCH);
            assertThat(Rehearsal.rehearse(plan, settings, runs)).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("machines")
    void outsideInterpreter_drillsThePlannedHoles(String name) {
        RotarySettings metric = settings(name).get(0);
        plan(metric).programs().forEach(p -> prove(p, metric));
        List<RotarySettings> all = settings(name);
        RotarySettings last = all.get(all.size() - 1);
        plan(last).programs().stream().limit(4).forEach(p -> prove(p, last));
    }

    private static void prove(ProgramFile file, RotarySettings settings) {
        List<CanonicalMove> moves =
                CONTROL.read(asItReads(file.text(), settings)).movesOrFail();
        List<ProgramTask> tasks =
                file.byTask().stream().flatMap(f -> f.task().stream()).toList();
        double clear =
                tasks.stream().mapToDouble(t -> t.heights().clear()).min().orElse(0) + file.lift() - 0.01;
        List<List<CanonicalMove>> holes = holes(moves, clear);
        int next = 0;
        for (ProgramTask task : tasks) {
            for (Operation operation : task.operations()) {
                assertThat(holes).as(file.name()).hasSizeGreaterThan(next);
                hole(holes.get(next), operation, task, new Place(file, settings));
                next++;
            }
        }
        assertThat(holes).as(file.name()).hasSize(next);
        told(file, settings, tasks);
    }

    private record Place(ProgramFile file, RotarySettings settings) {
        double tolerance() {
            return settings.units() == ProgramUnits.INCH ? 0.0001 * 25.4 : 0.001;
        }
    }

    private static void hole(List<CanonicalMove> moves, Operation operation, ProgramTask task, Place at) {
        List<CanonicalMove> feeds =
                moves.stream().filter(m -> m.kind() == Kind.FEED).toList();
        CanonicalMove last = feeds.get(feeds.size() - 1);
        double tolerance = at.tolerance();
        double bottom = operation.bottom() + at.file().lift();
        assertThat(last.x() * last.unitMm()).isCloseTo(operation.place().x(), within(tolerance));
        assertThat(last.z() * last.unitMm()).isCloseTo(bottom, within(tolerance));
        angle(last, operation.place().angleDegrees(), at.settings());
        assertThat(last.state().feed() * last.unitMm()).isCloseTo(task.cut().feedMmPerMin(), within(0.002));
        if (at.settings().machine().spindle().controlled()) {
            assertThat(last.state().spindleRpm()).isEqualTo(task.cut().rpm());
        }
        double depth = task.heights().retract() - operation.bottom();
        boolean mark = operation instanceof Operation.Mark;
        int pecks = mark ? 1 : (int) Math.ceil(depth / task.cut().peck());
        assertThat(feeds).as("pecks").hasSize(pecks);
        double retract = task.heights().retract() + at.file().lift();
        long out = moves.subList(moves.indexOf(feeds.get(0)), moves.size()).stream()
                .filter(m -> m.kind() == Kind.TRAVERSE && Math.abs(m.z() * m.unitMm() - retract) <= tolerance)
                .count();
        assertThat(out).as("retracts to R").isEqualTo(pecks - 1L);
    }

    /** rs274 reads a Y word as a length: its number is held against what the profile's control makes of it. */
    private static void angle(CanonicalMove move, double degrees, RotarySettings settings) {
        double around = 2 * Math.PI * settings.work().body().outerRadius();
        switch (settings.machine().rotary().form().word()) {
            case A -> assertThat(move.a()).isCloseTo(degrees, within(0.001));
            case Y_DEGREES -> assertThat(move.y()).isCloseTo(degrees, within(0.001));
            case Y_MM ->
                assertThat(move.y() * move.unitMm()).isCloseTo(degrees / 360 * around, within(0.001 * move.unitMm()));
            case BY_HAND -> assertThat(move.a()).isZero();
        }
    }

    /** What the operator is told, read by searching the text. */
    private static void told(ProgramFile file, RotarySettings settings, List<ProgramTask> tasks) {
        if (settings.machine().rotary().form().byHand() && !tasks.isEmpty()) {
            List<Double> wanted = new ArrayList<>();
            for (ProgramTask task : tasks) {
                task.operations().stream()
                        .map(o -> o.place().angleDegrees())
                        .distinct()
                        .forEach(wanted::add);
            }
            assertThat(numbers(file, "\\(TURN TO ([0-9.]+) DEG\\)\\s+\\(")).isEqualTo(wanted);
        }
        if (!settings.machine().spindle().controlled()) {
            // Once for each cutter, and again after each stop for a saw that is full.
            List<Double> speeds = numbers(file, "\\(Set the spindle to ([0-9]+) rpm, start it, then go on\\)\\s+M0");
            assertThat(speeds)
                    .hasSize(tasks.size()
                            + numbers(file, "\\(PLUGS, take all ([0-9]+) out of the saw")
                                    .size());
            assertThat(speeds.stream().distinct().toList())
                    .isEqualTo(tasks.stream().map(t -> (double) t.cut().rpm()).toList());
            assertThat(file.text()).doesNotContain("M3\n").doesNotContain("M5");
        }
    }

    private static List<Double> numbers(ProgramFile file, String form) {
        return java.util.regex.Pattern.compile(form)
                .matcher(file.text())
                .results()
                .map((MatchResult r) -> Double.valueOf(r.group(1)))
                .toList();
    }

    /** In words that rs274 knows: it takes a dwell from P only, and no O number. */
    static String asItReads(String text, RotarySettings settings) {
        return asItReads(text, settings.machine());
    }

    static String asItReads(String text, Machine machine) {
        String plain = text.replaceAll("(?m)^O\\d+\\s*$\\R", "");
        return machine.post().layout().habits().dwellByX() ? plain.replace("G4 X", "G4 P") : plain;
    }

    /** The moves of each stay below the clear height in which something is cut. */
    private static List<List<CanonicalMove>> holes(List<CanonicalMove> moves, double clear) {
        List<List<CanonicalMove>> holes = new ArrayList<>();
        List<CanonicalMove> stay = new ArrayList<>();
        for (CanonicalMove move : moves) {
            stay.add(move);
            if (move.z() * move.unitMm() >= clear) {
                if (stay.stream().anyMatch(m -> m.kind() == Kind.FEED)) {
                    holes.add(List.copyOf(stay));
                }
                stay.clear();
            }
        }
        return holes;
    }

    @ParameterizedTest
    @MethodSource("machines")
    void cycles_areTheSameMovesAsWrittenOut(String name) {
        for (RotarySettings settings : settings(name)) {
            List<ProgramFile> plain = plan(withCycles(settings, false)).programs();
            List<ProgramFile> cycles = plan(withCycles(settings, true)).programs();
            for (int i = 0; i < plain.size(); i++) {
                assertThat(places(cycles.get(i), settings)).isEqualTo(places(plain.get(i), settings));
            }
        }
    }

    private static RotarySettings withCycles(RotarySettings settings, boolean cycles) {
        Machine.Post p = settings.machine().post();
        Set<String> words = new TreeSet<>(p.words());
        words.addAll(ProgramWords.CYCLES);
        Machine.Post post = new Machine.Post(
                cycles, words, p.lengthDecimals(), p.angleDecimals(), 90, p.endWord(), p.extension(), p.layout());
        return RotarySamples.on(settings, RotarySamples.with(settings.machine(), post));
    }

    private static List<String> places(ProgramFile file, RotarySettings settings) {
        List<String> places = new ArrayList<>();
        List<Block> blocks = BlockReader.read(file.text()).blocks();
        Interpreter.Run run = Interpreter.run(blocks, Pose.UNKNOWN, Interpreter.Dialect.of(settings));
        assertThat(run.faults()).isEmpty();
        for (Event event : run.events()) {
            if (event instanceof Event.Stroke s && !s.from().equals(s.to())) {
                Pose to = s.to();
                places.add((s.feed() ? "feed " : "rapid ") + milli(to.x()) + " " + milli(to.z()) + " " + milli(to.a()));
            }
        }
        return places;
    }

    private static long milli(double value) {
        return Math.round(value * 10_000);
    }

    /** The industrial profile's text is what it says it is. */
    @org.junit.jupiter.api.Test
    void industrial_hasItsLayout() {
        RotarySettings settings = settings("rotary-industrial").get(0);
        assertThat(settings.machine().post().layout().habits().toolChange()).isEqualTo(ControlHabits.ToolChange.M6);
        List<ProgramFile> programs = plan(settings).programs();
        for (int i = 0; i < programs.size(); i++) {
            ProgramFile file = programs.get(i);
            assertThat(file.name()).matches("[A-Z0-9]{1,8}\\.[A-Z0-9]{1,3}");
            assertThat(file.text()).startsWith("%\r\nO" + (1001 + i) + "\r\n").endsWith(" M30\r\n%\r\n");
        }
        assertThat(programs.get(0).text())
                .contains("T1 M6\r\n", "G0 G43 H1 Z", "T2 M6\r\n", "G0 G43 H2 Z", "T3 M6\r\n");
        assertThat(programs.stream().map(ProgramFile::name).distinct()).hasSameSizeAs(programs);
    }
}
