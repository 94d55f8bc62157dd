package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.machining.ControlHabits;
import collarwright.machining.Machine;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramFile;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotarySamples;
import collarwright.machining.RotarySettings;
import collarwright.machining.SawPlugs;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A hole saw is emptied before it is full: what is written, what is said, and what is caught. */
class PlugStopsTest {

    private static final PatternRun RUN = new PatternRun(RotarySamples.sixWay(RotarySamples.HOLE_SAW_44), 2);
    private static final int HOLES = 12;

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

    @Test
    void sawThatThrowsItsPlugsOut_runsThrough() {
        RotarySettings settings = keeping(RotarySamples.metric(false));
        ProgramFile file = program(settings);

        assertThat(file.text()).doesNotContain("PLUGS").contains("with no stop");
        assertThat(Rehearsal.rehearse(file, settings)).isEmpty();
    }
}
