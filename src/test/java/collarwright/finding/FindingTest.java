package collarwright.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class FindingTest {
    private static final Where HOLE = new Where.Part("pattern CA / hole 3");

    @Test
    void finding_byLevel_keepsItsParts() {
        Finding stop = Finding.stop(Code.HOLE_NO_CUTTER, HOLE, "a", "b", "do c", "or d");
        assertThat(stop)
                .isEqualTo(new Finding(Level.STOP, Code.HOLE_NO_CUTTER, HOLE, "a", "b", List.of("do c", "or d")));
        assertThat(Finding.warn(Code.HOLE_SLACK, HOLE, "a", "b", "c").level()).isEqualTo(Level.WARN);
        assertThat(Finding.note(Code.NOT_MEASURED, HOLE, "a", "b", "c").level()).isEqualTo(Level.NOTE);
    }

    @Test
    void finding_withoutHint_isRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Finding.stop(Code.HOLE_SLACK, HOLE, "a", "b"))
                .withMessageContaining("HOLE_SLACK");
    }

    @Test
    @SuppressWarnings("NullAway")
    void finding_withoutPart_isRefused() {
        List<String> hints = List.of("c");
        assertThatNullPointerException().isThrownBy(() -> new Finding(null, Code.HOLE_SLACK, HOLE, "a", "b", hints));
        assertThatNullPointerException().isThrownBy(() -> new Finding(Level.WARN, null, HOLE, "a", "b", hints));
        assertThatNullPointerException()
                .isThrownBy(() -> new Finding(Level.WARN, Code.HOLE_SLACK, null, "a", "b", hints));
        assertThatNullPointerException()
                .isThrownBy(() -> new Finding(Level.WARN, Code.HOLE_SLACK, HOLE, null, "b", hints));
        assertThatNullPointerException()
                .isThrownBy(() -> new Finding(Level.WARN, Code.HOLE_SLACK, HOLE, "a", null, hints));
    }

    @Test
    void finding_hintsChangedLater_keepsItsOwn() {
        List<String> hints = new ArrayList<>(List.of("c"));
        Finding finding = new Finding(Level.WARN, Code.HOLE_SLACK, HOLE, "a", "b", hints);
        hints.clear();
        assertThat(finding.hints()).containsExactly("c");
    }

    @Test
    void level_order_isStopsFirst() {
        assertThat(Level.values()).containsExactly(Level.STOP, Level.WARN, Level.NOTE);
    }
}
