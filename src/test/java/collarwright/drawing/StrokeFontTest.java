package collarwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class StrokeFontTest {
    private static final double TINY = 1e-9;

    @Test
    void covers_printableAscii_andTheSignsOfDrawings() {
        for (int c = ' '; c <= '~'; c++) {
            assertThat(StrokeFont.covers(c)).as(Character.toString(c)).isTrue();
        }
        "°±×·÷–—−′″≤≥≈Øµ½¼¾²³→←↑↓"
                .codePoints()
                .forEach(c -> assertThat(StrokeFont.covers(c))
                        .as(Character.toString(c))
                        .isTrue());
    }

    @Test
    void characters_eachDrawsInkInsideItsRoom() {
        StrokeFont.characters().codePoints().filter(c -> c != ' ').forEach(c -> {
            String text = Character.toString(c);
            Box ink = Label.of(text, 10, 0, 0).bounds();
            double width = StrokeFont.width(text, 10);
            assertThat(ink.left()).as(text).isBetween(-0.3, 0.5);
            assertThat(ink.right()).as(text).isBetween(width - 0.5, width + 0.3);
            assertThat(ink.bottom()).as(text).isBetween(-3.01, 8.01);
            assertThat(ink.top()).as(text).isBetween(-2.01, 11.21);
        });
    }

    @Test
    void capitalsAndDigits_areAsHighAsSaid() {
        "ABCDEFGHIJKLMNOPRSTUVWXYZ0123456789"
                .codePoints()
                .mapToObj(c -> Label.of(Character.toString(c), 3.5, 0, 0).bounds())
                .forEach(ink -> {
                    assertThat(ink.bottom()).isBetween(-0.01, 0.01);
                    assertThat(ink.top()).isBetween(3.49, 3.51);
                });
    }

    @Test
    void characters_noTwoLookAlike() {
        Map<List<Path>, String> seen = new HashMap<>();
        StrokeFont.characters().codePoints().filter(c -> c != ' ').forEach(c -> {
            String text = Character.toString(c);
            String before = seen.put(Label.of(text, 10, 0, 0).strokes(), text);
            // The minus sign and the en dash are one stroke in every alphabet.
            assertThat(before == null || (before + text).equals("–−"))
                    .as(before + " and " + text)
                    .isTrue();
        });
        assertThat(seen.size()).isGreaterThan(110);
    }

    @Test
    void width_isSumOfLettersAndGaps() {
        // H is 6 tenths of the height wide, letters stand 2 tenths apart, words 6 tenths.
        assertThat(StrokeFont.width("H", 5)).isEqualTo(3.0, offset(TINY));
        assertThat(StrokeFont.width("HH", 5)).isEqualTo(7.0, offset(TINY));
        assertThat(StrokeFont.width("H H", 5)).isEqualTo(9.0, offset(TINY));
        assertThat(StrokeFont.width("", 5)).isZero();
    }

    @Test
    void label_turned_keepsItsSizeAndRunsUp() {
        Box level = Label.of("TOP 12", 4, 10, 20).bounds();
        Box up = new Label("TOP 12", new Point(10, 20), 4, StrictMath.PI / 2).bounds();
        assertThat(up.height()).isCloseTo(level.width(), offset(TINY));
        assertThat(up.width()).isCloseTo(level.height(), offset(TINY));
        assertThat(up.right()).isCloseTo(10, offset(TINY));
        assertThat(up.bottom()).isCloseTo(20, offset(TINY));
    }

    @Test
    void label_characterWithoutStrokes_isRefusedByName() {
        assertThatThrownBy(() -> Label.of("Größe", 4, 0, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("U+F6")
                .hasMessageContaining("Größe");
        assertThatThrownBy(() -> StrokeFont.width("a\tb", 4)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Label.of("   ", 4, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Label.of("A", 0, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Label.of("A", Double.NaN, 0, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
