package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.geometry.Interval;
import collarwright.machining.BenchProgram;
import collarwright.machining.ControlHabits;
import collarwright.machining.FlatJob;
import collarwright.machining.FlatSamples;
import collarwright.machining.FlatSettings;
import collarwright.machining.FlatTask;
import collarwright.machining.Machine;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramFile;
import collarwright.machining.ProgramUnits;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotarySamples;
import collarwright.machining.RotarySettings;
import collarwright.machining.SawPlugs;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import collarwright.tooling.FlatStrip;
import collarwright.tooling.Pattern;
import collarwright.tooling.StripJoint;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A hole saw is emptied before it is full: what is written, what is said, and what is caught. */
class PlugStopsTest {

    private static final PatternRun RUN = new PatternRun(RotarySamples.sixWay(RotarySamples.HOLE_SAW_44), 2);
    private static final int HOLES = 12;
    private static final Cutter FLAT_SAW =
            new Cutter("HS-22", CutterKind.HOLE_SAW, "22 mm", 22, Interval.of(22), true, 8, 9, 60, 900, "saws");

    private static ProgramFile program(RotarySettings settings) {
        return RotaryJob.plan(settings, List.of(RUN)).programs().stream()
                .filter(p -> p.name().equals("LA-2-HS-44.ngc"))
                .findFirst()
                .orElseThrow();
    }

    private static RotarySettings keeping(RotarySettings settings) {
        Machine.Post p = settings.machine().post();
        Machine.Layout layout = new Machine.Layout(
                0,
                false,
                false,
                false,
                new ControlHabits(ControlHabits.ToolChange.FILE, false, false, 0, false, false, true));
        Machine.Post post = new Machine.Post(
                p.cycles(), p.words(), p.lengthDecimals(), p.angleDecimals(), p.lineLength(), "M2", "ngc", layout);
        return RotarySamples.on(settings, RotarySamples.with(settings.machine(), post));
    }

    /** Laid one on another, each plug as high as its saddle: by adding up, in the sample's own sizes. */
    private static int byAddingUp(RotarySettings settings) {
        double inner = settings.work().body().leastInnerRadius();
        double radius = RotarySamples.HOLE_SAW_44.asDrilled().max() / 2;
        double top = settings.work().body().outerRadius() + settings.work().outOfRound() / 2;
        double plug = top - Math.sqrt(inner * inner - radius * radius);
        double room = RotarySamples.HOLE_SAW_44.depth();
        int holes = 0;
        while (holes * plug + plug + settings.overtravel() <= room) {
            holes++;
        }
        return holes;
    }

    @Test
    void program_stopsBeforeTheSawIsFull() {
        for (boolean cycles : new boolean[] {false, true}) {
            RotarySettings settings = RotarySamples.metric(cycles);
            int most = byAddingUp(settings);
            ProgramFile file = program(settings);

            assertThat(most).isBetween(1, HOLES - 1);
            assertThat(SawPlugs.most(settings.work(), RotarySamples.HOLE_SAW_44, settings.overtravel()))
                    .isEqualTo(most);
            assertThat(SawPlugs.most(settings.work(), RotarySamples.twist(12), settings.overtravel()))
                    .isZero();
            assertThat(file.text().split("\\(PLUGS, take all " + most + " out of the saw", -1))
                    .hasSize((HOLES - 1) / most + 1);
            assertThat(file.text().replaceAll("\\)\n\\(\\.\\.", ""))
                    .contains("(CAUTION " + SawPlugs.words(most).replace(';', ',') + " and the program stops)");
            assertThat(Rehearsal.rehearse(file, settings)).isEmpty();
        }
    }

    @Test
    void stopLeftOut_isCaughtAtTheNextHole() {
        RotarySettings settings = RotarySamples.metric(false);
        ProgramFile file = program(settings);
        String text = file.text().replaceFirst("\\(PLUGS[^)]*\\)\nM0\n", "");
        ProgramFile without =
                new ProgramFile(file.name(), file.purpose(), file.task(), file.lift(), file.effort(), text);

        assertThat(Rehearsal.rehearse(without, settings)).singleElement().satisfies(f -> {
            assertThat(f.expected()).startsWith("a stop to take the plugs out of the saw, which is 38.000 mm deep");
            assertThat(f.found()).contains(" of plugs in it before a cut of ");
        });
        String running = file.text().replaceFirst("M5\nG4 P[\\d.]+\n(\\(PLUGS)", "$1");
        ProgramFile hot =
                new ProgramFile(file.name(), file.purpose(), file.task(), file.lift(), file.effort(), running);
        assertThat(Rehearsal.rehearse(hot, settings))
                .anySatisfy(f -> assertThat(f.expected()).contains("before a hand takes plugs out of the saw"));
    }

    private static BenchProgram<FlatTask> flatProgram(FlatSettings settings) {
        Pattern pattern = RotarySamples.pattern("CA", FLAT_SAW, 0, 55, 120, 178, 240, 301);
        FlatStrip strip = FlatStrip.of(pattern, 4, FlatSamples.BODY, new StripJoint(StripJoint.Kind.BUTT, 0));
        return FlatJob.plan(settings, List.of(strip)).programs().stream()
                .filter(p -> p.name().startsWith("CA-flat-2-HS-22") && !p.air())
                .findFirst()
                .orElseThrow();
    }

    /** By hand: plugs of 3.1 mm in a saw of 9 mm, 1 mm beyond: two lie in it when the second is cut through, a third cannot be. */
    @Test
    void flatStrip_stopsBeforeTheSawIsFull_andAStopLeftOutIsCaught() {
        for (boolean cycles : new boolean[] {false, true}) {
            FlatSettings settings = FlatSamples.settings(FlatSamples.machine(cycles), ProgramUnits.MM);
            BenchProgram<FlatTask> file = flatProgram(settings);

            assertThat(file.text().split("\\(PLUGS, take all 2 out of the saw", -1))
                    .hasSize(3);
            assertThat(file.text().replaceAll("\\)\n\\(\\.\\.", "")).contains("and the program stops)");
            assertThat(FlatRehearsal.rehearse(file, settings)).isEmpty();

            BenchProgram<FlatTask> without = BrokenBenchTest.changed(file, "\\(PLUGS[^)]*\\)~M0~", "");
            assertThat(FlatRehearsal.rehearse(without, settings))
                    .singleElement()
                    .satisfies(f -> {
                        assertThat(f.expected())
                                .isEqualTo("a stop to take the plugs out of the saw, which is 9.000 mm deep");
                        assertThat(f.found()).isEqualTo("6.200 mm of plugs in it before a cut of 4.100 mm");
                    });
            BenchProgram<FlatTask> hot = BrokenBenchTest.changed(file, "M5~G4 P[\\d.]+~(\\(PLUGS)", "$1");
            assertThat(FlatRehearsal.rehearse(hot, settings))
                    .anySatisfy(f -> assertThat(f.expected()).contains("before a hand takes plugs out of the saw"));
        }
    }

    @Test
    void sawThatThrowsItsPlugsOut_runsThrough() {
        RotarySettings settings = keeping(RotarySamples.metric(false));
        ProgramFile file = program(settings);

        assertThat(file.text()).doesNotContain("PLUGS").contains("with no stop");
        assertThat(Rehearsal.rehearse(file, settings)).isEmpty();
    }
}
