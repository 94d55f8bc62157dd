package collarwright.collar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tilt limits and hole sizes against figures from outside. */
class RoundHoleOracleTest {
    // A collar this wide is a flat board to ten digits.
    private static final double FLAT = 1e9;

    private static double flatLimitDegrees(double strut, double hole, double wall) {
        return StrictMath.toDegrees(RoundHole.tiltLimit(strut, hole, FLAT, FLAT + wall));
    }

    // Mathematics Central, University of Regina, question QQ.09.18 ("Guy", a tube through a board): hole = t/tan(d) +
    // dia/sin(d), d between tube and board. Worked there: a 5/8 in tube at 45° needs the board's thickness + 0.884 in.
    @ParameterizedTest
    @CsvSource({"0.25", "0.5", "0.75", "1"})
    void required_tubeThroughABoard_isTheWorkedAnswer(double board) {
        double lean = StrictMath.toRadians(90 - 45);
        double hole = RoundHole.required(0.625, lean, FLAT, FLAT + board);
        assertThat(hole - board).isCloseTo(0.884, within(0.5e-3));
    }

    // Mathematica Stack Exchange, question 257365: a 3 in cylinder, a 1/4 in plate, a hole of 3.25 in (data); a comment
    // there gives 22.62° for no thickness. 18.6228° is computed with the formula of QQ.09.18.
    @Test
    void tiltLimit_cylinderInAPlate_isTheWorkedAnswer() {
        assertThat(flatLimitDegrees(3, 3.25, 0.25)).isCloseTo(18.6228, within(0.5e-4));
        assertThat(flatLimitDegrees(3, 3.25, 1e-6)).isCloseTo(22.62, within(0.5e-2));
    }

    // Computed by another program with the formula of QQ.09.18: strut, hole, board, degrees.
    @ParameterizedTest
    @CsvSource({
        "10, 12.7, 3.91, 24.0766",
        "20, 22, 3.91, 16.4055",
        "25, 27, 3.91, 15.3594",
        "12.7, 13.5, 2.87, 11.0461",
        "21.34, 22.23, 3.91, 9.0363",
        "10, 11, 5, 9.7025",
        "10, 10.5, 5, 5.2350",
        "12.7, 14.2875, 5.49, 12.9084"
    })
    void tiltLimit_flatBoard_isTheComputedOne(double strut, double hole, double wall, double degrees) {
        assertThat(flatLimitDegrees(strut, hole, wall)).isCloseTo(degrees, within(0.5e-4));
    }

    // Computed by another program, which searched the rims in space: Ri, Ro, D, d, exact and flat-board degrees.
    @ParameterizedTest
    @CsvSource({
        "77, 81.5, 50.8, 48.26, 13.8008, 13.8008",
        "77, 84.1, 50.8, 48.26, 11.8480, 11.8480",
        "51.1, 57.15, 50.8, 48.26, 12.4015, 12.5892",
        "77, 81.5, 49.7, 48.26, 9.5249, 9.5709",
        "50, 53, 27.5, 26.9, 7.2491, 7.2637"
    })
    void tiltLimit_curvedWall_isTheSearchedOne(
            double inner, double outer, double hole, double strut, double exact, double flat) {
        assertThat(StrictMath.toDegrees(RoundHole.tiltLimit(strut, hole, inner, outer)))
                .isCloseTo(exact, within(0.5e-4));
        assertThat(flatLimitDegrees(strut, hole, outer - inner)).isCloseTo(flat, within(0.5e-4));
    }

    // Computed by another program, which searched over the strut's offset: d, D, Ro, t, degrees in the axial plane.
    @ParameterizedTest
    @CsvSource({
        "10, 12.7, 30.1625, 3.9125, 24.0699",
        "20, 22, 30.1625, 3.9125, 16.4014",
        "25, 27, 30.1625, 3.9125, 15.3067",
        "12.7, 14.2875, 57.15, 6.02, 12.1527",
        "21.336, 23, 57.15, 6.02, 11.5113",
        "33.4, 35, 57.15, 6.02, 10.1090",
        "12.7, 13.5, 30.1625, 3.9125, 9.2077",
        "20, 21, 84.14, 7.11, 6.8625"
    })
    void tiltLimit_pipe_isTheSearchedOne(double strut, double hole, double outer, double wall, double degrees) {
        assertThat(StrictMath.toDegrees(RoundHole.tiltLimit(strut, hole, outer - wall, outer)))
                .isCloseTo(degrees, within(0.5e-4));
    }

    // Common practice, no source: for a 1.900 in strut in a plastic collar the trade drills 2 in for about 18°, 1 15/16
    // in for about 12°, 49 mm for the 9° to 10° class. Its rims are as good as thin edges.
    @ParameterizedTest
    @CsvSource({"2.0, 18", "1.9375, 12", "1.929133858, 9.5"})
    void tiltLimit_thinEdge_isWhatTheTradeDrills(double holeInches, double degrees) {
        assertThat(flatLimitDegrees(1.900 * 25.4, holeInches * 25.4, 1e-6)).isCloseTo(degrees, within(0.8));
    }

    // The same three holes with a sharp-edged wall of 4.5 mm in a collar of Ri 77: computed by another program.
    @ParameterizedTest
    @CsvSource({"50.8, 13.8", "49.2125, 7.2", "49, 6.0"})
    void tiltLimit_realWall_isWellBelowTheThinEdge(double hole, double degrees) {
        assertThat(flatLimitDegrees(48.26, hole, 4.5)).isCloseTo(degrees, within(0.05));
    }
}
