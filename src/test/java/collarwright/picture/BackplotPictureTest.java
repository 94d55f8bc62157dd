package collarwright.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.machining.PatternRun;
import collarwright.machining.ProgramFile;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotarySamples;
import collarwright.machining.RotarySettings;
import collarwright.rehearsal.Replay;
import collarwright.testing.ProjectFolder;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BackplotPictureTest {

    private static RotarySettings settings(boolean inch) {
        return inch ? RotarySamples.inch(true) : RotarySamples.metric(false);
    }

    private static ProgramFile program(RotarySettings settings, boolean inch, int collars, int number) {
        PatternRun run = new PatternRun(
                RotarySamples.sixWay(inch ? RotarySamples.TWIST_1_1_8 : RotarySamples.HOLE_SAW_44), collars);
        return RotaryJob.plan(settings, List.of(run)).programs().get(number);
    }

    /** Letters are of one size, inside and apart; numbers of holes stand in the order made. */
    @ParameterizedTest
    @CsvSource({"false,12,2", "false,2,2", "false,12,0", "false,1,2", "true,9,2", "true,9,0", "false,2,4"})
    void paint_programs_areReadable(boolean inch, int collars, int number) {
        RotarySettings settings = settings(inch);
        ProgramFile file = program(settings, inch, collars, number);
        Replay replay = Replay.of(file, settings);
        BackplotPicture picture =
                new BackplotPicture(file, replay, settings, new Figures(settings.units()), BackplotPicture.WIDTH);

        List<Written> texts = Bitmaps.save(
                picture,
                ProjectFolder.target()
                        .resolve("look/pictures/backplot-" + inch + "-" + collars + "-" + number + ".png"));

        assertThat(Bitmaps.spills(picture)).as("ink outside").isFalse();
        for (int i = 0; i < texts.size(); i++) {
            Written text = texts.get(i);
            assertThat(text.x()).as("left of %s", text).isGreaterThanOrEqualTo(0);
            assertThat(text.x() + text.width()).as("right of %s", text).isLessThanOrEqualTo(picture.width());
            for (Written other : texts.subList(0, i)) {
                assertThat(text.touches(other, 0)).as("%s over %s", text, other).isFalse();
            }
        }
        if (file.purpose() == ProgramFile.Purpose.CUT && !replay.holes().isEmpty()) {
            assertThat(texts).anySatisfy(t -> assertThat(t.text()).isEqualTo("1"));
        }
        assertThat(picture.height()).isLessThanOrEqualTo(231);
    }

    /** By hand: 12 holes; the first is cut after the way to it and the spindle's three seconds. */
    @Test
    void replay_ofAProgram_listsHolesInTheirOrderWithTheirTimes() {
        RotarySettings settings = settings(false);
        ProgramFile file = program(settings, false, 2, 2);
        Replay replay = Replay.of(file, settings);

        assertThat(replay.holes()).hasSize(12);
        assertThat(replay.holes().get(0).x()).isEqualTo(60);
        assertThat(replay.holes().get(0).angleDegrees()).isZero();
        assertThat(replay.holes().get(1).x()).isEqualTo(143);
        assertThat(replay.holes().get(2).angleDegrees()).isCloseTo(58.283, within(1e-9));
        assertThat(replay.holes()).allSatisfy(h -> assertThat(h.bottom()).isCloseTo(58.257, within(1e-9)));
        // 2 degrees of take-up at 720 degrees/s², three seconds of dwell, 35 mm down at 50 mm/s and 400 mm/s².
        double first = 2 * StrictMath.sqrt(2.0 / 720) + 3 + 35.0 / 50 + 50.0 / 400;
        assertThat(replay.holes().get(0).startSeconds()).isCloseTo(first, within(1e-6));
        for (int i = 1; i < 12; i++) {
            assertThat(replay.holes().get(i).startSeconds())
                    .isGreaterThan(replay.holes().get(i - 1).startSeconds());
            assertThat(replay.holes().get(i).order()).isEqualTo(i + 1);
        }
        assertThat(replay.seconds()).isCloseTo(file.seconds(), within(1e-6));
        assertThat(replay.path()).allSatisfy(l -> assertThat(l.startSeconds()).isLessThan(replay.seconds()));
    }
}
