package collarwright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.picture.Lettering;
import java.util.List;
import org.junit.jupiter.api.Test;

class WrappingTest {

    private final Wrapping wrapping = new Wrapping(Lettering.load(), 4);

    @Test
    void lines_fitTheRoom_andLoseNothing() {
        String text =
                "Collars for the windbreak on the east slope, with a door (second version) and 27.5 mm holes throughout";
        for (double room = 8; room < 120; room += 3.7) {
            List<String> lines = wrapping.lines(text, room);
            double most = room;
            assertThat(lines).allSatisfy(l -> assertThat(wrapping.width(l)).isLessThanOrEqualTo(most + 1e-6));
            assertThat(String.join("", lines).replace(" ", "")).isEqualTo(text.replace(" ", ""));
        }
    }

    @Test
    void numberAndUnit_stayTogether() {
        double room = wrapping.width("a hole of 41.99");
        assertThat(wrapping.lines("a hole of 41.99 mm", room)).containsExactly("a hole of", "41.99 mm");
    }

    @Test
    void longWord_breaksAfterAHyphenFirst() {
        double room = wrapping.width("templates/CA-wr");
        assertThat(wrapping.lines("templates/CA-wrap.pdf", room)).containsExactly("templates/CA-", "wrap.pdf");
    }

    @Test
    void lettersBeyondTheBasicPlane_areNotTornApart() {
        String text = "𝔸𝔹ℂ".repeat(6);
        assertThat(String.join("", wrapping.lines(text, 5))).isEqualTo(text);
        assertThat(wrapping.lines(text, 5)).noneMatch(l -> Character.isLowSurrogate(l.charAt(0)));
    }

    @Test
    void noRoomAtAll_givesOneLetterALine() {
        assertThat(wrapping.lines("abc", 0)).containsExactly("a", "b", "c");
    }

    @Test
    void shortened_endsWithAnEllipsisWhereItHasTo() {
        assertThat(wrapping.shortened("east slope", 100)).isEqualTo("east slope");
        assertThat(wrapping.shortened("east slope", wrapping.width("east s…"))).isEqualTo("east s…");
    }
}
