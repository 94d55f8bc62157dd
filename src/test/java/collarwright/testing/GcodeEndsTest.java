package collarwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

@NeedsChecker(Checker.GCODE_JS)
class GcodeEndsTest {

    /** Positions by hand: 4 in is 101.6 mm, 1.5 in is 38.1 mm; a word in a comment is none. */
    @Test
    void program_inInches_endsWhereItSays() {
        var ends = GcodeEnds.read("(hello X5)\nG20\nG90 G94 G17\nG0 Z4.0\nG0 A-2.5\nN10 G0 X1.5\nG1 Z1.5 F4.32\nM2\n");

        assertThat(ends).hasSize(4);
        assertThat(ends.get(1).a()).isEqualTo(-2.5);
        assertThat(ends.get(3).motion()).isEqualTo("G1");
        assertThat(ends.get(3).x()).isCloseTo(38.1, within(1e-9));
        assertThat(ends.get(3).z()).isCloseTo(38.1, within(1e-9));
        assertThat(ends.get(0).z()).isCloseTo(101.6, within(1e-9));
    }

    /** It complains of nothing: a broken word moves nowhere, and only a comparison of ends can tell. */
    @Test
    void program_withAHoleMoved_endsElsewhere() {
        assertThat(GcodeEnds.read("G21\nG0 X1.000\n")).isNotEqualTo(GcodeEnds.read("G21\nG0 X1.001\n"));
    }
}
