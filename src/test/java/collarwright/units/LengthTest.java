package collarwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.testing.Seeds;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {

    private static Length read(String text) {
        return Length.parse(text, LengthUnit.MM, Length.Zero.REFUSED).found().orElseThrow();
    }

    private static Refusal refused(String text) {
        return Length.parse(text, LengthUnit.MM, Length.Zero.REFUSED).refusal().orElseThrow();
    }

    // The inch is 25.4 mm and the foot 12 inches exactly (National Bureau of Standards, Refinement of values for the
    // yard and the pound, Federal Register 24 FR 5348, 1959; from memory); everything else here is arithmetic.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "38 mm           | 38",
                "38mm            | 38",
                "38              | 38",
                "38.              | 38",
                ".5 mm           | 0.5",
                "+38 mm          | 38",
                "38 MM           | 38",
                "4 cm            | 40",
                "2.6 m           | 2600",
                "2.60 metres     | 2600",
                "0.125 in        | 3.175",
                "0.1 in          | 2.54",
                "1/3 in          | 8.466666666666667",
                "1-1/2 in        | 38.1",
                "1 1/2 in        | 38.1",
                "1 - 1/2 in      | 38.1",
                "1-1/2in.        | 38.1",
                "1½ in           | 38.1",
                "1 ½\"           | 38.1",
                "½ in            | 12.7",
                "1 15/16\"       | 49.2125",
                "1-15/16 in      | 49.2125",
                "1-15/16″        | 49.2125",
                "1 15⁄16 inches  | 49.2125",
                "17/16 in        | 26.9875",
                "2' 6\"          | 762",
                "2'6\"           | 762",
                "2' 6''          | 762",
                "2′ 6″           | 762",
                "2 ft 6 in       | 762",
                "2ft6in          | 762",
                "2' 6            | 762",
                "2'-6 1/2\"      | 774.7",
                "4' 6\"          | 1371.6",
                "2.5 ft          | 762",
                "2 feet          | 609.6",
                "\u00a038\u00a0mm | 38",
                "1000 m          | 1000000",
                "0.000001 mm     | 0.000001",
            })
    void parse_allForms_givesExactMillimetres(String text, double millimetres) {
        assertThat(read(text).mm()).isEqualTo(millimetres);
    }

    @Test
    void parse_bareNumber_usesTheUnitOfTheJob() {
        assertThat(Length.parse("2-3/8", LengthUnit.IN, Length.Zero.REFUSED)
                        .found()
                        .orElseThrow()
                        .mm())
                .isEqualTo(60.325);
        assertThat(Length.from(1.9375, LengthUnit.IN, Length.Zero.REFUSED)
                        .found()
                        .orElseThrow()
                        .mm())
                .isEqualTo(49.2125);
        assertThat(Length.from(0.1, LengthUnit.M, Length.Zero.REFUSED)
                        .found()
                        .orElseThrow()
                        .millimetres())
                .isEqualTo(Ratio.of(100, 1));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "4,76 mm      | \"4,76 mm\", with a comma | write a point: 4.76 mm",
                "1,234.5      | \"1,234.5\", with a comma | write the number without signs between thousands, and a point before the decimals: 1234.5",
                "1,234 mm     | \"1,234 mm\", with a comma | write a point: 1.234 mm (or 1234 mm)",
                ",5 mm        | \",5 mm\", with a comma | write a point: .5 mm",
                "50 mm/s      | \"50 mm/s\"; mm/s is the unit of a speed | if a length is meant, write 50 mm",
                "50 in/min    | \"50 in/min\"; in/min is the unit of a speed | if a length is meant, write 50 in",
                "300 rpm      | \"300 rpm\"; rpm is the unit of a speed of turning | write the length in mm, cm, m, in or ft",
                "30 deg       | \"30 deg\"; deg is the unit of an angle | write the length in mm, cm, m, in or ft",
                "30°          | \"30°\"; ° is the unit of an angle | write the length in mm, cm, m, in or ft",
                "3 kg         | \"3 kg\"; kg is the unit of a mass | write the length in mm, cm, m, in or ft",
                "3 mm²        | \"3 mm²\"; mm² is the unit of an area | write the length in mm, cm, m, in or ft",
                "3 %          | \"3 %\"; % is the unit of a share | write the length in mm, cm, m, in or ft",
                "48 milimetres | \"48 milimetres\"; \"milimetres\" is not a unit | write 48 mm",
                "48 furlongs  | \"48 furlongs\"; \"furlongs\" is not a unit | the units of length are mm, cm, m, in and ft",
                "1 km         | \"1 km\"; \"km\" is not a unit | the units of length are mm, cm, m, in and ft",
                "2 yd         | \"2 yd\"; \"yd\" is not a unit | the units of length are mm, cm, m, in and ft",
                "1-1/2        | \"1-1/2\", a fraction without a unit | write the unit: 1-1/2 in",
                "wide         | \"wide\" | write the number first, then its unit",
                "mm 38        | \"mm 38\" | write the number first, then its unit",
                "1-17/16 in   | 1-17/16 | write the whole number that you mean, and the rest as a fraction",
                "2 x 4 in     | \"2 x 4 in\"; \"x 4 in\" is not a unit | the units of length are mm, cm, m, in and ft",
            })
    void parse_unreadable_saysWhatWasFoundAndWhatToDo(String text, String found, String hint) {
        Refusal why = refused(text);
        assertThat(why.fault()).isEqualTo(Refusal.Fault.UNREADABLE);
        assertThat(why.found()).isEqualTo(found);
        assertThat(why.hints().get(0)).isEqualTo(hint);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "nan",
                "NaN mm",
                "-nan",
                "inf",
                "+inf mm",
                "infinity",
                "∞",
                "-∞ mm",
                "1e400",
                "1e400 mm",
                "1E-7 mm",
                "1/0 in",
                "1-1/0 in",
                "0/0 in"
            })
    void parse_noNumber_isRefused(String text) {
        assertThat(refused(text).fault()).isEqualTo(Refusal.Fault.NOT_A_NUMBER);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "mm", "-", "--3 mm", "3 3 mm", "3..4 mm", "1/2/3 in", "३ mm", "٣ mm", "０ mm"})
    void parse_noLength_isRefused(String text) {
        assertThat(refused(text).fault()).isEqualTo(Refusal.Fault.UNREADABLE);
    }

    @Test
    void parse_tooLongAText_isRefusedAndCut() {
        Refusal why = refused("9".repeat(100_000) + " mm");
        assertThat(why.fault()).isEqualTo(Refusal.Fault.UNREADABLE);
        assertThat(why.found()).hasSizeLessThan(100).contains("100003 characters");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "-5 mm           | -5 mm, below 0",
                "−1-1/2 in       | −1-1/2 in, below 0",
                "-2' 6\"         | -2' 6\", below 0",
                "0 mm            | 0 mm",
                "-0 mm           | -0 mm",
                "0' 0\"          | 0' 0\"",
                "1000.001 m      | 1000.001 m",
                "0.00000099 mm   | 0.00000099 mm",
            })
    void parse_outOfRange_isRefused(String text, String found) {
        Refusal why = refused(text);
        assertThat(why.fault()).isEqualTo(Refusal.Fault.OUT_OF_RANGE);
        assertThat(why.found()).isEqualTo(found);
    }

    @Test
    void parse_zeroWhereAllowed_isZero() {
        assertThat(Length.parse("-0 mm", LengthUnit.MM, Length.Zero.ALLOWED)
                        .found()
                        .orElseThrow()
                        .mm())
                .isEqualTo(0.0);
        assertThat(Length.parse("-1 mm", LengthUnit.MM, Length.Zero.ALLOWED).found())
                .isEmpty();
    }

    @Test
    void parse_position_mayLieBelowZero() {
        assertThat(Length.parse("-1-1/2 in", LengthUnit.MM, Length.Zero.EITHER_SIDE)
                        .found()
                        .orElseThrow()
                        .mm())
                .isEqualTo(-38.1);
        assertThat(Length.parse("-1001 m", LengthUnit.MM, Length.Zero.EITHER_SIDE)
                        .found())
                .isEmpty();
    }

    static List<Double> awkward() {
        return Seeds.AWKWARD;
    }

    @ParameterizedTest
    @MethodSource("awkward")
    void from_awkwardNumber_isRefusedOrKept(double number) {
        for (Length.Zero zero : Length.Zero.values()) {
            for (LengthUnit unit : LengthUnit.values()) {
                Length.from(number, unit, zero).found().ifPresent(length -> {
                    double size = StrictMath.abs(length.mm());
                    assertThat(size == 0 || (size >= 1e-6 && size <= 1e6)).isTrue();
                    assertThat(1 / (length.mm() + 0.0)).isNotEqualTo(Double.NEGATIVE_INFINITY);
                });
            }
        }
        assertThat(Length.from(number, LengthUnit.MM, Length.Zero.REFUSED).found())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "1-15/16 in | 49.2125 mm (1-15/16 in) | 1-15/16 in",
                "38 mm      | 38 mm (1.4961 in)       | 38 mm",
                "2.6 m      | 2600 mm (102.3622 in)   | 2600 mm",
                "2' 6\"     | 762 mm (30 in)          | 30 in",
                "0.1 in     | 2.54 mm (0.1 in)        | 0.1 in",
                "1/128 in   | 0.1984 mm (0.0078 in)   | 0.0078 in",
                "12.7 mm    | 12.7 mm (1/2 in)        | 12.7 mm",
            })
    void text_echoesBothUnits(String written, String both, String stamped) {
        assertThat(read(written).text()).isEqualTo(both);
        assertThat(read(written).stamped()).isEqualTo(stamped);
    }

    @Test
    void stamped_readAgain_isTheSame() {
        Seeds.each(2000, draw -> {
            boolean inches = draw.coin();
            String text =
                    inches ? draw.whole(0, 40) + "-" + draw.whole(1, 63) + "/64 in" : draw.whole(1, 999_999) + "mm";
            Length once = read(text);
            assertThat(read(once.stamped())).isEqualTo(once);
        });
    }

    @Test
    void parse_anyForm_isTheExactRatio() {
        Seeds.each(2000, draw -> {
            int whole = draw.whole(0, 99);
            int below = 1 << draw.whole(1, 6);
            int above = draw.whole(1, below - 1);
            String join = draw.oneOf(List.of("-", " ", " - "));
            String unit = draw.oneOf(List.of("in", " in", "\"", "″", " inches"));
            Length read = read(whole + join + above + "/" + below + unit);
            assertThat(read.millimetres()).isEqualTo(Ratio.of(254L * (whole * below + above), 10L * below));
            // A double holds 25.4·k/64 rounded once: dividing the other way round must come to the same number.
            assertThat(read.mm()).isEqualTo(254.0 * (whole * below + above) / (10.0 * below));
        });
    }
}
