package collarwright.units;

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
    void ascii_saysForeignLettersInLatin(String text, String said) {
        assertThat(PlainText.ascii(text)).isEqualTo(said);
    }

    @Test
    void ascii_lettersThatCannotBeSaid_showAsQuestionMarks() {
        assertThat(PlainText.ascii("蜂の庭 2")).isEqualTo("??? 2");
        assertThat(PlainText.ascii("🐝 yard")).isEqualTo("? yard");
    }

    @Test
    void ascii_spacesAndControls_becomeSingleSpaces() {
        assertThat(PlainText.ascii(" a\n\tb\u00a0\u00a0c\u0000\u200e ")).isEqualTo("a b c");
    }

    @Test
    void of_signsThatAreAtHand_stay() {
        assertThat(PlainText.of("Ø 44 ±0.1 at 55° × 2", c -> "Ø±°×".indexOf(c) >= 0 || (c >= 32 && c < 127)))
                .isEqualTo("Ø 44 ±0.1 at 55° × 2");
        assertThat(PlainText.ascii("4 × 5° ½ ≤ 3")).isEqualTo("4 x 5 deg 1/2 <= 3");
    }

    @Test
    void ascii_anyTextAtAll_isAscii() {
        Seeds.each(300, draw -> {
            StringBuilder text = new StringBuilder();
            for (int i = 0; i < 40; i++) {
                text.appendCodePoint(draw.whole(0, draw.coin() ? 0x500 : 0x1ffff));
            }
            String said = PlainText.ascii(text.toString());
            assertThat(said.codePoints().allMatch(c -> c >= 32 && c < 127))
                    .as(said)
                    .isTrue();
        });
    }
}
