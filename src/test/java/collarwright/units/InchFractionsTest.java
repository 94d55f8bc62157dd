package collarwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import collarwright.testing.Seeds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InchFractionsTest {

    @ParameterizedTest
    @CsvSource({
        "49.2125, 32, 1-15/16 in (+0.00 mm)",
        "49.5,    32, 1-15/16 in (-0.29 mm)",
        "49.7,    32, 1-31/32 in (+0.31 mm)",
        "50.8,    64, 2 in (+0.00 mm)",
        "0.1,     32, 0 in (-0.10 mm)",
        "12.7,    64, 1/2 in (+0.00 mm)",
        "-12.7,   64, -1/2 in (+0.00 mm)",
        "25.39,   32, 1 in (+0.01 mm)",
    })
    void nearest_showsTheFractionAndItsError(double length, int parts, String shown) {
        assertThat(InchFractions.nearest(length, parts).withError()).isEqualTo(shown);
    }

    @Test
    void nearest_anyLength_errorIsAtMostHalfAPart() {
        Seeds.each(2000, draw -> {
            double length = draw.between(-3000, 3000);
            int parts = 1 << draw.whole(1, 6);
            InchFractions.Shown shown = InchFractions.nearest(length, parts);
            assertThat(StrictMath.abs(shown.error())).isLessThanOrEqualTo(25.4 / parts / 2 + 1e-9);
            // Read back by the parser, which counts in exact fractions.
            double read = Length.parse(shown.text(), LengthUnit.MM, Length.Zero.EITHER_SIDE)
                    .found()
                    .orElseThrow()
                    .mm();
            assertThat(read - length).isCloseTo(shown.error(), within(1e-9));
        });
    }

    @Test
    void nearest_oddParts_isRefused() {
        for (int parts : new int[] {0, 1, 3, 48, 128, -8}) {
            assertThatThrownBy(() -> InchFractions.nearest(1, parts)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void decimal_hasFixedPlaces() {
        assertThat(InchFractions.decimal(49.2125, 4)).isEqualTo("1.9375 in");
        assertThat(InchFractions.decimal(-0.001, 2)).isEqualTo("0.00 in");
    }
}
