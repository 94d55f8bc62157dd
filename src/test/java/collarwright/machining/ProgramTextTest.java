package collarwright.machining;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.testing.Seeds;
import java.util.List;
import org.junit.jupiter.api.Test;

class ProgramTextTest {

    @Test
    void comment_anyScript_hasPlainLetters() {
        assertThat(ProgramText.comment("Größe é, Θόλος Δ, Купол, 4 × 5°, ½, 蜂"))
                .isEqualTo("Grosse e, Tholos D, Kupol, 4 x 5 deg, 1/2, .");
    }

    @Test
    void comment_signsThatControlsActOn_giveWay() {
        assertThat(ProgramText.comment("a (b) [c] {d} 50%; go? yes! ~$#@^`\\|<>\"&*_"))
                .isEqualTo("a /b/ /c/ /d/ 50/, go. yes. " + "-".repeat(14));
    }

    @Test
    void lines_longText_isBrokenAtBlanks() {
        assertThat(ProgramText.lines("one two three four", 10)).containsExactly("one two", ".. three", ".. four");
        assertThat(ProgramText.lines("abcdefghijklmnopqrstuvwxyz", 10))
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
            assertThat(ProgramText.lines(text.toString(), 20))
                    .isNotEmpty()
                    .allSatisfy(line -> assertThat(line)
                            .hasSizeLessThanOrEqualTo(20)
                            .matches("[ -~]*")
                            .doesNotContain("(", ")", "?", "!", "~", "%", ";"));
        });
    }
}
