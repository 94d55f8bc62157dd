package collarwright.drawing;

import static collarwright.drawing.ExampleCollars.hole;
import static collarwright.drawing.ExampleCollars.pattern;
import static collarwright.drawing.ExampleCollars.saw;
import static org.assertj.core.api.Assertions.assertThat;

import collarwright.tooling.Pattern;
import java.util.List;
import org.junit.jupiter.api.Test;

class LikenessTest {

    @Test
    void evenPatterns_lookTheSameTurned() {
        assertThat(Likeness.looksTheSameTurned(pattern("CA", saw(40), 0, 72, 144, 216, 288)))
                .isTrue();
    }

    @Test
    void nearlyEvenPatterns_lookTheSameTurned() {
        // A six-way hub of a sphere: 58.28°, 63.43°, 58.28° twice.
        assertThat(Likeness.looksTheSameTurned(pattern("CA", saw(40), 0, 58.2825, 121.7174, 180, 238.2825, 301.7174)))
                .isTrue();
        assertThat(Likeness.looksTheSameTurned(pattern("CA", saw(40), 0, 119, 241)))
                .isTrue();
    }

    @Test
    void patternsThatReadTheSameUpsideDown_areFound() {
        assertThat(Likeness.looksTheSameTurned(pattern("CA", saw(40), 0, 60, 180)))
                .isFalse();
        assertThat(Likeness.looksTheSameTurned(pattern("CA", saw(40), 0, 50, 100)))
                .isTrue();
    }

    @Test
    void heightsAndSizes_tellHolesApart() {
        Pattern heights = new Pattern(
                "CA", 1, List.of(hole(1, 0, 5, saw(40)), hole(2, 50, 0, saw(40)), hole(3, 100, 5, saw(40))), "X");
        assertThat(Likeness.looksTheSameTurned(heights)).isFalse();
        Pattern sizes = new Pattern(
                "CA", 1, List.of(hole(1, 0, 0, saw(40)), hole(2, 50, 0, saw(40)), hole(3, 100, 0, saw(44))), "X");
        assertThat(Likeness.looksTheSameTurned(sizes)).isFalse();
    }
}
