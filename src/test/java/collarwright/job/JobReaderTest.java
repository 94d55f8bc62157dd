package collarwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.collar.Fix;
import collarwright.dome.DomeSettings;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.geometry.Interval;
import collarwright.machining.ProgramUnits;
import collarwright.strut.SizeRule;
import collarwright.strut.TieHole;
import collarwright.testing.Seeds;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import collarwright.tooling.Fit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JobReaderTest {

    private static List<Finding> findings(String... pieces) {
        return Jobs.read(Jobs.with(pieces)).findings();
    }

    @Test
    void read_goodJob_resolvesEveryValue() {
        Job job = Jobs.job();
        assertThat(job.title()).isEqualTo("Pea frame");
        assertThat(job.order()).isEqualTo(new Order(1, 3));
        assertThat(job.dome()).isEqualTo(new DomeSettings(3, 5));
        assertThat(job.size()).isEqualTo(new SizeRule.Radius(1400));
        assertThat(job.strut().stock().od()).isEqualTo(Interval.between(20, 20.2));
        assertThat(job.strut().stock().odMeasured()).isTrue();
        assertThat(job.strut().stock().wallMeasured()).isFalse();
        assertThat(job.strut().tieHole()).contains(new TieHole(4, 9));
        assertThat(job.hub().collar().od()).isEqualTo(Interval.of(110.2));
        assertThat(job.hub().collar().wall()).contains(Interval.between(8.65, 8.85));
        assertThat(job.hub().collar().wallMeasured()).isTrue();
        assertThat(job.hub().width()).isEqualTo(48);
        assertThat(job.hub().ring().name()).isEqualTo("pvc-metric-40x3.0");
        assertThat(job.hub().fix()).isEqualTo(Fix.TIE);
        assertThat(job.hub().endGap()).isEqualTo(2);
        assertThat(job.drilling().fit()).isEqualTo(Fit.REACH);
        assertThat(job.drilling().nearestBand()).isCloseTo(StrictMath.toRadians(0.5), within(1e-15));
        assertThat(job.limits()).isEqualTo(Limits.DEFAULT);
        assertThat(job.shop().machine().name()).isEqualTo("press");
        assertThat(job.shop().programUnits()).isEqualTo(ProgramUnits.MM);
        assertThat(job.shop().cutting().material()).isEqualTo("pvc");
        assertThat(findings()).isEmpty();
    }

    @Test
    void read_inches_bareNumbersAndProgramsAreInInches() {
        Job job = Jobs.job("units = \"mm\"", "units = \"in\"", "\"48 mm\"", "1.875", "\"30 mm\"", "\"1-3/16\"");
        assertThat(job.hub().width()).isEqualTo(47.625);
        assertThat(job.hub().ringWidth()).isEqualTo(30.1625);
        assertThat(job.shop().programUnits()).isEqualTo(ProgramUnits.INCH);
    }

    @Test
    void read_titleOfLettersWithoutLatin_isToldWhatIsShown() {
        assertThat(findings("title = \"Pea frame\"", "title = \"豆棚, hüpf Ωδή\""))
                .containsExactly(Finding.note(
                        Code.JOB_TITLE_LETTERS,
                        findings("title = \"Pea frame\"", "title = \"豆棚\"")
                                .get(0)
                                .where(),
                        "title: Latin, Greek or Cyrillic letters",
                        "\"豆棚, hüpf Ωδή\", which templates and programs show as \"??, hupf Odi\", and papers with"
                                + " boxes where their typeface lacks a letter",
                        "write a name in Latin letters beside it",
                        "or leave it: sizes and holes are the same, and the revision is on everything"));
        assertThat(findings("title = \"Pea frame\"", "title = \"Ήλιος? Ünder Жук\""))
                .isEmpty();
    }

    @Test
    void read_shopLeftOut_isTheDrillPress() {
        Job job = Jobs.job("[shop]\nmachine = \"press\"\n", "");
        assertThat(job.shop().machine().name()).isEqualTo("press");
    }

    @ParameterizedTest
    @CsvSource({
        "3, 5/9, 5",
        "3, 4/9, 4",
        "3, 5/8, 5",
        "3, 3/8, 4",
        "3, 2/3, 6",
        "2, 1/2, 3",
        "4, 1/2, 6",
        "6, 5/9, 10",
        "64, 1/2, 96",
        "5, all, 15",
        "5, 1/1, 15",
        "1, 15/15, 3",
        "3, ' 5 / 9 ', 5",
        "7, 20/21, 20"
    })
    void read_keep_givesRows(int frequency, String keep, int rows) {
        Job job = Jobs.job("frequency = 3", "frequency = " + frequency, "5/9", keep);
        assertThat(job.dome()).isEqualTo(new DomeSettings(frequency, rows));
    }

    @Test
    void read_tiers_givesRows() {
        assertThat(Jobs.job("keep = \"5/9\"", "tiers = 9").dome()).isEqualTo(new DomeSettings(3, 9));
    }

    @ParameterizedTest
    @CsvSource({
        "floor-diameter, FloorDiameter",
        "height, Height",
        "longest-strut, LongestStrut",
        "radius, Radius",
    })
    void read_size_isOneOfFourRules(String key, String rule) {
        Job job = Jobs.job("radius = \"1.40 m\"", key + " = \"4' 6\\\"\"");
        assertThat(job.size().getClass().getSimpleName()).isEqualTo(rule);
        assertThat(job.size().value()).isEqualTo(1371.6);
    }

    @Test
    void read_circumference_isTurnedIntoTheDiameter() {
        // A circle's circumference is π times its diameter (Euclid's book XII and Archimedes; common knowledge).
        Job job = Jobs.job("measured-od = \"110.2 mm\"", "measured-circumference = [\"345 mm\", \"347 mm\"]");
        Interval od = job.hub().collar().od();
        assertThat(od.min() * StrictMath.PI).isCloseTo(345, within(1e-12));
        assertThat(od.nominal() * StrictMath.PI).isCloseTo(346, within(1e-12));
        assertThat(od.max() * StrictMath.PI).isCloseTo(347, within(1e-12));
        assertThat(job.hub().collar().odMeasured()).isTrue();
    }

    @Test
    void read_rims_areSharpUnlessEased() {
        assertThat(Jobs.job("", "").hub().body().rims()).isZero();
        assertThat(Jobs.job("width = \"48 mm\"", "width = \"48 mm\"\nrims = \"0 mm\"")
                        .hub()
                        .body()
                        .rims())
                .isZero();
        assertThat(Jobs.job("width = \"48 mm\"", "width = \"48 mm\"\nrims = \"1/32 in\"")
                        .hub()
                        .body()
                        .rims())
                .isEqualTo(0.79375);
    }

    @Test
    void read_nothingMeasured_isNominal() {
        Job job = Jobs.job("measured-od = \"110.2 mm\"\n", "", "measured-wall = [\"8.65 mm\", \"8.85 mm\"]\n", "");
        assertThat(job.hub().collar().od()).isEqualTo(new Interval(110, 110, 110.3));
        assertThat(job.hub().collar().wall()).contains(Interval.between(8.2, 9.3));
        assertThat(job.hub().collar().odMeasured()).isFalse();
        assertThat(job.hub().collar().wallMeasured()).isFalse();
    }

    @Test
    void read_stockInPlace_hasItsSizes() {
        Job job = Jobs.job(
                "stock = \"pvc-metric-20x1.5\"\n",
                "od = \"7/8 in\"\nlengths = [\"6 m\", \"3 m\"]\nmaterial = \"wood\"\n",
                "measured-od = [\"20.0 mm\", \"20.2 mm\"]\n",
                "",
                "collar = \"pvc-metric-110x8.2\"",
                "collar = { od = \"110 mm\", wall = [\"8 mm\", \"9 mm\"], material = \"steel\" }",
                "ring = \"pvc-metric-40x3.0\"",
                "ring = { stock = \"pvc-metric-40x3.0\", measured-od = \"40.1 mm\" }");
        assertThat(job.strut().stock().od()).isEqualTo(Interval.of(22.225));
        assertThat(job.strut().stock().wall()).isEmpty();
        assertThat(job.strut().stock().lengths()).containsExactly(3000.0, 6000.0);
        assertThat(job.strut().stock().material().name()).isEqualTo("wood");
        assertThat(job.strut().stock().title()).isEqualTo("Wood bar 22.23 mm");
        assertThat(job.strut().stock().name()).isEqualTo("in the job");
        assertThat(job.hub().collar().material().name()).isEqualTo("steel");
        assertThat(job.hub().ring().od()).isEqualTo(Interval.of(40.1));
        assertThat(job.shop().cutting().material()).isEqualTo("steel");
    }

    @Test
    void read_addedCutter_isMeasuredAndReplacesTheRacks() {
        Job job = Jobs.job(
                "rack = [\"metric-twist\"]",
                "rack = \"metric-hole-saws\"\nadd = [ { kind = \"hole-saw\", size = \"44 mm\", as-drilled = \"44.3 mm\","
                        + " spread = \"0.1 mm\" }, { kind = \"twist\", size = \"1-1/2 in\" } ]\nremove = [\"45 mm\", 46]");
        List<Cutter> cutters = job.drilling().cutters();
        Cutter saw =
                cutters.stream().filter(c -> c.id().equals("HS-44")).findFirst().orElseThrow();
        assertThat(saw.asDrilled()).isEqualTo(new Interval(44.3 - 0.1, 44.3, 44.3 + 0.1));
        assertThat(saw.measured()).isTrue();
        assertThat(saw.size()).isEqualTo(44);
        assertThat(saw.rack()).isEqualTo("in the job");
        Cutter drill = cutters.stream()
                .filter(c -> c.id().equals("TW-1-1/2in"))
                .findFirst()
                .orElseThrow();
        assertThat(drill.marked()).isEqualTo("1-1/2 in");
        assertThat(drill.kind()).isEqualTo(CutterKind.TWIST);
        assertThat(drill.measured()).isFalse();
        assertThat(cutters)
                .extracting(Cutter::id)
                .doesNotContain("HS-45", "HS-46")
                .doesNotHaveDuplicates();
        assertThat(cutters)
                .isSortedAccordingTo((a, b) ->
                        Double.compare(a.asDrilled().nominal(), b.asDrilled().nominal()));
    }

    @Test
    void read_limits_areTaken() {
        Job job = Jobs.job("[shop]", """
                [limits]
                web-stop = 0.1
                web-warn = 0.6
                engagement-stop = 0.2
                engagement-warn = 1
                slack-warn = "3 deg"
                nearest-band = 1
                overtravel = "1/16 in"
                working-clearance = "3 mm"
                [shop]""");
        assertThat(job.limits()).isEqualTo(new Limits(0.1, 0.6, 0.2, 1, StrictMath.PI / 60, 1.5875, 3));
        assertThat(job.drilling().nearestBand()).isCloseTo(StrictMath.PI / 180, within(1e-15));
    }

    @Test
    void read_measuredFarFromNominal_warnsAndGoesOn() {
        // A 4 in pipe is 4.500 in thick (ASME B36.10M, Table 1: 114.3 mm); its name measured with a rule is the classic
        // slip.
        JobReading reading = Jobs.read(Jobs.with(
                "collar = \"pvc-metric-110x8.2\"",
                "collar = \"steel-sch40-4in\"",
                "\"110.2 mm\"",
                "\"4 in\"",
                "measured-wall = [\"8.65 mm\", \"8.85 mm\"]\n",
                ""));
        assertThat(reading.job()).isPresent();
        assertThat(reading.findings()).hasSize(1);
        Finding finding = reading.findings().get(0);
        assertThat(finding.level()).isEqualTo(Level.WARN);
        assertThat(finding.code()).isEqualTo(Code.JOB_CONFLICT);
        assertThat(finding.where().text()).isEqualTo("job.toml:16:15");
        assertThat(finding.found()).isEqualTo("101.6 mm (4 in), -11.1 %");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Größe é", "豆の棚", "قفص البازلاء", "स्नातक", "🌱 frame", "a"})
    void read_title_takesAnyScript(String title) {
        assertThat(Jobs.job("Pea frame", title).title()).isEqualTo(title);
    }

    @Test
    void read_title_hasALimit() {
        assertThat(Jobs.job("Pea frame", "豆".repeat(500)).title()).hasSize(500);
        assertThat(findings("Pea frame", "豆".repeat(501)).get(0).found()).isEqualTo("501 characters");
        assertThat(findings("Pea frame", "   ").get(0).code()).isEqualTo(Code.JOB_OUT_OF_RANGE);
    }

    @Test
    void read_byteOrderMarkAndWindowsLines_areNoFault() {
        JobReading reading = Jobs.read("\ufeff" + Jobs.GOOD.replace("\n", "\r\n"));
        assertThat(reading.findings()).isEmpty();
        assertThat(reading.job()).contains(Jobs.job());
    }

    @Test
    void read_tooLargeAFile_isRefused() {
        JobReading reading = JobReader.read("big.toml", new byte[TextFile.MOST_BYTES + 1], Jobs.PROFILES);
        assertThat(reading.findings()).hasSize(1);
        assertThat(reading.findings().get(0).code()).isEqualTo(Code.JOB_FILE_UNREADABLE);
        assertThat(reading.findings().get(0).where().text()).isEqualTo("big.toml");
    }

    @Test
    void read_otherFile_isNotToldLineByLine() {
        List<Finding> found = Jobs.read("x y\n".repeat(10_000)).findings();
        assertThat(found).hasSize(101);
        assertThat(found.get(100).found()).isEqualTo("more than 100 lines that are not");
        assertThat(found.get(100).where().text()).isEqualTo("job.toml:101:3");
    }

    @Test
    void read_thickWall_warns() {
        JobReading reading = Jobs.read(Jobs.with("[\"8.65 mm\", \"8.85 mm\"]", "\"25 mm\""));
        assertThat(reading.job()).isPresent();
        assertThat(reading.findings())
                .extracting(Finding::level, Finding::code)
                .containsOnly(org.assertj.core.groups.Tuple.tuple(Level.WARN, Code.JOB_CONFLICT));
        assertThat(reading.findings().get(0).found()).isEqualTo("25 mm (0.9843 in), unusually thick");
    }

    @Test
    void read_collarTable_mayNameAProfile() {
        Job job = Jobs.job("collar = \"pvc-metric-110x8.2\"", "collar = { stock = \"pvc-metric-110x8.2\" }");
        assertThat(job).isEqualTo(Jobs.job());
    }

    @Test
    void read_fitNearest_isTaken() {
        assertThat(Jobs.job("rack =", "fit = \"nearest\"\nrack =").drilling().fit())
                .isEqualTo(Fit.NEAREST);
    }

    @Test
    void read_otherSizesAreNotThere_areRefusedWithTheNearest() {
        Finding finding = findings("rack =", "remove = [\"26 mm\"]\nrack =").get(0);
        assertThat(finding.code()).isEqualTo(Code.JOB_UNKNOWN_WORD);
        assertThat(finding.hints()).containsExactly("the nearest are 25 mm and 24.75 mm");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "as-drilled = \"40 mm\", spread = \"41 mm\" | drilling.add.spread: less than the as-drilled size",
                "min-rpm = 900, max-rpm = 800 | drilling.add.min-rpm: at most max-rpm",
                "point-angle = 200 | drilling.add.point-angle: an angle from 30° to 179°",
                "depth = 0 | drilling.add.depth: a length above 0, such as 38 mm or 1-1/2 in",
            })
    void read_addedCutterThatCannotBe_isRefused(String keys, String expected) {
        List<Finding> found = findings("rack =", "add = { kind = \"twist\", size = 40, " + keys + " }\nrack =");
        assertThat(found).hasSize(1);
        assertThat(found.get(0).expected()).isEqualTo(expected);
    }

    @Test
    void read_everyCutterRemoved_isRefused() {
        List<Finding> found =
                findings("rack = [\"metric-twist\"]", "add = { kind = \"twist\", size = 40 }\nremove = 40");
        assertThat(found).extracting(Finding::found).containsExactly("none");
    }

    @Test
    void read_deepNesting_isRefusedNotFollowed() {
        JobReading reading = Jobs.read("x = " + "[".repeat(100_000));
        assertThat(reading.job()).isEmpty();
        assertThat(reading.findings()).extracting(Finding::code).containsOnly(Code.JOB_SYNTAX);
    }

    @Test
    void read_linesInAnyOrder_findingsComeInTheOrderOfTheText() {
        List<Finding> found = Jobs.read(
                        "[shop]\nmachine = \"presss\"\n[hub]\nwidth = nan\n[dome]\nkeep = 3\nfrequency = 0\n")
                .findings();
        assertThat(found).isSortedAccordingTo((a, b) -> {
            var left = (collarwright.finding.Where.Text) a.where();
            var right = (collarwright.finding.Where.Text) b.where();
            return Integer.compare(left.line() * 1000 + left.column(), right.line() * 1000 + right.column());
        });
        assertThat(found)
                .extracting(Finding::code)
                .contains(
                        Code.PROFILE_UNKNOWN,
                        Code.JOB_BAD_NUMBER,
                        Code.JOB_WRONG_TYPE,
                        Code.JOB_OUT_OF_RANGE,
                        Code.JOB_KEY_MISSING);
    }

    @Test
    void read_awkwardNumbersEverywhere_neverBreaks() {
        List<String> keys = List.of(
                "48 mm", "30 mm", "1.40 m", "4 mm", "9 mm", "110.2 mm", "20.0 mm", "20.2 mm", "8.65 mm", "8.85 mm");
        for (double number : Seeds.AWKWARD) {
            String shown = Double.isNaN(number)
                    ? "nan"
                    : Double.isInfinite(number) ? (number > 0 ? "inf" : "-inf") : number + "";
            for (String key : keys) {
                JobReading reading = Jobs.read(Jobs.with("\"" + key + "\"", shown));
                boolean stopped = reading.findings().stream().anyMatch(f -> f.level() == Level.STOP);
                assertThat(reading.job().isPresent()).isEqualTo(!stopped);
            }
        }
    }

    @Test
    void read_brokenAnywhere_findsOrReads_neverBreaks() {
        List<String> signs =
                List.of("\"", "[", "]", "{", "}", "=", "#", "\n", ",", "'", "é", "\\", "9", "-", ".", "nan", "\u0000");
        Seeds.each(400, draw -> {
            StringBuilder text = new StringBuilder(Jobs.GOOD);
            for (int i = draw.whole(1, 3); i > 0; i--) {
                int from = draw.whole(0, text.length() - 1);
                int to = StrictMath.min(text.length(), from + draw.whole(0, 12));
                text.replace(from, to, draw.oneOf(signs));
            }
            JobReading reading = Jobs.read(text.toString());
            boolean stopped = reading.findings().stream().anyMatch(f -> f.level() == Level.STOP);
            assertThat(reading.job().isPresent()).isEqualTo(!stopped);
        });
    }
}
