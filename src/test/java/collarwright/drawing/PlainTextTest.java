package collarwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.testing.Seeds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlainTextTest {

    @ParameterizedTest
    @CsvSource({
        "Bee-yard windbreak, Bee-yard windbreak",
        "Größe é x, Grosse e x",
        "Łódź, Lodz",
        "İzmir ılık, Izmir ilik",
        "Смола и Щука, Smola i Shchuka",
        "Κύπρος Ψάρι, Kypros Psari",
        "１２ ㎜, 12 mm",
        "ﬁne, fine"
    })
    void strokes_saysForeignLettersInLatin(String text, String said) {
        assertThat(PlainText.strokes(text)).isEqualTo(said);
    }

    @Test
    void strokes_lettersThatCannotBeSaid_showAsQuestionMarks() {
        assertThat(PlainText.strokes("蜂の庭 2")).isEqualTo("??? 2");
        assertThat(PlainText.strokes("🐝 yard")).isEqualTo("? yard");
    }

    @Test
    void strokes_spacesAndControls_becomeSingleSpaces() {
        assertThat(PlainText.strokes(" a\n\tb\u00a0\u00a0c\u0000\u200e ")).isEqualTo("a b c");
    }

    @Test
    void strokes_signsOfDrawings_stay() {
        assertThat(PlainText.strokes("Ø 44 ±0.1 at 55° × 2")).isEqualTo("Ø 44 ±0.1 at 55° × 2");
    }

    @Test
    void strokes_anyTextAtAll_canBeDrawn() {
        Seeds.each(300, draw -> {
            StringBuilder text = new StringBuilder();
            for (int i = 0; i < 40; i++) {
                text.appendCodePoint(draw.whole(0, draw.coin() ? 0x500 : 0x1ffff));
            }
            String said = PlainText.strokes(text.toString());
            assertThat(said.codePoints().allMatch(StrokeFont::covers)).as(said).isTrue();
        });
    }

    @Test
    void words_keepNumberAndUnitTogether() {
        assertThat(PlainText.words("Print at 100 %, no more than 1 mm of 2 in."))
                .containsExactly("Print", "at", "100 %,", "no", "more", "than", "1 mm", "of", "2 in.");
        assertThat(PlainText.words("")).containsExactly("");
    }
}
