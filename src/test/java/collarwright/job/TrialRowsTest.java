package collarwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.trial.TrialRow;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TrialRowsTest {

    private static final String HEAD = "hole,cutter,as-drilled-mm,strut-mm,measured-deg";

    private static TrialRows read(String text) {
        return TrialRows.read("rows.csv", text.getBytes(StandardCharsets.UTF_8), Jobs.job());
    }

    private static List<String> faults(String... lines) {
        return read(HEAD + "\n" + String.join("\n", lines)).findings().stream()
                .map(f -> f.where().text() + "|" + f.expected() + "|" + f.found() + "|"
                        + f.hints().get(0))
                .toList();
    }

    @Test
    void rows_ofAGoodTable_areRead() {
        TrialRows rows = read(HEAD + "\r\n1,TW-20.5,,20.1,7.5\r\n2,tw-21,21.08,,9.25\r\n3,TW-22,,20.1,\r\n");

        assertThat(rows.findings()).isEmpty();
        assertThat(rows.blank()).isEqualTo(1);
        assertThat(rows.rows())
                .containsExactly(
                        new TrialRow(1, "TW-20.5", 20.5, false, 20.1, StrictMath.toRadians(7.5)),
                        new TrialRow(2, "TW-21", 21.08, true, 20.1, StrictMath.toRadians(9.25)));
    }

    // One and the same table: semicolons and decimal commas, a mark in front, old line ends, quotation marks, another
    // order, capitals, blank lines.
    @ParameterizedTest
    @ValueSource(
            strings = {
                "hole;cutter;as-drilled-mm;strut-mm;measured-deg\n1;TW-20.5;;20,1;7,5\n",
                "\ufeffhole;cutter;as-drilled-mm;strut-mm;measured-deg\r\n1;TW-20.5;;20.1;7.5",
                "hole,cutter,as-drilled-mm,strut-mm,measured-deg\r1,TW-20.5,,20.1,7.5\r",
                "\"hole\",\"cutter\",\"measured-deg\"\n\n\"1\",\"TW-20.5\",\"7.5\"\n\n",
                "Measured-deg, Cutter ,HOLE,note\n7.50,20.5 mm,1,\"first, \"\"good\"\"\"\n",
                "hole,cutter,measured-deg,\n1,TW-20.5,+7.5,\n,,,\n"
            })
    void rows_writtenInAnyDialect_areTheSame(String text) {
        TrialRows rows = read(text);
        assertThat(rows.findings()).isEmpty();
        assertThat(rows.rows())
                .containsExactly(new TrialRow(1, "TW-20.5", 20.5, false, 20.1, StrictMath.toRadians(7.5)));
    }

    @Test
    void rows_everyBadCell_isToldWithItsPlace() {
        assertThat(faults(
                        "x,TW-20.5,,20.1,7.5",
                        "2,TW-20.55,,20.1,7.5",
                        "3,TW-21,2l,20.1,7.5",
                        "4,TW-21,,20.1,90",
                        "5,TW-21,,20.1,\"7,5\"",
                        ",TW-21,,20.1,7.5",
                        "7,,,20.1,7.5",
                        "8,TW-21,20.0,20.1,7.5",
                        "9,TW-21,,200,-3",
                        "10,TW-21,,20.1,7,5",
                        "11,TW-21,,20.1,-4"))
                .containsExactly(
                        "rows.csv:2:1|the number of the hole, 1 to 99|\"x\"|write the number that stands beside the hole",
                        "rows.csv:3:3|a cutter of the job's racks|\"TW-20.55\"|did you mean TW-20.25 or TW-20.5 or TW-20.75?",
                        "rows.csv:4:9|a size in mm, above 0 and below the bore, 92.7|\"2l\"|write the bare number, without a"
                                + " unit",
                        "rows.csv:5:15|an angle in degrees, above 0 to 80|90|check the reading, and that it is in the right"
                                + " column",
                        "rows.csv:6:15|an angle in degrees, above 0 to 80|\"7,5\"|write a decimal point; a comma only where"
                                + " ; separates the cells",
                        "rows.csv:7:1|the number of the hole|nothing|write 1 for the first hole, and so on",
                        "rows.csv:8:1|a cutter, or the measured size of the hole|neither|write the cutter's name, such as"
                                + " TW-3",
                        "rows.csv:9:9|a hole that the strut of 20.1 mm passes|20 mm|check the hole's and the strut's size,"
                                + " and that the row has the right cutter",
                        "rows.csv:10:10|a size in mm, above 0 and below the bore, 92.7|200|check the reading, and that it is"
                                + " in the right column",
                        "rows.csv:10:14|an angle in degrees, above 0 to 80|\"-3\"|write it without the sign: both a lean and"
                                + " a size count from 0 up",
                        "rows.csv:11:18|no more cells than the 5 of the first line|1 line with more|where numbers have"
                                + " decimal commas, separate the cells with ; in every line, the first one too",
                        "rows.csv:12:16|an angle in degrees, above 0 to 80|\"-4\"|write it without the sign: both a lean"
                                + " and a size count from 0 up");
    }

    @Test
    void rows_commasInNumbersAndBetweenCells_areToldOnce() {
        assertThat(faults("1,TW-20.5,,20,1,7,5", "1,TW-20.5,,20,1,7,6", "2,TW-21,,20,1,9,0", "3,TW-22,,20.1,11"))
                .containsExactly(
                        "rows.csv:2:17|no more cells than the 5 of the first line|3 lines with more|where numbers"
                                + " have decimal commas, separate the cells with ; in every line, the first one too");
    }

    @Test
    void rows_withTheOtherSeparator_areToldOnce() {
        String told = "|the separator of the first line, ,, in every line|3 lines parted by ;|write ; in the first line"
                + " too, or , in every line; with decimal commas ; is the one to take";
        assertThat(faults("1;TW-20.5;;20,1;7,5", "2,TW-21,,20.1,9", "3;TW-22;;20.1;11", "3;TW-22;;;11"))
                .containsExactly("rows.csv:2:1" + told);
        assertThat(read("hole;cutter;measured-deg\n1,TW-20.5,7.5\n2,TW-21,9\n").findings())
                .extracting(f -> f.where().text() + " " + f.found())
                .containsExactly("rows.csv:2:1 2 lines parted by ,");
    }

    @Test
    void heads_wrongOrMissing_areTold() {
        assertThat(read("hole,cuter,measured-deg\n").findings())
                .extracting(f -> f.where().text() + " " + f.found() + " " + f.hints())
                .containsExactly(
                        "rows.csv:1:1 no column cutter [write the column names as the first line]",
                        "rows.csv:1:6 \"cuter\" [did you mean cutter?]");
        assertThat(read("hole,cutter,hole,measured-deg\n").findings())
                .extracting(Finding::found)
                .containsExactly("\"hole\" twice");
        assertThat(read("").findings()).extracting(Finding::code).containsExactly(Code.TRIAL_ROWS);
        assertThat(read(HEAD + "\n1,\"TW-20.5,,20.1,7.5\n").findings())
                .extracting(f -> f.where().text())
                .containsExactly("rows.csv:2:3");
        assertThat(read(HEAD + "\n1,TW-20.5,,20.1,7.5".repeat(10_000)).findings())
                .extracting(Finding::expected)
                .containsExactly("at most 10000 lines");
    }

    @Test
    void bytes_noText_areRefused() {
        assertThat(TrialRows.read("rows.csv", new byte[] {'h', (byte) 0xe4}, Jobs.job())
                        .findings())
                .extracting(Finding::code)
                .containsExactly(Code.JOB_FILE_UNREADABLE);
    }
}
