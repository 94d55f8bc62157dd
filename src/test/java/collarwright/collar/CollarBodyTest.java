package collarwright.collar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import collarwright.geometry.Interval;
import collarwright.stock.Material;
import collarwright.stock.RoundStock;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CollarBodyTest {
    private static final Interval WALL = new Interval(6.2, 6.4, 6.6);

    private static RoundStock pipe(Optional<Interval> wall) {
        Material pvc = new Material("pvc", "PVC-U", true, 1400);
        Interval od = new Interval(160, 160.1, 160.5);
        return new RoundStock("p", "pipe", pvc, od, wall, true, true, 0, List.of(), "our choice, no source");
    }

    @Test
    void body_radii_followFromTheWall() {
        CollarBody body = new CollarBody(80, WALL, 80);
        assertThat(body.innerRadius()).isCloseTo(73.6, within(1e-12));
        assertThat(body.leastInnerRadius()).isCloseTo(73.4, within(1e-12));
        assertThat(body.midRadius()).isCloseTo(76.8, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 80",
        "-0.0, 80",
        "-80, 80",
        "NaN, 80",
        "6.6, 80",
        "6.5, 80",
        "1e-300, 80",
        "80, 0",
        "80, -0.0",
        "80, -1",
        "80, NaN",
        "80, -Infinity"
    })
    void body_impossibleSize_isRefused(double radius, double width) {
        assertThatIllegalArgumentException().isThrownBy(() -> new CollarBody(radius, WALL, width));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.0, -1})
    void body_noWall_isRefused(double wall) {
        assertThatIllegalArgumentException().isThrownBy(() -> new CollarBody(80, new Interval(wall, 5, 6), 80));
    }

    @Test
    void bearing_nothingTried_isTheWall() {
        CollarBody body = new CollarBody(80, WALL, 80);
        assertThat(body.bearing()).isEqualTo(WALL);
        assertThat(body.tiltLimit(40, 42, 6.4)).isEqualTo(RoundHole.tiltLimit(40, 42, 73.6, 80));
    }

    @Test
    void bearing_measured_liesInTheMiddleOfTheWall() {
        CollarBody body = new CollarBody(80, WALL, 80, 0, Optional.of(new Interval(0, 1, 2)));
        assertThat(body.innerRim(1)).isCloseTo(76.3, within(1e-12));
        assertThat(body.outerRim(1)).isCloseTo(77.3, within(1e-12));
        assertThat(body.tiltLimit(40, 42, 1)).isCloseTo(RoundHole.tiltLimit(40, 42, 76.3, 77.3), within(1e-12));
        double lean = body.tiltLimit(40, 42, 1);
        assertThat(body.required(40, lean, 1)).isCloseTo(42, within(1e-9));
        // Less wall that bears, more lean; a single edge most of all.
        assertThat(lean).isGreaterThan(body.tiltLimit(40, 42, 2)).isLessThan(body.tiltLimit(40, 42, 0));
        // Webs, reach and depth still count with the whole wall.
        assertThat(body.leastInnerRadius()).isCloseTo(73.4, within(1e-12));
        assertThat(body.required(140, 0.3, 1)).isInfinite();
    }

    @Test
    void bearing_impossible_isRefused() {
        Optional<Interval> thick = Optional.of(new Interval(1, 2, 6.7));
        assertThatIllegalArgumentException().isThrownBy(() -> new CollarBody(80, WALL, 80, 0, thick));
        Optional<Interval> good = Optional.of(new Interval(1, 2, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> new CollarBody(80, WALL, 80, 0.5, good));
        Optional<Interval> below = Optional.of(new Interval(-0.1, 2, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> new CollarBody(80, WALL, 80, 0, below));
    }

    @Test
    void trialPiece_ofAThickerPipe_bearsNoMoreThanTheWall() {
        TrialPiece piece = piece(new Interval(3, 6.5, 9));
        assertThat(piece.bearingIn(WALL)).isEqualTo(new Interval(3, 6.4, 6.6));
        assertThat(piece(new Interval(7, 8, 9)).bearingIn(WALL)).isEqualTo(new Interval(6.4, 6.4, 6.6));
        HubSettings hub = new HubSettings(pipe(Optional.of(WALL)), 80, pipe(Optional.empty()), 40, Fix.TIE, 2);
        assertThat(hub.with(piece).body().bearing()).isEqualTo(new Interval(3, 6.4, 6.6));
        assertThat(hub.with(piece).cutFrom(pipe(Optional.of(WALL))).trialPiece())
                .isEmpty();
        assertThatIllegalArgumentException().isThrownBy(() -> piece(new Interval(-1, 0, 1)));
    }

    private static TrialPiece piece(Interval bearing) {
        return new TrialPiece("p", "piece", "pipe", "pvc", bearing, Interval.of(0), 3, 0.01, "invented");
    }

    @Test
    void settings_body_countsWithTheMeasuredPipe() {
        HubSettings settings = new HubSettings(pipe(Optional.of(WALL)), 80, pipe(Optional.empty()), 40, Fix.TIE, 2);
        assertThat(settings.body()).isEqualTo(new CollarBody(80.05, WALL, 80));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 40, 2",
        "-0.0, 40, 2",
        "NaN, 40, 2",
        "-1, 40, 2",
        "80, 0, 2",
        "80, NaN, 2",
        "80, -1, 2",
        "80, 40, -1e-9",
        "80, 40, NaN",
        "80, 40, -Infinity"
    })
    void settings_impossibleSize_isRefused(double width, double ringWidth, double endGap) {
        RoundStock pipe = pipe(Optional.of(WALL));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new HubSettings(pipe, width, pipe, ringWidth, Fix.TIE, endGap));
    }

    @Test
    void settings_collarWithoutAWall_isRefused() {
        RoundStock bar = pipe(Optional.empty());
        assertThatIllegalArgumentException().isThrownBy(() -> new HubSettings(bar, 80, bar, 40, Fix.TIE, 2));
    }

    // The search knows nothing of where a chamfered rim bears: it tries the edges of the chamfer as they are.
    @ParameterizedTest
    @CsvSource({
        "40, 44, 80, 8, 0.5",
        "40, 44, 80, 8, 3",
        "20, 21, 55, 8.75, 1",
        "26.9, 27.5, 53, 3, 0.3",
        "40, 41, 45, 4, 1"
    })
    void tiltLimit_easedRims_isWhereASearchFindsIt(double strut, double hole, double outer, double wall, double rims) {
        CollarBody body = new CollarBody(outer, Interval.of(wall), 80, rims);
        double searched = new TiltSearch(strut, hole, outer - wall, outer, rims).limit();
        assertThat(body.tiltLimit(strut, hole, wall)).isCloseTo(searched, within(1e-5));
        assertThat(searched).isGreaterThan(new TiltSearch(strut, hole, outer - wall, outer).limit() + 1e-4);
        assertThat(body.required(strut, searched, wall)).isCloseTo(hole, within(1e-3));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 3.1, 4, Double.NaN})
    void body_rimsBeyondHalfTheThinnestWall_areRefused(double rims) {
        assertThatIllegalArgumentException().isThrownBy(() -> new CollarBody(80, WALL, 80, rims));
    }
}
