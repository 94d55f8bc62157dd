package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.machining.Machine;
import collarwright.machining.Operation;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramFile;
import collarwright.machining.ProgramUnits;
import collarwright.machining.RotaryForm;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotaryPlan;
import collarwright.machining.RotarySamples;
import collarwright.machining.RotarySettings;
import collarwright.machining.TubeCutter;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Programs for tube cutters of every kind pass their replay; a plan that is not whole does not. */
class TubeRehearsalTest {

    static List<Machine> machines() {
        return TubeSamples.machines();
    }

    @ParameterizedTest
    @MethodSource("machines")
    void programs_ofEveryKind_passTheirReplay(Machine machine) {
        boolean degreesByY = machine.rotary().form().word() == RotaryForm.Word.Y_DEGREES;
        for (int i = 0; i < 4; i++) {
            Machine turned = RotarySamples.turned(machine, i % 2 == 0, i < 2);
            Machine.Rotary rotary = turned.rotary().with(machine.rotary().form());
            RotarySettings settings =
                    TubeSamples.settings(RotarySamples.with(turned, rotary), i % 2 == 1 && !degreesByY);
            RotaryPlan plan = TubeSamples.plan(settings);
            assertThat(plan.findings()).extracting(Finding::level).doesNotContain(Level.STOP);
            assertThat(plan.programs()).hasSize(3);
            assertThat(Rehearsal.rehearse(plan, settings, TubeSamples.runs())).isEmpty();
        }
    }

    @Test
    void replay_takesThePlannedTime_andMakesEverything() {
        RotarySettings settings = TubeSamples.settings(TubeSamples.plain(), false);
        ProgramFile file = TubeSamples.cut(TubeSamples.plan(settings));
        Replay replay = Replay.of(file, settings);
        assertThat(replay.holes())
                .hasSize(file.task().orElseThrow().operations().size());
        assertThat(replay.seconds()).isCloseTo(file.seconds(), within(0.03 * file.seconds()));
    }

    @Test
    void partings_comeLast_fromTheFreeEndInward() {
        RotarySettings settings = TubeSamples.settings(TubeSamples.plain(), false);
        List<Operation> operations =
                TubeSamples.cut(TubeSamples.plan(settings)).task().orElseThrow().operations();
        assertThat(operations.subList(operations.size() - 4, operations.size()))
                .allSatisfy(o -> assertThat(o).isInstanceOf(Operation.PartOff.class))
                .extracting(o -> o.place().x())
                .containsExactly(283.75, 202.25, 120.75, 39.25);
    }

    @Test
    void airCut_switchesNothingOn() {
        RotarySettings settings = TubeSamples.settings(TubeSamples.plain(), false);
        ProgramFile air = TubeSamples.plan(settings).programs().get(1);
        assertThat(air.purpose()).isEqualTo(ProgramFile.Purpose.AIR_CUT);
        assertThat(air.text()).doesNotContain("M3\n").doesNotContain("M5\n").contains("G93");
        List<Finding> spoilt =
                Rehearsal.rehearse(TubeSamples.with(air, air.text().replaceFirst("\nG4 ", "\nM3\nG4 ")), settings);
        assertThat(spoilt).isNotEmpty();
    }

    @Test
    void planWithAnotherPattern_isFound() {
        RotarySettings settings = TubeSamples.settings(TubeSamples.plain(), false);
        RotaryPlan plan = TubeSamples.plan(settings);
        List<PatternRun> mirrored = List.of(
                new PatternRun(RotarySamples.pattern("CA", RotarySamples.twist(22), 0, 119.75, 210, 297.5), 2),
                TubeSamples.runs().get(1));
        assertThat(Rehearsal.rehearse(plan, settings, mirrored))
                .extracting(Finding::expected)
                .anyMatch(e -> e.contains("hole 2 made once"));
        RotaryPlan half = new RotaryPlan(plan.programs().subList(1, 3), plan.setups(), List.of());
        assertThat(Rehearsal.rehearse(half, settings, TubeSamples.runs())).isNotEmpty();
    }

    @Test
    void marks_areWhereDimplesWouldBe_orNowhere() {
        Machine laser = TubeSamples.with(TubeSamples.plain(), TubeSamples.laser());
        RotarySettings settings = TubeSamples.settings(laser, false);
        RotaryPlan plan = TubeSamples.plan(settings);
        assertThat(TubeSamples.cut(plan).text()).contains("TOP dimple").doesNotContain("part collar");
        RotarySettings unmarked = TubeSamples.settings(TubeSamples.plain(), false);
        assertThat(Rehearsal.rehearse(plan, unmarked, TubeSamples.runs())).isNotEmpty();
    }

    @Test
    void whatTheMachineCannot_stops() {
        Machine plain = TubeSamples.plain();
        TubeCutter t = plain.tube().orElseThrow();
        assertThat(stops(plain, new TubeCutter.Limits(150, true, 100_000))).containsExactly(Code.MACHINE_UNABLE);
        assertThat(stops(plain, new TubeCutter.Limits(200, true, 100))).containsExactly(Code.MACHINE_UNABLE);
        Machine wide =
                TubeSamples.with(plain, new TubeCutter(t.process(), 22, t.start(), t.speed(), t.heights(), t.limits()));
        assertThat(codes(wide)).containsOnly(Code.MACHINE_UNABLE);
        Machine low = TubeSamples.with(
                plain,
                new TubeCutter(t.process(), 1.5, t.start(), t.speed(), new TubeCutter.Heights(4, 0.5), t.limits()));
        assertThat(codes(low)).containsExactly(Code.MACHINE_UNABLE);
        TubeCutter k = TubeSamples.knife();
        Machine shallow = TubeSamples.with(
                plain, new TubeCutter(k.process(), 3, k.start(), k.speed(), new TubeCutter.Heights(3, -5), k.limits()));
        assertThat(codes(shallow)).containsExactly(Code.MACHINE_UNABLE);
        Machine.Travel v = plain.travel();
        Machine flat = RotarySamples.with(
                plain, new Machine.Travel(-10, 1500, 0, 100, 6000, 6000, v.accelerationMmPerS2(), 10));
        assertThat(codes(flat)).containsExactly(Code.MACHINE_TRAVEL);
        Machine degrees = TubeSamples.with(
                plain, new RotaryForm(RotaryForm.Word.Y_DEGREES, java.util.Optional.empty(), RotaryForm.Sweep.FEED));
        RotarySettings inches = TubeSamples.settings(degrees, true);
        assertThat(inches.units()).isEqualTo(ProgramUnits.INCH);
        assertThat(TubeSamples.plan(inches).findings())
                .extracting(Finding::code)
                .containsExactly(Code.MACHINE_UNABLE);
        PatternRun bore = new PatternRun(RotarySamples.pattern("CA", RotarySamples.twist(150), 0, 180), 1);
        assertThat(RotaryJob.plan(TubeSamples.settings(plain, false), List.of(bore))
                        .findings())
                .extracting(Finding::code)
                .contains(Code.HOLE_TOO_WIDE);
    }

    private static List<Code> stops(Machine plain, TubeCutter.Limits limits) {
        TubeCutter t = plain.tube().orElseThrow();
        return codes(TubeSamples.with(
                plain, new TubeCutter(t.process(), t.kerf(), t.start(), t.speed(), t.heights(), limits)));
    }

    private static List<Code> codes(Machine machine) {
        RotaryPlan plan = TubeSamples.plan(TubeSamples.settings(machine, false));
        assertThat(plan.programs()).isEmpty();
        return plan.findings().stream().map(Finding::code).toList();
    }

    @Test
    void lowCeiling_leavesTheAirCutOut_andSaysSo() {
        Machine plain = TubeSamples.plain();
        Machine.Travel v = plain.travel();
        Machine low = RotarySamples.with(
                plain, new Machine.Travel(-10, 1500, 0, 113, 6000, 6000, v.accelerationMmPerS2(), 10));
        RotarySettings settings = TubeSamples.settings(low, false);
        RotaryPlan plan = TubeSamples.plan(settings);
        assertThat(plan.programs()).hasSize(2);
        assertThat(plan.findings()).extracting(Finding::code).containsExactly(Code.MACHINE_TRAVEL);
        assertThat(Rehearsal.rehearse(plan, settings, TubeSamples.runs())).isEmpty();
    }
}
