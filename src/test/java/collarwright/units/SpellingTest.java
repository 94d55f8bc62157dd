package collarwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.testing.Seeds;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpellingTest {

    private static final List<String> KEYS =
            List.of("frequency", "keep", "tiers", "radius", "height", "floor-diameter");

    @ParameterizedTest
    @CsvSource({"frequncy, frequency", "Radius, radius", "hieght, height", "floor, floor-diameter", "tier, tiers"})
    void nearest_misspelt_findsTheName(String word, String name) {
        assertThat(Spelling.nearest(word, KEYS, 1)).containsExactly(name);
    }

    @Test
    void nearest_nothingNear_isEmpty() {
        assertThat(Spelling.nearest("colour", KEYS, 3)).isEmpty();
        assertThat(Spelling.nearest("yd", LengthUnit.allNames(), 3)).isEmpty();
    }

    @Test
    void nearest_fraction_isReadAsItsDecimals() {
        List<String> stock = List.of("emt-0.5in", "emt-0.75in", "emt-1.25in", "emt-1in", "emt-3in");
        assertThat(Spelling.nearest("emt-3/4", stock, 1)).containsExactly("emt-0.75in");
        assertThat(Spelling.nearest("emt-1-1/4in", stock, 1)).containsExactly("emt-1.25in");
        assertThat(Spelling.nearest("emt-1/0", stock, 5)).doesNotContain("emt-0.75in");
    }

    // The classic example of the edit distance; with neighbours swapped as one step, "ca" to "abc" is 3 in this
    // restricted form (the unrestricted one has 2). Both from memory.
    @ParameterizedTest
    @CsvSource({"kitten, sitting, 3", "ca, abc, 3", "abcd, acbd, 1", "same, same, 0", "'', abc, 3"})
    void distance_knownPairs(String from, String to, int steps) {
        assertThat(Spelling.distance(from, to)).isEqualTo(steps);
    }

    @Test
    void distance_isSymmetricAndOneStepIsOne() {
        Seeds.each(500, draw -> {
            String word = draw.oneOf(KEYS);
            int at = draw.whole(0, word.length() - 1);
            String changed = word.substring(0, at) + '~' + word.substring(at + 1);
            assertThat(Spelling.distance(word, changed)).isEqualTo(1);
            assertThat(Spelling.distance(changed, word)).isEqualTo(1);
            assertThat(Spelling.distance(word, word.substring(0, at) + word.substring(at + 1)))
                    .isEqualTo(1);
        });
    }
}
