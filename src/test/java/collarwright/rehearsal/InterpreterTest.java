package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.rehearsal.Event.Kind;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class InterpreterTest {

    private static final String MODES = "G21 G17 G94\nF100.\n";

    private static Interpreter.Run run(String text, Pose start) {
        BlockReader reader = BlockReader.read(text);
        assertThat(reader.faults()).isEmpty();
        return Interpreter.run(reader.blocks(), start);
    }

    /** Strokes as "rapid x y z" and "feed x y z". */
    private static List<String> strokes(Interpreter.Run run) {
        List<String> lines = new ArrayList<>();
        for (Event event : run.events()) {
            if (event instanceof Event.Stroke s) {
                boolean feed = s.kind() == Kind.FEED || s.kind() == Kind.CYCLE_FEED;
                lines.add((feed ? "feed " : "rapid ") + number(s.to().x()) + " " + number(s.to().y()) + " "
                        + number(s.to().z()));
            }
        }
        return lines;
    }

    private static String number(double value) {
        double rounded = Math.round(value * 1e6) / 1e6;
        return rounded == Math.rint(rounded) ? String.valueOf((long) rounded) : String.valueOf(rounded);
    }

    // Kramer, Proctor, Messina, The NIST RS274NGC Interpreter - Version 3, NISTIR 6556, 2000, section 3.5.16, G81,
    // first example: from (1, 2, 3).
    @Test
    void g81_firstPublishedExample_isOneHoleFromAbsolutePositions() {
        Interpreter.Run run = run(MODES + "G90 G81 G98 X4 Y5 Z1.5 R2.8\n", new Pose(1, 2, 3, 0));

        assertThat(run.faults()).isEmpty();
        assertThat(strokes(run)).containsExactly("rapid 4 5 3", "rapid 4 5 2.8", "feed 4 5 1.5", "rapid 4 5 3");
    }

    // The same report and section, second example: from (1, 2, 3), incremental, three holes.
    @Test
    void g81_secondPublishedExample_isThreeIncrementalHoles() {
        Interpreter.Run run = run(MODES + "G91 G81 G98 X4 Y5 Z-0.6 R1.8 L3\n", new Pose(1, 2, 3, 0));

        assertThat(run.faults()).isEmpty();
        assertThat(strokes(run))
                .containsExactly(
                        "rapid 1 2 4.8",
                        "rapid 5 7 4.8",
                        "feed 5 7 4.2",
                        "rapid 5 7 4.8",
                        "rapid 9 12 4.8",
                        "feed 9 12 4.2",
                        "rapid 9 12 4.8",
                        "rapid 13 17 4.8",
                        "feed 13 17 4.2",
                        "rapid 13 17 4.8");
    }

    // The open controller's manual adds the first example from below R: LinuxCNC, G-Code reference, G81, example 3.
    @Test
    void g81_fromBelowTheRPlane_goesUpToItFirstAndEndsThere() {
        Interpreter.Run run = run(MODES + "G90 G81 G98 X4 Y5 Z1.5 R2.8\n", new Pose(0, 0, 0, 0));

        assertThat(strokes(run)).containsExactly("rapid 0 0 2.8", "rapid 4 5 2.8", "feed 4 5 1.5", "rapid 4 5 2.8");
    }

    // NISTIR 6556, section 3.5.16, G83: after each peck out, then down to 0.010 in (0.254 mm) above the last bottom.
    // Out to the R plane, as rs274 of linuxcnc-uspace 2.9 does (run on this very block).
    @Test
    void g83_pecksThreeTimes_reentersAQuarterMillimetreAboveTheLastBottom() {
        Interpreter.Run run = run(MODES + "G90 G98 G83 X20 Y0 Z-6 R2 Q3\n", new Pose(0, 0, 25, 0));

        assertThat(strokes(run))
                .containsExactly(
                        "rapid 20 0 25",
                        "rapid 20 0 2",
                        "feed 20 0 -1",
                        "rapid 20 0 2",
                        "rapid 20 0 -0.746",
                        "feed 20 0 -4",
                        "rapid 20 0 2",
                        "rapid 20 0 -3.746",
                        "feed 20 0 -6",
                        "rapid 20 0 25");
    }

    @Test
    void g73_pecks_backsOffWithoutLeavingTheHole() {
        Interpreter.Run run = run(MODES + "G90 G99 G73 X1 Y0 Z-2 R1 Q2\n", new Pose(1, 0, 5, 0));

        assertThat(strokes(run))
                .containsExactly("rapid 1 0 1", "feed 1 0 -1", "rapid 1 0 -0.746", "feed 1 0 -2", "rapid 1 0 1");
    }

    @Test
    void g82_dwellsAtTheBottom() {
        Interpreter.Run run = run(MODES + "G90 G98 G82 X1 Y0 Z1 R2 P1.5\n", new Pose(1, 0, 3, 0));

        assertThat(run.events().get(2)).isEqualTo(new Event.Dwell(3, 1.5));
        assertThat(strokes(run)).containsExactly("rapid 1 0 2", "feed 1 0 1", "rapid 1 0 3");
    }

    // NISTIR 6556, section 3.5.16: R and Z stay in force in a row of cycle blocks, L does not.
    @Test
    void cycle_nextBlock_keepsDepthAndPlane() {
        Interpreter.Run run = run(MODES + "G90 G99 G81 X1 Y0 Z1 R2 L2\nX5\nG80\n", new Pose(0, 0, 2, 0));

        assertThat(run.faults()).isEmpty();
        assertThat(strokes(run))
                .containsExactly(
                        "rapid 1 0 2",
                        "feed 1 0 1",
                        "rapid 1 0 2",
                        "feed 1 0 1",
                        "rapid 1 0 2",
                        "rapid 5 0 2",
                        "feed 5 0 1",
                        "rapid 5 0 2");
    }

    @Test
    void inches_scaleLengthsAndFeedButNotDegrees() {
        Interpreter.Run run = run("G20 G90 G94\nG0 X2.0 A30.0\nG1 X1.0 F2.0\n", Pose.UNKNOWN);

        Event.Stroke last = (Event.Stroke) run.events().get(1);
        assertThat(last.to().x()).isEqualTo(25.4);
        assertThat(last.to().a()).isEqualTo(30);
        assertThat(last.drive().feedMmPerMin()).isEqualTo(50.8);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        G1 X1.0                              | F above 0
        G0 G1 X1.0 F1.0                      | one word of its kind
        G0 X1.0 X2.0                         | one word of its kind
        X1.0                                 | G0, G1 or a cycle
        G80 X1.0                             | G0, G1 or a cycle
        M3                                   | S with a speed
        S0 M3                                | S with a speed
        G4                                   | G4 with P
        G4 P-1.0                             | G4 with P
        G2 X1.0 F1.0                         | an arc with X or Y
        M8                                   | a word that is known
        G0 X1.0 R1.0                         | R, Q, L and P only
        G0 X1.0 P1.0                         | R, Q, L and P only
        F1.0 G81 X1.0 R1.0                   | G81 with Z
        F1.0 G81 X1.0 Z1.0                   | G81 with R
        F1.0 G83 X1.0 Z1.0 R2.0              | G83 with Q
        F1.0 G83 X1.0 Z1.0 R2.0 Q0.0         | G83 with Q
        F1.0 G73 X1.0 Z1.0 R2.0 Q-1.0        | G73 with Q
        F1.0 G81 X1.0 Z2.0 R1.0              | R above the bottom
        F1.0 G81 X1.0 Z1.0 R2.0 A3.0         | no turning
        F1.0 G81 X1.0 Z1.0 R2.0 L0           | L of 1 or more
        F1.0 G81 X1.0 Z1.0 R2.0 L1.5         | L of 1 or more
        F1.0 G82 X1.0 Z1.0 R2.0 P-1.0        | P of 0 or more
        G81 X1.0 Z1.0 R2.0                   | F above 0
        F1.0 G81                             | X, Y and Z with a cycle
        F-1.0                                | F and S of 0 or more
        """)
    void block_thatAControlRefuses_isAFault(String block, String expected) {
        Interpreter.Run run = run("G21 G90 G94 G17\n" + block + "\n", new Pose(0, 0, 5, 0));

        assertThat(run.faults()).isNotEmpty().anySatisfy(f -> {
            assertThat(f.line()).isEqualTo(2);
            assertThat(f.expected()).startsWith(expected);
        });
    }

    @Test
    void lengthBeforeUnits_isAFault() {
        assertThat(run("G90 G0 X1.0\n", Pose.UNKNOWN).faults())
                .first()
                .extracting(Fault::expected)
                .asString()
                .startsWith("G20 or G21");
    }

    @Test
    void wordsAfterTheEnd_areAFault() {
        assertThat(run("G21\nM2\nG0 X1.0\n", Pose.UNKNOWN).faults())
                .singleElement()
                .extracting(Fault::line)
                .isEqualTo(3);
    }

    // rs274 of linuxcnc-uspace 2.9 accepts X--1; we don't.
    @ParameterizedTest
    @ValueSource(
            strings = {
                "G0 X--1.0",
                "G0 X",
                "G0 X1.0.0",
                "G0 1.0",
                "G0 X1e2",
                "g0 x1.0",
                "#1=2",
                "G0 X[1+1]",
                "G0 X1,5",
                "/G0 X1.0"
            })
    void text_thatIsNoWord_isAFault(String line) {
        assertThat(BlockReader.read("G21\n" + line + "\n").faults())
                .isNotEmpty()
                .allSatisfy(f -> assertThat(f.line()).isEqualTo(2));
    }
}
