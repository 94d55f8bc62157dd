package collarwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LineBreaksTest {

    @Test
    void words_keepNumberAndUnitTogether() {
        assertThat(LineBreaks.words("Print at 100 %, no more than 1 mm of 2 in."))
                .containsExactly("Print", "at", "100 %,", "no", "more", "than", "1 mm", "of", "2 in.");
        assertThat(LineBreaks.words("")).containsExactly("");
    }

    @Test
    void say_anyScript_canBeDrawn() {
        assertThat(StrokeFont.say("Größe 蜂 Ø 44 ±0.1 at 55° × 2")).isEqualTo("Grosse ? Ø 44 ±0.1 at 55° × 2");
    }
}
