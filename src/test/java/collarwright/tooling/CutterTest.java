package collarwright.tooling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import collarwright.collar.CollarBody;
import collarwright.geometry.Interval;
import collarwright.testing.Jobs;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CutterTest {
    private static Cutter cutter(double size, double lead, double depth, double minRpm, double maxRpm) {
        return new Cutter(
                "HS-44",
                CutterKind.HOLE_SAW,
                "44 mm",
                size,
                new Interval(44, 44.1, 44.3),
                true,
                lead,
                depth,
                minRpm,
                maxRpm,
                "metric-hole-saws");
    }

    @Test
    void cutter_inRange_isKept() {
        assertThat(cutter(44, 0, 38, 100, 100).asDrilled().nominal()).isEqualTo(44.1);
        assertThat(CutterKind.HOLE_SAW.title()).isEqualTo("hole saw");
        assertThat(CutterKind.TWIST.title()).isEqualTo("twist drill");
    }

    @ParameterizedTest
    @CsvSource({
        "0, 12, 38, 80, 600", "-0.0, 12, 38, 80, 600", "NaN, 12, 38, 80, 600", "-44, 12, 38, 80, 600",
        "44, -1e-9, 38, 80, 600", "44, NaN, 38, 80, 600", "44, 12, 0, 80, 600", "44, 12, NaN, 80, 600",
        "44, 12, -38, 80, 600", "44, 12, 38, 0, 600", "44, 12, 38, -0.0, 600", "44, 12, 38, NaN, 600",
        "44, 12, 38, 80, 79", "44, 12, 38, 80, NaN", "44, 12, 38, 80, -Infinity"
    })
    void cutter_outOfRange_isRefused(double size, double lead, double depth, double minRpm, double maxRpm) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> cutter(size, lead, depth, minRpm, maxRpm))
                .withMessageContaining("HS-44");
    }

    @Test
    void cutter_holeOfNoWidth_isRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> Jobs.saw(44, new Interval(0, 44, 45), true));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1e-9, Double.NaN, Double.NEGATIVE_INFINITY})
    void settings_noBand_isRefused(double band) {
        List<Cutter> cutters = List.of(Jobs.saw(44));
        assertThatIllegalArgumentException().isThrownBy(() -> new DrillingSettings(cutters, Fit.NEAREST, band));
    }

    @Test
    void settings_noCutter_isRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new DrillingSettings(List.of(), Fit.REACH, 0));
    }

    @Test
    void settings_cuttersChangedLater_keepsItsOwn() {
        List<Cutter> cutters = new ArrayList<>(List.of(Jobs.saw(44)));
        DrillingSettings settings = new DrillingSettings(cutters, Fit.REACH, -0.0);
        cutters.clear();
        assertThat(settings.cutters()).hasSize(1);
    }

    private static Hole hole(int number, double azimuth) {
        CollarBody body = new CollarBody(80, Interval.of(6), 80);
        HoleNeed need = new HoleNeed(body, Interval.of(40), 0.2);
        return HoleSize.choose(need, new DrillingSettings(List.of(Jobs.saw(44)), Fit.REACH, 0))
                .at(number, azimuth);
    }

    @Test
    void hole_values_giveSlackAndDiameter() {
        Hole hole = hole(3, 1);
        assertThat(hole.diameter()).isEqualTo(44);
        assertThat(hole.slack()).isEqualTo(hole.tiltLimit() - 0.2);
        assertThat(hole.height()).isZero();
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "-1, 0", "1, -1e-9", "1, 6.283185307179586", "1, 7", "1, NaN", "1, Infinity", "1, -Infinity"})
    void hole_numberOrAzimuthOutOfRange_isRefused(int number, double azimuth) {
        assertThatIllegalArgumentException().isThrownBy(() -> hole(number, azimuth));
    }

    @Test
    void pattern_holesInOrder_areKept() {
        List<Hole> holes = new ArrayList<>(List.of(hole(1, 0), hole(2, 2)));
        Pattern pattern = new Pattern("CA", 5, holes, "BCDFGHJK");
        holes.clear();
        assertThat(pattern.holes()).hasSize(2);
    }

    @Test
    void pattern_outOfOrder_isRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Pattern("CA", 5, List.of(), "B"));
        assertThatIllegalArgumentException().isThrownBy(() -> new Pattern("CA", 0, List.of(hole(1, 0)), "B"));
        assertThatIllegalArgumentException().isThrownBy(() -> new Pattern("CA", 5, List.of(hole(1, 0.1)), "B"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Pattern("CA", 5, List.of(hole(1, 0), hole(3, 2)), "B"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Pattern("CA", 5, List.of(hole(2, 0), hole(1, 2)), "B"));
    }
}
