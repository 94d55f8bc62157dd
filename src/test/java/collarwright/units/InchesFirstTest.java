package collarwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked by hand: an inch is 25.4 mm exactly (NIST, Guide for the Use of the International
 * System of Units, SP 811, appendix B.8). */
class InchesFirstTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            at least 17.00 mm                    | at least 0.669 in (17.00 mm)
            found -0.07 mm                       | found -0.003 in (-0.07 mm)
            cut it 25.4 mm wide or wider         | cut it 1.000 in (25.4 mm) wide or wider
            39.90 to 40.20 mm                    | 1.571 to 1.583 in (39.90 to 40.20 mm)
            Ø 160.1 mm (6.303 in), measured      | Ø 6.303 in (160.1 mm), measured
            8.5 to 8.8 mm (0.335 to 0.346 in)    | 0.335 to 0.346 in (8.5 to 8.8 mm)
            0.61° × 954 mm)                      | 0.61° × 37.559 in (954 mm))
            already 1.000 in (25.4 mm)           | already 1.000 in (25.4 mm)
            found "50 mm" and 50 mm/s, 5 mm²     | found "50 mm" and 50 mm/s, 5 mm²
            pvc-metric-160x6 of 3                | pvc-metric-160x6 of 3
            """)
    void lengths_getTheirInches(String text, String worded) {
        assertThat(InchesFirst.of(text)).isEqualTo(worded);
        assertThat(InchesFirst.of(worded)).as("said once").isEqualTo(worded);
    }
}
