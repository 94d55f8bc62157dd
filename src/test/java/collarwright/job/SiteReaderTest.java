package collarwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.units.Paper;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SiteReaderTest {

    private static SiteSettings site(String lines) {
        return Jobs.job("[shop]", "[site]\n" + lines + "\n[shop]").site();
    }

    private static List<Finding> faults(String lines) {
        JobReading reading = Jobs.read(Jobs.with("[shop]", "[site.labels]\n" + lines + "\n[shop]"));
        assertThat(reading.job()).isEmpty();
        return reading.findings();
    }

    @Test
    void site_leftOut_isUsual_andKeepsTheRevision() {
        assertThat(Jobs.job().site()).isEqualTo(SiteSettings.USUAL);
        assertThat(site("bundle-weight-kg = 15")).isEqualTo(SiteSettings.USUAL);
        assertThat(Jobs.job("[shop]", "[site]\nbundle-weight-kg = 15\n[shop]").revision())
                .isEqualTo(Jobs.job().revision());
        assertThat(Jobs.job("[shop]", "[site]\nbundle-weight-kg = 12\n[shop]").revision())
                .isNotEqualTo(Jobs.job().revision());
    }

    @Test
    void labels_allGiven_areRead() {
        LabelSheet sheet = site("""
                        [site.labels]
                        paper = "A4"
                        columns = 2
                        rows = 7
                        label-width = "99.1 mm"
                        label-height = "38.1 mm"
                        left = "4.7 mm"
                        top = "15.2 mm"
                        pitch-x = "101.6 mm"
                        pitch-y = "38.1 mm"
                        nudge-x = "-0.5 mm"
                        nudge-y = "1 mm\"""").labels().orElseThrow();
        assertThat(sheet).isEqualTo(new LabelSheet(Paper.A4, 2, 7, 99.1, 38.1, 4.7, 15.2, 101.6, 38.1, -0.5, 1));
    }

    @Test
    void labels_onlyNudged_areTheUsualSheet() {
        LabelSheet sheet = site("labels = { nudge-x = \"0.4 mm\" }").labels().orElseThrow();
        LabelSheet usual = LabelSheet.usual(Paper.A4);
        assertThat(sheet.nudgeX()).isEqualTo(0.4);
        assertThat(sheet.left()).isEqualTo(usual.left());
        assertThat(sheet.top()).isEqualTo(usual.top());
        assertThat(sheet.perSheet()).isEqualTo(24);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "columns = 4 | LABEL_SHEET",
                "rows = 9 | LABEL_SHEET",
                "label-width = \"40 mm\" | LABEL_SHEET",
                "label-height = \"19 mm\" | LABEL_SHEET",
                "pitch-x = \"60 mm\" | LABEL_SHEET",
                "left = \"3 mm\" | LABEL_SHEET",
                "nudge-y = \"-6 mm\" | LABEL_SHEET",
                "nudge-x = \"3 mm\" | LABEL_SHEET",
                "columns = 0 | JOB_OUT_OF_RANGE",
                "paper = \"A5\" | JOB_UNKNOWN_WORD",
                "gap = 2 | JOB_UNKNOWN_KEY"
            })
    void labels_thatDoNotFit_areRefused(String line, Code code) {
        assertThat(faults(line)).extracting(Finding::code).contains(code);
    }

    @Test
    void labels_withSeveralFaults_tellThemAll() {
        assertThat(faults("columns = 4\nlabel-height = \"10 mm\"\nnudge-y = \"9 mm\"").stream()
                        .filter(f -> f.code() == Code.LABEL_SHEET))
                .hasSize(3);
    }
}
