package collarwright.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StudentTTest {

    // Percentage points of Student's t, 0.975 one-sided, as every statistics table has them; values from memory.
    @ParameterizedTest
    @CsvSource({
        "1, 12.706",
        "2, 4.303",
        "3, 3.182",
        "4, 2.776",
        "5, 2.571",
        "6, 2.447",
        "7, 2.365",
        "8, 2.306",
        "9, 2.262",
        "10, 2.228",
        "15, 2.131",
        "16, 2.120",
        "20, 2.086",
        "30, 2.042",
        "60, 2.000",
        "120, 1.980"
    })
    void twoSided_95Percent_isTheTables(int degrees, double t) {
        assertThat(StudentT.twoSided(0.95, degrees)).isCloseTo(t, within(0.0005));
    }

    /** The same share by adding up the density, whose constant cancels: another way than the finite sum. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 7, 10, 22, 45})
    void twoSided_densityAddedUp_givesTheShare(int degrees) {
        double t = StudentT.twoSided(0.95, degrees);
        // With t = √ν·tan ψ the density is cos(ψ)^(ν−1), up to its constant, over ψ from 0 to π/2.
        double end = StrictMath.atan(t / StrictMath.sqrt(degrees));

        assertThat(area(end, degrees) / area(StrictMath.PI / 2, degrees)).isCloseTo(0.95, within(1e-9));
    }

    private static double area(double end, int degrees) {
        int steps = 20_000;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            sum += StrictMath.pow(StrictMath.cos(end * (i + 0.5) / steps), degrees - 1);
        }
        return sum * end / steps;
    }

    @Test
    void twoSided_shareOfOneOrNoFreedom_isRefused() {
        assertThatThrownBy(() -> StudentT.twoSided(1, 3)).hasMessageContaining("share of 1.0");
        assertThatThrownBy(() -> StudentT.twoSided(0.95, 0)).hasMessageContaining("0 degrees");
    }
}
