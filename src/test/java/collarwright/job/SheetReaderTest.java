package collarwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SheetReaderTest {

    private static SheetSettings sheet(String lines) {
        return Jobs.job("[shop]", "[sheet]\n" + lines + "\n[shop]").sheet();
    }

    private static List<Finding> faults(String lines) {
        JobReading reading = Jobs.read(Jobs.with("[shop]", "[sheet]\n" + lines + "\n[shop]"));
        assertThat(reading.job()).isEmpty();
        return reading.findings();
    }

    @Test
    void sheet_leftOut_isUsual() {
        assertThat(Jobs.job().sheet()).isEqualTo(SheetSettings.USUAL);
        assertThat(sheet("")).isEqualTo(SheetSettings.USUAL);
        assertThat(SheetSettings.USUAL).isEqualTo(new SheetSettings(0.1, 100, 100, 0.1, new CsvForm(',', '.')));
    }

    @Test
    void sheet_allGiven_isRead() {
        SheetSettings read = sheet(
                "paper-thickness = \"0.25 mm\"\nhairline = \"0.001 in\"\nprint-correction = { bar-x = 99.5, bar-y = \"10.04 cm\" }");
        assertThat(read.paperThickness()).isEqualTo(0.25);
        assertThat(read.hairline()).isCloseTo(0.0254, within(1e-12));
        assertThat(read.barX()).isEqualTo(99.5);
        assertThat(read.barY()).isCloseTo(100.4, within(1e-12));
        // A bar that came out short makes all lengths longer: 99.5 mm times the factor are 100 mm.
        assertThat(99.5 * read.correctionX()).isCloseTo(100, within(1e-9));
        assertThat(100.4 * read.correctionY()).isCloseTo(100, within(1e-9));
    }

    @Test
    void sheet_oneBarGiven_leavesTheOther() {
        SheetSettings read = sheet("print-correction = { bar-y = 101 }");
        assertThat(read.correctionX()).isEqualTo(1);
        assertThat(read.correctionY()).isCloseTo(0.990099, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "paper-thickness = 5.1 | JOB_OUT_OF_RANGE",
                "paper-thickness = -0.1 | JOB_OUT_OF_RANGE",
                "hairline = 0 | JOB_OUT_OF_RANGE",
                "hairline = 1.2 | JOB_OUT_OF_RANGE",
                "hairline = true | JOB_WRONG_TYPE",
                "print-correction = 1.01 | JOB_WRONG_TYPE",
                "print-correction = { bar-x = 95.2 } | JOB_OUT_OF_RANGE",
                "print-correction = { bar-y = 105.3 } | JOB_OUT_OF_RANGE",
                "print-correction = { bar-z = 100 } | JOB_UNKNOWN_KEY",
                "csv = { decimal = \",\" } | JOB_OUT_OF_RANGE",
                "csv = { separator = \".\" } | JOB_UNKNOWN_WORD",
                "csv = { decimal = 1 } | JOB_WRONG_TYPE",
                "csv = \";\" | JOB_WRONG_TYPE",
                "paper = 0.1 | JOB_UNKNOWN_KEY"
            })
    void sheet_wrong_isFound(String line, Code code) {
        assertThat(faults(line)).extracting(Finding::code).containsExactly(code);
    }

    @Test
    void csv_given_isRead() {
        assertThat(sheet("csv = { separator = \";\", decimal = \",\" }").csv()).isEqualTo(new CsvForm(';', ','));
        assertThat(sheet("csv = { separator = \";\" }").csv()).isEqualTo(new CsvForm(';', '.'));
        // Said or not, the usual form is the same job; also where something else is not as usual.
        assertThat(Jobs.job("[shop]", "[sheet]\nhairline = 0.2\ncsv = { separator = \",\" }\n[shop]")
                        .revision())
                .isEqualTo(Jobs.job("[shop]", "[sheet]\nhairline = 0.2\n[shop]").revision());
    }

    @Test
    void sheet_severalWrong_areAllTold() {
        assertThat(faults("paper-thickness = 6\nhairline = 2\nprint-correction = { bar-x = 90, bar-y = 110 }"))
                .hasSize(4);
    }

    @Test
    void revision_saysWhetherSomethingElseIsPrinted() {
        String usual = Jobs.job().revision();
        assertThat(Jobs.job("[shop]", "[sheet]\nhairline = 0.1\n[shop]").revision())
                .isEqualTo(usual);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "hairline = 0.2",
                "paper-thickness = 0.2",
                "print-correction = { bar-x = 99 }",
                "csv = { separator = \";\" }"
            })
    void revision_otherPrint_isAnother(String line) {
        assertThat(Jobs.job("[shop]", "[sheet]\n" + line + "\n[shop]").revision())
                .isNotEqualTo(Jobs.job().revision());
    }
}
