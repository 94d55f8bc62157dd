package collarwright.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BreakdownTest {

    // T = h² + hk + k²: A. Siber, Icosadeltahedral Geometry of Geodesic Domes, Fullerenes and Viruses: A Tutorial on
    // the
    // T-Number, Symmetry 12(4):556, 2020. The usual row of T numbers, 1 3 4 7 9 12 13 16 19 21 25, is from memory.
    // Classes:
    // M. J. Wenninger, Spherical Models, Cambridge University Press, 1979 (as told in Wikipedia, "Geodesic
    // polyhedron").
    @ParameterizedTest
    @CsvSource({
        "1, 0, 1, 1",
        "1, 1, 3, 2",
        "2, 0, 4, 1",
        "2, 1, 7, 3",
        "1, 2, 7, 3",
        "3, 0, 9, 1",
        "2, 2, 12, 2",
        "3, 1, 13, 3",
        "4, 0, 16, 1",
        "3, 2, 19, 3",
        "4, 1, 21, 3",
        "5, 0, 25, 1",
        "158, 0, 24964, 1"
    })
    void tAndClass_smallBreakdowns_areThePublishedOnes(int b, int c, int t, int geodesicClass) {
        assertThat(new Breakdown(b, c).t()).isEqualTo(t);
        assertThat(new Breakdown(b, c).geodesicClass()).isEqualTo(geodesicClass);
    }

    @Test
    void breakdown_outOfRange_isRefused() {
        int[][] wrong = {
            {0, 0},
            {0, 1},
            {-1, 0},
            {1, -1},
            {159, 0},
            {1, 158},
            {25_001, 0},
            {Integer.MAX_VALUE, 0},
            {1, Integer.MAX_VALUE},
            {Integer.MIN_VALUE, Integer.MIN_VALUE}
        };
        for (int[] pair : wrong) {
            assertThatThrownBy(() -> new Breakdown(pair[0], pair[1]))
                    .as("(%s, %s)", pair[0], pair[1])
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }
}
