package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.machining.BedSettings;
import collarwright.machining.BenchProgram;
import collarwright.machining.EndJob;
import collarwright.machining.EndPlan;
import collarwright.machining.EndSamples;
import collarwright.machining.EndStops;
import collarwright.machining.EndTask;
import collarwright.machining.FlatJob;
import collarwright.machining.FlatPlan;
import collarwright.machining.FlatSamples;
import collarwright.machining.FlatSettings;
import collarwright.machining.FlatTask;
import collarwright.machining.Machine;
import collarwright.machining.ProgramUnits;
import collarwright.machining.RotarySamples;
import collarwright.testing.CanonicalMove;
import collarwright.testing.CanonicalMove.Kind;
import collarwright.testing.ChangedMachines;
import collarwright.testing.Checker;
import collarwright.testing.NeedsChecker;
import collarwright.tooling.FlatStrip;
import collarwright.tooling.Pattern;
import collarwright.tooling.StripJoint;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What every key of a dialect promises on beds and flat machines: their programs pass their replay in both units, and rs274
 * (Debian's linuxcnc-uspace), which knows nothing of us, drills the planned holes from them.
 */
@NeedsChecker(Checker.RS274)
class BenchContractTest {

    static final List<EndStops> STRUTS = List.of(EndSamples.twisted(), EndSamples.straight());

    /** Two cutters, so that tool changes happen. */
    static final Pattern PATTERN = new Pattern(
            "CA",
            1,
            List.of(
                    RotarySamples.hole(1, 0, 1, RotarySamples.twist(16)),
                    RotarySamples.hole(2, 62.5, 0, RotarySamples.twist(20)),
                    RotarySamples.hole(3, 150, 0, RotarySamples.twist(16)),
                    RotarySamples.hole(4, 240, -1, RotarySamples.twist(20))),
            "FFFFFFFF");

    static final FlatStrip STRIP = FlatStrip.of(PATTERN, 4, FlatSamples.BODY, new StripJoint(StripJoint.Kind.BUTT, 0));

    static Stream<String> dialects() {
        return ChangedMachines.DIALECTS.keySet().stream();
    }

    static BedSettings bed(String dialect, ProgramUnits units) {
        return EndSamples.settings(
                ChangedMachines.of("bed-plain", ChangedMachines.DIALECTS.getOrDefault(dialect, List.of())), units);
    }

    static FlatSettings flat(String dialect, ProgramUnits units) {
        return FlatSamples.settings(
                ChangedMachines.of("flat-plain", ChangedMachines.DIALECTS.getOrDefault(dialect, List.of())), units);
    }

    @ParameterizedTest
    @MethodSource("dialects")
    void bed_passesBothInterpreters(String dialect) {
        for (ProgramUnits units : ProgramUnits.values()) {
            BedSettings settings = bed(dialect, units);
            EndPlan plan = EndJob.plan(settings, STRUTS);
            assertThat(plan.findings()).extracting(Finding::level).doesNotContain(Level.STOP);
            assertThat(plan.programs()).hasSize(4);
            assertThat(EndRehearsal.rehearse(plan, settings, STRUTS)).isEmpty();
            for (BenchProgram<EndTask> file : plan.programs()) {
                List<Planned> holes = file.task().holes().stream()
                        .map(h -> new Planned(h.x(), 0, h.bottom()))
                        .toList();
                prove(file, settings.machine(), holes, units);
            }
            layout(plan.programs(), settings.machine());
        }
    }

    @ParameterizedTest
    @MethodSource("dialects")
    void flatMachine_passesBothInterpreters(String dialect) {
        for (ProgramUnits units : ProgramUnits.values()) {
            FlatSettings settings = flat(dialect, units);
            FlatPlan plan = FlatJob.plan(settings, List.of(STRIP));
            assertThat(plan.findings()).extracting(Finding::level).doesNotContain(Level.STOP);
            boolean one = settings.machine().post().layout().habits().allInOneFile();
            assertThat(plan.programs()).hasSize(one ? 2 : 6);
            assertThat(FlatRehearsal.rehearse(plan, settings, List.of(STRIP), List.of(PATTERN)))
                    .isEmpty();
            for (BenchProgram<FlatTask> file : plan.programs()) {
                List<Planned> holes = file.tasks().stream()
                        .flatMap(t -> t.points().stream())
                        .map(p -> new Planned(p.x(), p.y(), p.bottom()))
                        .toList();
                prove(file, settings.machine(), holes, units);
            }
            layout(plan.programs(), settings.machine());
        }
    }

    private record Planned(double x, double y, double bottom) {}

    private static void prove(BenchProgram<?> file, Machine machine, List<Planned> planned, ProgramUnits units) {
        List<CanonicalMove> bottoms = new ArrayList<>();
        String text = MachineContractTest.asItReads(file.text(), machine);
        for (CanonicalMove move : MachineContractTest.CONTROL.read(text).movesOrFail()) {
            if (move.kind() == Kind.FEED) {
                bottoms.removeIf(m -> m.x() == move.x() && m.y() == move.y());
                bottoms.add(move);
            }
        }
        assertThat(bottoms).as(file.text()).hasSameSizeAs(planned);
        double tolerance = units == ProgramUnits.INCH ? 0.0001 * 25.4 : 0.001;
        for (int i = 0; i < planned.size(); i++) {
            CanonicalMove hole = bottoms.get(i);
            assertThat(hole.inch()).isEqualTo(units == ProgramUnits.INCH);
            assertThat(hole.x() * hole.unitMm()).isCloseTo(planned.get(i).x(), within(tolerance));
            assertThat(hole.y() * hole.unitMm()).isCloseTo(planned.get(i).y(), within(tolerance));
            assertThat(hole.z() * hole.unitMm()).isCloseTo(planned.get(i).bottom() + file.lift(), within(tolerance));
        }
    }

    /** The texts are what the keys say they are. */
    private static <T> void layout(List<BenchProgram<T>> programs, Machine machine) {
        var layout = machine.post().layout();
        var habits = layout.habits();
        assertThat(programs.stream().map(BenchProgram::name).distinct()).hasSameSizeAs(programs);
        for (int i = 0; i < programs.size(); i++) {
            String text = programs.get(i).text();
            String name = programs.get(i).name();
            assertThat(name.matches("[A-Z0-9]{1,8}\\.[A-Z0-9]{1,3}")).as(name).isEqualTo(habits.shortNames());
            boolean m6 = machine.post().words().contains("M6");
            assertThat(text.contains("T1 M6")).as(text).isEqualTo(m6);
            assertThat(text.contains("G0 G43 H1 Z")).isEqualTo(habits.lengthTable());
            assertThat(text.contains("(Set Z anew: tip on the ")).isEqualTo(changes(text) && !habits.lengthTable());
            assertThat(text.contains(habits.dwellByX() ? "G4 X" : "G4 P")).isTrue();
            assertThat(text.contains("G4 P3000")).isEqualTo(layout.dwellMilliseconds());
            if (habits.programNumber() > 0) {
                String number =
                        Integer.toString(10_000 + habits.programNumber() + i).substring(1);
                assertThat(text).startsWith("%\r\nO" + number + "\r\n");
            }
            assertThat(text.contains("G73 ")).isEqualTo(habits.chipBreak() && text.contains(" Q"));
            assertThat(text.contains("M3")).isEqualTo(machine.spindle().controlled());
        }
    }

    private static boolean changes(String text) {
        return text.contains("(CUTTER ");
    }
}
