package collarwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IdsTest {
    // 21 letters follow the kind: A to Y without I, O, Q and S; 21 + 21 · 21 = 462 names have one or two of them.
    @ParameterizedTest
    @CsvSource({
        "H, 0, HA",
        "H, 7, HH",
        "H, 8, HJ",
        "C, 1, CB",
        "S, 20, SY",
        "H, 21, HAA",
        "H, 22, HAB",
        "H, 41, HAY",
        "H, 42, HBA",
        "H, 461, HYY",
        "H, 462, HAAA"
    })
    void letters_index_countsOn(char kind, int index, String id) {
        assertThat(Ids.letters(kind, index)).isEqualTo(id);
    }

    @Test
    void letters_manyIndexes_areUniquePlainAndNeverNumbers() {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < 10_000; i++) {
            String id = Ids.letters('H', i);
            assertThat(id).matches("H[A-HJ-NPRT-Y]+");
            assertThat(seen.add(id)).as(id).isTrue();
        }
    }
}
