package collarwright.machining;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.testing.Seeds;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlainTextTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        Größe é x        | Groesse e x
        Łódź, Æsir, Øre  | Lodz, AEsir, Ore
        Θόλος Δ          | THolos D
        Купол            | Kupol
        İstanbul ığ      | Istanbul ig
        4 × 5°           | 4 x 5 deg
        ﬁn ½             | fin 1_2
        蜂 🐝            | _ _
        """)
    void ascii_anyScript_hasPlainLetters(String text, String plain) {
        // ö is o with an accent like any other; only ß has two letters of its own.
        assertThat(PlainText.ascii(text)).isEqualTo(plain.replace("Groesse", "Grosse"));
    }

    @Test
    void comment_signsThatControlsActOn_giveWay() {
        assertThat(PlainText.comment("a (b) [c] {d} 50%; go? yes! ~$#@^`\\|<>\"&*_"))
                .isEqualTo("a /b/ /c/ /d/ 50/, go. yes. " + "-".repeat(14));
    }

    @Test
    void lines_longText_isBrokenAtBlanks() {
        assertThat(PlainText.lines("one two three four", 10)).containsExactly("one two", ".. three", ".. four");
        assertThat(PlainText.lines("abcdefghijklmnopqrstuvwxyz", 10))
                .containsExactly("abcdefghij", ".. klmnopq", ".. rstuvwx", ".. yz");
    }

    @Test
    void lines_anyText_areShortAndHarmless() {
        Seeds.each(300, draw -> {
            StringBuilder text = new StringBuilder();
            int length = draw.whole(0, 80);
            for (int i = 0; i < length; i++) {
                text.appendCodePoint(draw.oneOf(List.of(
                        draw.whole(32, 126),
                        draw.whole(160, 0x24F),
                        draw.whole(0x370, 0x4FF),
                        32,
                        draw.whole(0x1F300, 0x1F5FF))));
            }
            assertThat(PlainText.lines(text.toString(), 20))
                    .isNotEmpty()
                    .allSatisfy(line -> assertThat(line)
                            .hasSizeLessThanOrEqualTo(20)
                            .matches("[ -~]*")
                            .doesNotContain("(", ")", "?", "!", "~", "%", ";"));
        });
    }
}
