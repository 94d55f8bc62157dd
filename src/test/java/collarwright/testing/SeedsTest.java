package collarwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SeedsTest {
    @Test
    void each_twice_drawsTheSame() {
        List<Double> first = new ArrayList<>();
        List<Double> second = new ArrayList<>();
        Seeds.each(20, draw -> first.add(draw.between(-1, 1)));
        Seeds.each(20, draw -> second.add(draw.between(-1, 1)));

        assertThat(second).isEqualTo(first).doesNotHaveDuplicates().hasSize(20);
        assertThat(first).allMatch(value -> value >= -1 && value < 1);
    }

    @Test
    void each_lawBroken_namesTheSeed() {
        assertThatThrownBy(() -> Seeds.each(100, draw -> {
                    if (draw.whole(1, 10) == 7) {
                        throw new AssertionError("seven");
                    }
                }))
                .isInstanceOf(AssertionError.class)
                .hasMessageMatching("seed \\d+ \\(run it alone with -Dseed=\\d+\\): seven");
    }

    @Test
    void shuffled_keepsEveryThing() {
        List<Integer> things = List.of(1, 2, 3, 4, 5, 6);
        assertThat(Seeds.of(5).shuffled(things))
                .containsExactlyInAnyOrderElementsOf(things)
                .isNotEqualTo(things);
    }
}
