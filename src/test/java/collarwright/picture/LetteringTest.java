package collarwright.picture;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class LetteringTest {

    private final Lettering letters = Lettering.load();

    @Test
    void widths_areThoseOfTheTypefaceItStandsInFor() {
        // Liberation Sans has the widths of Arial and Helvetica. Adobe, Core 14 font metrics, Helvetica.afm, WX of
        // space, zero, A, W and a: from memory.
        Offset<Double> half = Offset.offset(0.5);
        assertThat(letters.width(" ", 1000)).isCloseTo(278, half);
        assertThat(letters.width("0", 1000)).isCloseTo(556, half);
        assertThat(letters.width("A", 1000)).isCloseTo(667, half);
        assertThat(letters.width("W", 1000)).isCloseTo(944, half);
        assertThat(letters.width("a", 1000)).isCloseTo(556, half);
    }

    @Test
    void outline_standsOnItsLine_andIsAsHighAsACapital() {
        var bounds = letters.outline("H", 10, 20, 4).getBounds2D();
        assertThat(bounds.getMaxY()).isCloseTo(20, Offset.offset(1e-6));
        assertThat(bounds.getMinY()).isCloseTo(20 - 4 * Lettering.CAPITAL, Offset.offset(1e-6));
        assertThat(bounds.getMinX()).isBetween(10.0, 11.0);
    }

    @Test
    void lettersFromRightToLeft_areTurned_numbersInThemAreNot() {
        assertThat(letters.visible("אב 12")).isEqualTo("12 בא");
        assertThat(letters.visible("tent אב")).isEqualTo("tent בא");
    }

    @Test
    void lettersWithoutAShape_becomeBoxes_andInvisibleOnesGo() {
        assertThat(letters.visible("a養\u200Fb\u0007c")).isEqualTo("a□bc");
        assertThat(letters.shows("養")).isFalse();
        assertThat(letters.shows("Größe Ω Ж א ≥ 5°")).isTrue();
        assertThat(letters.visible("a\tb\nc")).isEqualTo("a b c");
    }
}
