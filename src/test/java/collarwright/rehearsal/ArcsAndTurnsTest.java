package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Arcs, helices, and cuts that turn the pipe, as the interpreter reads them. */
class ArcsAndTurnsTest {

    private static final String MODES = "G21\nG90 G94 G17\n";
    private static final TurnWord Y_DEGREES = new TurnWord('Y', false, 360);
    private static final TurnWord Y_MM = new TurnWord('Y', true, 314.159);

    private static Interpreter.Run run(String text, TurnWord word) {
        return Interpreter.run(BlockReader.read(MODES + text).blocks(), new Pose(0, 0, 5, 0), word);
    }

    private static Event.Stroke last(Interpreter.Run run) {
        assertThat(run.faults()).isEmpty();
        List<Event> events = run.events();
        return (Event.Stroke) events.get(events.size() - 1);
    }

    /** Quarter, half, three quarters and whole, both ways, by the definition of a circle: radius 10, centre (10, 0). */
    @ParameterizedTest
    @CsvSource({
        "G2, 10, 10, 0, 10, 0, 10",
        "G2, 20, 0, 0, 20, 0, 10",
        "G3, 10, 10, 0, 20, -10, 10",
        "G3, 20, 0, 0, 20, -10, 0",
        "G2, 10, -10, 0, 20, -10, 10",
        "G2, 0, 0, 0, 20, -10, 10",
        "G3, 0, 0, 0, 20, -10, 10"
    })
    void arc_reachesItsOutermostPoints(
            String word, double x, double y, double minX, double maxX, double minY, double maxY) {
        Event.Stroke arc = last(run(word + " X" + x + " Y" + y + " Z2.0 I10.0 J0.0 F100.0\n", TurnWord.DEGREES));
        Swept.Reach reach = arc.reach();
        assertThat(reach.minX()).isCloseTo(minX, within(1e-9));
        assertThat(reach.maxX()).isCloseTo(maxX, within(1e-9));
        assertThat(reach.minY()).isCloseTo(minY, within(1e-9));
        assertThat(reach.maxY()).isCloseTo(maxY, within(1e-9));
        Pose end = arc.path().at(arc.from(), arc.to(), 1);
        assertThat(end.x()).isCloseTo(x, within(1e-9));
        assertThat(end.y()).isCloseTo(y, within(1e-9));
        assertThat(end.z()).isCloseTo(2, within(1e-9));
        assertThat(arc.travels()).isTrue();
    }

    /** A helix of one turn takes the length of its hypotenuse over the feed. */
    @Test
    void helix_takesItsLengthOverTheFeed() {
        Event.Stroke arc = last(run("G3 X0.0 Y0.0 Z2.0 I10.0 J0.0 F100.0\n", TurnWord.DEGREES));
        assertThat(arc.drive().seconds()).isCloseTo(60 * Math.hypot(20 * Math.PI, 3) / 100, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "G2 X10.0 Y10.0 I10.0 J0.1 F100.0",
                "G2 X10.0 Y10.0 R10.0 F100.0",
                "G2 X10.0 Y10.0 F100.0",
                "G2 I10.0 J0.0 F100.0",
                "G2 X0.0 Y0.0 I0.0 J0.0 F100.0",
                "G2 X10.0 Y10.0 I10.0 J0.0",
                "G2 X10.0 Y10.0 I10.0 J0.0 A5.0 F100.0",
                "G1 X10.0 I3.0 F100.0",
                "G0 X10.0 J3.0",
                "G93\nG1 X10.0",
                "G93\nG1 X10.0 F2.0\nX20.0",
                "G1 X10.0 F2.0\nG93\nG94\nG1 X20.0",
                "G93\nG98 G81 X1.0 Y0.0 Z-1.0 R1.0 F3.0",
                "G93 G94",
                "G2 X10.0 Y10.0 I10.0 K0.0 F100.0"
            })
    void wrong_isAFault(String text) {
        assertThat(run(text + "\n", TurnWord.DEGREES).faults()).isNotEmpty();
    }

    @Test
    void arc_whereYTurns_isAFault() {
        assertThat(run("G2 X10.0 Y10.0 I10.0 J0.0 F100.0\n", Y_DEGREES).faults())
                .isNotEmpty();
    }

    /** F under G93 is one over minutes; under G94 X's way counts, or degrees where X stands still. */
    @Test
    void turningCuts_takeTheirTime() {
        assertThat(last(run("G93\nG1 X30.0 A90.0 F4.0\n", TurnWord.DEGREES))
                        .drive()
                        .seconds())
                .isCloseTo(15, within(1e-9));
        assertThat(last(run("G1 X30.0 A90.0 F60.0\n", TurnWord.DEGREES)).drive().seconds())
                .isCloseTo(30, within(1e-9));
        assertThat(last(run("G1 A90.0 F60.0\n", TurnWord.DEGREES)).drive().seconds())
                .isCloseTo(90, within(1e-9));
        assertThat(last(run("G1 X30.0 Y40.0 F60.0\n", Y_DEGREES)).drive().seconds())
                .isCloseTo(50, within(1e-9));
    }

    /** A Y word turns the pipe: by its number, or by an arc that a whole turn is the circumference of. */
    @Test
    void y_turnsThePipe() {
        Event.Stroke degrees = last(run("G0 Y90.0\n", Y_DEGREES));
        assertThat(degrees.to().a()).isEqualTo(90);
        assertThat(degrees.to().y()).isZero();
        assertThat(degrees.turns()).isTrue();
        assertThat(degrees.travels()).isFalse();
        assertThat(last(run("G0 Y78.53975\n", Y_MM)).to().a()).isCloseTo(90, within(1e-9));
        assertThat(last(run("G20\nG0 Y1.0\n", Y_MM)).to().a()).isCloseTo(25.4 / 314.159 * 360, within(1e-9));
    }
}
