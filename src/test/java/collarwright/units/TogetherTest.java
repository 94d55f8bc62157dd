package collarwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TogetherTest {

    @Test
    void results_standInTheOrderOfTheirTasks_howeverLongEachTakes() {
        List<Supplier<Integer>> tasks = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            int number = i;
            // The first take longest, so that later ones are done before them.
            tasks.add(() -> IntStream.range(0, (200 - number) * 500).reduce(number, (a, b) -> (a ^ b) ^ b));
        }
        assertThat(Together.all(tasks))
                .containsExactlyElementsOf(IntStream.range(0, 200).boxed().toList());
    }

    @Test
    void noTasks_giveNothing() {
        assertThat(Together.all(List.<Supplier<String>>of())).isEmpty();
    }

    @Test
    void firstFault_inTheOrderOfTheTasks_isThrownAsItWas() {
        List<Supplier<String>> tasks = List.of(
                () -> "done",
                () -> {
                    throw new IllegalStateException("second");
                },
                () -> {
                    throw new IllegalArgumentException("third");
                });
        assertThatThrownBy(() -> Together.all(tasks))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("second");
    }

    @Test
    void error_isThrownAsItWas() {
        List<Supplier<String>> tasks = List.of(() -> {
            throw new AssertionError("broken");
        });
        assertThatThrownBy(() -> Together.all(tasks))
                .isInstanceOf(AssertionError.class)
                .hasMessage("broken");
    }
}
