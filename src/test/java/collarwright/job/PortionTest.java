package collarwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.testing.Seeds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PortionTest {

    @Test
    void rows_everyShare_isItself() {
        for (int frequency = 1; frequency <= 64; frequency++) {
            Portion portion = new Portion(frequency);
            for (int rows = 1; rows <= portion.all(); rows++) {
                assertThat(portion.rows(portion.share(rows))).contains(rows);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "3, 1/2, '4/9,5/9'", "4, 3/8, '4/12,5/12'", "2, 3/8, '2/6,3/6'", "5, 1/2, '7/15,8/15'", "3, 10/9, '9/9'",
        "3, 0/9, '1/9'", "3, 1/100, '1/9'", "3, 999999999/1, '9/9'", "5, 4/9, '6/15,7/15'", "1, 1/2, '1/3,2/3'",
    })
    void near_noWholeRow_namesBothSides(int frequency, String text, String near) {
        Portion portion = new Portion(frequency);
        assertThat(portion.rows(text)).isEmpty();
        assertThat(String.join(",", portion.near(text))).isEqualTo(near);
    }

    @Test
    void near_anyFraction_existsAndLiesBeside() {
        Seeds.each(2000, draw -> {
            Portion portion = new Portion(draw.whole(1, 64));
            String text = draw.whole(0, 300) + "/" + draw.whole(0, 200);
            if (portion.rows(text).isEmpty()) {
                assertThat(portion.near(text))
                        .isNotEmpty()
                        .allSatisfy(n -> assertThat(portion.rows(n)).isPresent());
            }
        });
    }
}
