package collarwright.tooling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import collarwright.collar.CollarBody;
import collarwright.geometry.Interval;
import collarwright.machining.BoreSamples;
import collarwright.testing.Jobs;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoringTest {

    private static final List<Cutter> MILLS = List.of(
            BoreSamples.mill(6, 20), BoreSamples.mill(10, 32), BoreSamples.mill(12, 38), BoreSamples.mill(20, 55));

    private static final CollarBody BODY = new CollarBody(80.05, new Interval(6.2, 6.4, 6.6), 80);
    private static final Interval STRUT = new Interval(39.9, 40.05, 40.2);
    private static final HoleNeed NEED = new HoleNeed(BODY, STRUT, StrictMath.toRadians(11.64));

    private static DrillingSettings settings(Fit fit, Boring.Rule rule, Cutter... drills) {
        return new DrillingSettings(
                List.of(drills), fit, 0.01, 0.3, Optional.empty(), Optional.empty(), false, new Boring(rule, MILLS));
    }

    // Six tenths of the hole: 28.4 of 47.32 mm, 20.004 of 33.34, 19.998 of 33.33, 14.4 of 24, 8.6 of 14.39, 7.5 of
    // 12.5.
    @ParameterizedTest
    @CsvSource({
        "47.316, 10, EM-20, 47.32",
        "47.32, 10, EM-20, 47.32",
        "33.34, 10, EM-20, 33.34",
        "33.33, 10, EM-12, 33.33",
        "24, 10, EM-12, 24",
        "23.991, 10, EM-12, 24",
        "23.99, 10, EM-12, 23.99",
        "14.39, 10, EM-6, 14.39",
        "7.2, 10, EM-6, 7.2",
        "47.32, 50, EM-20, 47.32",
        "47.32, 60, EM-20, 47.32",
        "14.5, 35, EM-12, 14.5",
        "12.5, 40, EM-6, 12.5"
    })
    void cutter_isTheThickestThatGoesRoundEasily(double least, double depth, String id, double bored) {
        Cutter cutter =
                new Boring(Boring.Rule.NO_FIT, MILLS).cutter(least, depth).orElseThrow();

        assertThat(cutter.tool().id()).isEqualTo(id);
        assertThat(cutter.asDrilled()).isEqualTo(Interval.of(bored));
        assertThat(cutter.bores()).isTrue();
        assertThat(cutter.kind()).isEqualTo(CutterKind.END_MILL);
    }

    @Test
    void cutter_flutesTooShort_takesAThinnerOneWithLongerFlutes() {
        Boring boring = new Boring(Boring.Rule.NO_FIT, List.of(BoreSamples.mill(12, 60), BoreSamples.mill(20, 30)));

        assertThat(boring.cutter(47.32, 40).orElseThrow().tool().id()).isEqualTo("EM-12");
        assertThat(boring.cutter(47.32, 29).orElseThrow().tool().id()).isEqualTo("EM-20");
    }

    @Test
    void cutter_noneThinEnough_isEmpty() {
        assertThat(new Boring(Boring.Rule.NO_FIT, MILLS).cutter(7.19, 1)).isEmpty();
        assertThat(new Boring(Boring.Rule.NEVER, MILLS).cutter(47, 1)).isEmpty();
        assertThat(Boring.NONE.cutter(47, 1)).isEmpty();
        assertThat(new Boring(Boring.Rule.ALWAYS, MILLS).cutter(Double.POSITIVE_INFINITY, 1))
                .isEmpty();
    }

    @Test
    void bored_namesToolAndSize() {
        Cutter bored = Cutter.bored(BoreSamples.MILL_12, 47.32);

        assertThat(bored.id()).isEqualTo("EM-12-47.32");
        assertThat(bored.title()).isEqualTo("12 mm end mill, bored to 47.32 mm");
        assertThat(bored.marked()).isEqualTo("47.32 mm bored");
        assertThat(bored.tool()).isEqualTo(BoreSamples.MILL_12);
        assertThat(bored.wider(Interval.between(0.1, 0.3))).isEqualTo(bored);
        assertThat(Jobs.saw(44).title()).isEqualTo("44 mm hole saw");
        assertThatIllegalArgumentException().isThrownBy(() -> Cutter.bored(BoreSamples.MILL_12, 12));
        assertThatIllegalArgumentException().isThrownBy(() -> Cutter.bored(Jobs.saw(44), 50));
        assertThatIllegalArgumentException().isThrownBy(() -> new Boring(Boring.Rule.ALWAYS, List.of(Jobs.saw(44))));
    }

    // The hand figure of HoleSizeTest, 42.404, rounded up to a hundredth.
    @Test
    void noFit_boresOnlyWhereNoCutterFits() {
        HoleSize bored = HoleSize.choose(NEED, settings(Fit.REACH, Boring.Rule.NO_FIT, Jobs.saw(42)));
        HoleSize sawn = HoleSize.choose(NEED, settings(Fit.REACH, Boring.Rule.NO_FIT, Jobs.saw(43)));

        assertThat(bored.cutter().orElseThrow().asDrilled().nominal())
                .isBetween(bored.required(), bored.required() + 0.01)
                .isCloseTo(42.40, within(0.015));
        assertThat(bored.tightestLimit()).isGreaterThanOrEqualTo(NEED.lean());
        assertThat(sawn.cutter()).contains(Jobs.saw(43));
    }

    @Test
    void always_boresWhereACutterFitsToo_andNeverDoesNot() {
        assertThat(HoleSize.choose(NEED, settings(Fit.REACH, Boring.Rule.ALWAYS, Jobs.saw(43)))
                        .cutter()
                        .orElseThrow()
                        .bores())
                .isTrue();
        assertThat(HoleSize.choose(NEED, settings(Fit.REACH, Boring.Rule.NEVER, Jobs.saw(42)))
                        .cutter())
                .isEmpty();
    }

    @Test
    void nearest_bindsAtTheNeed() {
        HoleSize size = HoleSize.choose(NEED, settings(Fit.NEAREST, Boring.Rule.ALWAYS, Jobs.saw(50)));

        assertThat(HoleSize.limit(NEED, size.cutter().orElseThrow()))
                .isBetween(NEED.lean(), NEED.lean() + StrictMath.toRadians(0.02));
    }

    /** End mills don't count: the limit holds for the holes that drills serve. */
    @Test
    void mostCutters_leavesBoredHolesOut() {
        Cutter small = Jobs.saw(42.5);
        DrillingSettings drilling = new DrillingSettings(
                        List.of(small, Jobs.saw(43)), Fit.REACH, 0, 0.3, Optional.empty(), Optional.of(1))
                .boring(new Boring(Boring.Rule.NO_FIT, MILLS));
        HoleNeed wide = new HoleNeed(BODY, STRUT, StrictMath.toRadians(20));
        List<CutterNeed> needs = List.of(CutterNeed.of(NEED, 6, drilling), CutterNeed.of(wide, 5, drilling));

        assertThat(CutterChoice.drilled(needs, drilling)).hasSize(1);
        assertThat(CutterChoice.narrowed(needs, drilling).cutters()).containsExactly(small);
    }

    @Test
    void settings_ofEndMillsAlone_areTaken() {
        DrillingSettings drilling = settings(Fit.REACH, Boring.Rule.NO_FIT);

        assertThat(HoleSize.choose(NEED, drilling).cutter().orElseThrow().bores())
                .isTrue();
        assertThatIllegalArgumentException().isThrownBy(() -> settings(Fit.REACH, Boring.Rule.NEVER));
    }
}
