package collarwright.machining;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Arcs, lines and turning cuts as they are printed. */
class TurningPostTest {

    private static Machine machine(RotaryForm form) {
        Machine plain = RotarySamples.machine(true);
        Set<String> words = new TreeSet<>(plain.post().words());
        words.addAll(ProgramWords.ARCS);
        words.addAll(ProgramWords.TURNING);
        Machine.Post post = new Machine.Post(true, words, 3, 3, 70, "M2", "ngc");
        return RotarySamples.with(
                RotarySamples.with(plain, post), plain.rotary().with(form));
    }

    private static List<String> print(RotaryForm form, ProgramUnits units, Move... moves) {
        Machine machine = machine(form);
        return ProgramPost.print(List.of(moves), machine, new ProgramPost.Sheet(Grid.of(machine.post(), units), 50, 0))
                .lines()
                .toList();
    }

    private static RotaryForm form(RotaryForm.Word word, RotaryForm.Sweep sweep) {
        return new RotaryForm(word, Optional.empty(), sweep);
    }

    @Test
    void arcAndLine_haveAllTheirWords() {
        assertThat(print(
                        RotaryForm.plain(),
                        ProgramUnits.MM,
                        new Move.Line(1, 2, 100),
                        new Move.Arc(true, 10, 0, -1.5, 4.5, -1, 80),
                        new Move.Arc(false, 10, 0, -2, 3, 0, 80)))
                .containsExactly(
                        "G1 X1.000 Y2.000 F100.0",
                        "G2 X10.000 Y0.000 Z-1.500 I4.500 J-1.000 F80.0",
                        "G3 X10.000 Y0.000 Z-2.000 I3.000 J0.000 F80.0");
        assertThat(print(RotaryForm.plain(), ProgramUnits.INCH, new Move.Arc(true, 25.4, 0, 0, 12.7, 0, 254)))
                .containsExactly("G2 X1.0000 Y0.0000 Z0.0000 I0.5000 J0.0000 F10.00");
    }

    @Test
    void sweeps_underInverseTime_areFramedByTheirModes() {
        assertThat(print(
                        RotaryForm.plain(),
                        ProgramUnits.MM,
                        new Move.Rapid(Axis.A, 0),
                        new Move.Rapid(Axis.X, 10),
                        new Move.Sweep(20, 30, 6),
                        new Move.Comment("still cutting"),
                        new Move.Sweep(20, 60, 4),
                        new Move.Feed(5, 100)))
                .containsExactly(
                        "G0 A0.000",
                        "G0 X10.000",
                        "G93",
                        "G1 X20.000 A30.000 F10.0000",
                        "(still cutting)",
                        "G1 X20.000 A60.000 F15.0000",
                        "G94",
                        "G1 Z5.000 F100.0");
    }

    @Test
    void sweeps_byFeed_countWhatTheControlCounts() {
        Move[] moves = {
            new Move.Rapid(Axis.A, 0), new Move.Rapid(Axis.X, 10), new Move.Sweep(20, 30, 6), new Move.Sweep(20, 60, 4)
        };
        assertThat(print(form(RotaryForm.Word.A, RotaryForm.Sweep.FEED), ProgramUnits.INCH, moves))
                .contains("G1 X0.7874 A30.000 F3.9370", "G1 X0.7874 A60.000 F450.0000");
        assertThat(print(form(RotaryForm.Word.Y_DEGREES, RotaryForm.Sweep.FEED), ProgramUnits.MM, moves))
                .contains("G0 Y0.000", "G1 X20.000 Y30.000 F316.2278", "G1 X20.000 Y60.000 F450.0000");
        // 30 degrees of a circle of radius 50 are 26.180 mm of arc; with 10 mm along X 28.0248 mm, in 6 s.
        assertThat(print(form(RotaryForm.Word.Y_MM, RotaryForm.Sweep.FEED), ProgramUnits.MM, moves))
                .contains("G1 X20.000 Y26.180 F280.2480");
    }
}
