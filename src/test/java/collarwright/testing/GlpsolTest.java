package collarwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

@NeedsChecker(Checker.GLPSOL)
class GlpsolTest {

    private static final String SOUND =
            "Minimize\n obj: x + y\nSubject To\n c1: 2 x + 3 y >= 7\nGeneral\n x\n y\nEnd\n";

    // Two of y and one of x, or three: by hand.
    @Test
    void sound_isSolved() {
        assertThat(Glpsol.optimum(SOUND, true)).hasValue(3);
        assertThat(Glpsol.optimum(SOUND, false).orElseThrow()).isBetween(2.33, 2.34);
    }

    @Test
    void withoutSolution_hasNone() {
        assertThat(Glpsol.optimum(SOUND.replace("c1:", "c2: x + y <= 1\n c1:"), true))
                .isEmpty();
    }

    @Test
    void broken_shows() {
        assertThatThrownBy(() -> Glpsol.optimum(SOUND.replace("Subject To", "Subjct"), true))
                .isInstanceOf(AssertionError.class);
    }
}
