package collarwright.machining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.tooling.Cutter;
import collarwright.tooling.Pattern;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class RotaryJobTest {

    private static final Pattern SIX = RotarySamples.sixWay(RotarySamples.HOLE_SAW_44);

    private static RotaryPlan plan(RotarySettings settings, Pattern... patterns) {
        List<PatternRun> runs = new ArrayList<>();
        for (Pattern pattern : patterns) {
            runs.add(new PatternRun(pattern, 14));
        }
        return RotaryJob.plan(settings, runs);
    }

    private static ProgramFile file(RotaryPlan plan, String name) {
        return plan.programs().stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void plan_twoCutters_namesFilesInTheirOrder() {
        Pattern two = new Pattern(
                "CB",
                1,
                List.of(
                        RotarySamples.hole(1, 0, 0, RotarySamples.HOLE_SAW_44),
                        RotarySamples.hole(2, 120, 0, RotarySamples.TWIST_1_1_8)),
                "FFFFFFFF");

        assertThat(plan(RotarySamples.metric(false), two).programs())
                .extracting(ProgramFile::name)
                .containsExactly(
                        "LA-1-mark.ngc",
                        "LA-1-mark-air.ngc",
                        "LA-2-TW-1-1_8in.ngc",
                        "LA-2-TW-1-1_8in-air.ngc",
                        "LA-3-HS-44.ngc",
                        "LA-3-HS-44-air.ngc",
                        "rotary-direction-test.ngc");
    }

    @Test
    void names_ofLongAndOddCutters_areShortAndSafe() {
        Cutter c = RotarySamples.TWIST_1_1_8;
        Cutter odd = new Cutter(
                "Größe: 1*2/3 " + "x".repeat(80),
                c.kind(),
                c.marked(),
                c.size(),
                c.asDrilled(),
                true,
                c.lead(),
                120,
                1,
                900,
                "r");

        assertThat(plan(RotarySamples.metric(false), RotarySamples.pattern("CA", odd, 0, 90))
                        .programs())
                .allSatisfy(
                        p -> assertThat(p.name()).hasSizeLessThanOrEqualTo(40).matches("[A-Za-z0-9._-]+"))
                .extracting(ProgramFile::name)
                .doesNotHaveDuplicates();
    }

    private static RotarySettings press() {
        return RotarySamples.on(RotarySamples.metric(false), RotarySamples.press(200, 3000));
    }

    @Test
    void press_givesNoPrograms() {
        assertThat(plan(press(), SIX)).isEqualTo(new RotaryPlan(List.of(), List.of(), List.of()));
        assertThat(RotaryJob.plan(RotarySamples.metric(false), List.of()))
                .isEqualTo(new RotaryPlan(List.of(), List.of(), List.of()));
    }

    // Wall and out-of-round alone need more than 5 mm of cup; a pilot of 130 mm below the edge of a saw that comes
    // through near Z 71 ends near Z -59, one of 160 mm near Z -89, beyond the far wall at -74.65.
    @Test
    void press_cuttersThatCannotMakeTheirHoles_areStopsThere() {
        Cutter c = RotarySamples.HOLE_SAW_44;
        Cutter shallow = new Cutter("HS-A", c.kind(), "44 mm", 44, c.asDrilled(), false, c.lead(), 5, 95, 2100, "saws");
        Cutter longPilot = new Cutter("HS-B", c.kind(), "44 mm", 44, c.asDrilled(), false, 160, 38, 95, 2100, "saws");
        Cutter pilot = new Cutter("HS-C", c.kind(), "44 mm", 44, c.asDrilled(), false, 130, 38, 95, 2100, "saws");

        RotaryPlan plan = plan(
                press(),
                RotarySamples.pattern("CA", shallow, 0, 90),
                RotarySamples.pattern("CB", longPilot, 0, 90),
                RotarySamples.pattern("CC", pilot, 0, 90));

        assertThat(plan.findings())
                .extracting(Finding::level, Finding::code, f -> f.where().text())
                .containsExactly(
                        tuple(Level.STOP, Code.CUTTER_REACH, "cutter HS-A"),
                        tuple(Level.STOP, Code.FAR_WALL, "cutter HS-B"));
        assertThat(plan.programs()).isEmpty();
    }

    @Test
    void press_spindleOutOfRange_isAWarningAndNoStop() {
        RotarySettings fast = RotarySamples.on(RotarySamples.metric(false), RotarySamples.press(600, 3000));

        assertThat(plan(fast, SIX).findings())
                .extracting(Finding::level, Finding::code)
                .containsExactly(tuple(Level.WARN, Code.SPINDLE_RANGE));
    }

    // The convention of the two dimples, worked by hand: collar 80 wide, TOP toward the chuck, hole 1 of 44.5 at most:
    // web 40 - 22.25 = 17.75, half of it more than 5, so 5 from the TOP edge at X 20; 6 mm of arc on R 80.05 is 4.294
    // degrees; depth 1 and half the out-of-round.
    @Test
    void marks_lieBesideEachOtherAtTheTopEdge() {
        List<Operation> marks = file(plan(RotarySamples.metric(false), SIX), "LA-1-mark.ngc")
                .task()
                .orElseThrow()
                .operations();

        assertThat(marks).hasSize(14);
        assertThat(marks.get(0))
                .isEqualTo(new Operation.Mark(
                        new Operation.Place(1, 25, 0, 0),
                        Operation.Meaning.ZERO_LINE,
                        MarkTool.standard().cutter(),
                        78.75));
        assertThat(marks.get(13))
                .isEqualTo(new Operation.Mark(
                        new Operation.Place(1, 25, 6 / 80.05, 4.294),
                        Operation.Meaning.TOP,
                        MarkTool.standard().cutter(),
                        78.75));
    }

    @Test
    void marks_inANarrowWeb_takeHalfOfIt_andFollowTop() {
        Pattern high =
                new Pattern("CA", 1, List.of(RotarySamples.hole(1, 0, 15, RotarySamples.HOLE_SAW_44)), "FFFFFFFF");
        RotarySettings freeEnd = RotarySamples.on(
                RotarySamples.metric(false), RotarySamples.turned(RotarySamples.machine(false), true, false));

        List<Operation> marks =
                file(plan(freeEnd, high), "LA-1-mark.ngc").task().orElseThrow().operations();

        // Web 40 - 15 - 22.25 = 2.75; TOP edge of collar 1 at X 20 + 80.
        assertThat(marks.get(0).place().x()).isEqualTo(98.625);
        assertThat(marks.get(marks.size() - 1).place().angleDegrees()).isEqualTo(355.706);
        assertThat(file(plan(freeEnd, high), "LA-2-HS-44.ngc")
                        .task()
                        .orElseThrow()
                        .operations()
                        .get(0)
                        .place()
                        .x())
                .isEqualTo(75);
    }

    @Test
    void mark_withoutAWeb_isAStop() {
        Pattern high =
                new Pattern("CA", 1, List.of(RotarySamples.hole(1, 0, 20, RotarySamples.HOLE_SAW_44)), "FFFFFFFF");

        assertThat(plan(RotarySamples.metric(false), high).findings())
                .filteredOn(f -> f.level() == Level.STOP)
                .singleElement()
                .extracting(Finding::code, f -> f.where().text())
                .containsExactly(Code.WEB_TO_EDGE, "pattern CA / hole 1");
    }

    @Test
    void markTool_isTheSmallestSuitableTwistDrill() {
        Cutter six = RotarySamples.twist(6);
        Cutter four = RotarySamples.twist(4);
        Cutter one = RotarySamples.twist(1);

        assertThat(MarkTool.from(List.of(one, six, four, RotarySamples.HOLE_SAW_44))
                        .cutter())
                .isEqualTo(four);
        assertThat(MarkTool.from(List.of(one, RotarySamples.HOLE_SAW_44))).isEqualTo(MarkTool.standard());
    }

    @Test
    void everyFault_isFoundAtOnce_andNoFileIsMade() {
        Machine m = RotarySamples.machine(false);
        Machine router = RotarySamples.with(m, new Machine.Spindle(8000, 24000, 3));
        Machine tiny = RotarySamples.with(router, new Machine.Travel(-10, 30, 60, 90, 3000, 1500, 400, 10));
        Cutter shallow = new Cutter(
                "HS-60",
                RotarySamples.HOLE_SAW_44.kind(),
                "60 mm",
                60,
                RotarySamples.HOLE_SAW_44.asDrilled(),
                false,
                12,
                5,
                60,
                2000,
                "r");
        Workpiece pipe = new Workpiece("pipe", RotarySamples.pvc160().body(), 0.6, true, List.of(150.0));
        RotarySettings settings =
                RotarySamples.settings(tiny, ProgramUnits.MM, RotarySamples.cutting("steel", 27), pipe);

        RotaryPlan plan = plan(settings, SIX, RotarySamples.pattern("CB", shallow, 0, 90));

        assertThat(plan.programs()).isEmpty();
        assertThat(plan.setups()).isEmpty();
        Set<Code> codes = new TreeSet<>();
        plan.findings().stream().filter(f -> f.level() == Level.STOP).forEach(f -> codes.add(f.code()));
        assertThat(codes)
                .containsExactly(Code.SPINDLE_RANGE, Code.CUTTER_REACH, Code.MACHINE_TRAVEL, Code.STICK_TOO_SHORT);
        assertThat(plan.findings())
                .doesNotHaveDuplicates()
                .allSatisfy(f -> assertThat(f.hints()).isNotEmpty());
    }

    @Test
    void wordsTheProfileForbids_stopTheExport() {
        Machine m = RotarySamples.machine(true);
        Set<String> words = new TreeSet<>(m.post().words());
        words.removeAll(List.of("G83", "Q", "M5"));
        Machine.Post post = new Machine.Post(true, words, 3, 3, 70, "M2", "ngc");

        RotaryPlan plan = plan(RotarySamples.on(RotarySamples.metric(true), RotarySamples.with(m, post)), SIX);

        assertThat(plan.programs()).isEmpty();
        assertThat(plan.findings())
                .filteredOn(f -> f.level() == Level.STOP)
                .first()
                .isEqualTo(Finding.stop(
                        Code.MACHINE_UNABLE,
                        new Where.Part("machine mill-cycles"),
                        "only words that the profile allows",
                        "the program needs M5",
                        "add them to the profile's words, if the machine knows them",
                        "or turn its cycles off"));
    }

    @Test
    void lineTooLongForTheProfile_stopsTheExport() {
        Machine m = RotarySamples.machine(true);
        Machine.Post post = new Machine.Post(true, m.post().words(), 3, 3, 40, "M2", "ngc");

        assertThat(plan(RotarySamples.on(RotarySamples.metric(true), RotarySamples.with(m, post)), SIX)
                        .findings())
                .filteredOn(f -> f.level() == Level.STOP)
                .extracting(Finding::code)
                .containsOnly(Code.MACHINE_UNABLE);
    }

    @Test
    void airCutAboveTheTravel_isLeftOutWithAWarning() {
        Machine low = RotarySamples.with(
                RotarySamples.machine(false), new Machine.Travel(-10, 1000, -60, 140, 3000, 1500, 400, 10));

        RotaryPlan plan = plan(RotarySamples.on(RotarySamples.metric(false), low), SIX);

        assertThat(plan.programs())
                .extracting(ProgramFile::name)
                .contains("LA-2-HS-44.ngc")
                .doesNotContain("LA-2-HS-44-air.ngc");
        assertThat(plan.findings())
                .filteredOn(f -> f.level() == Level.WARN)
                .extracting(f -> f.where().text())
                .containsExactly("program LA-2-HS-44.ngc");
        assertThat(plan.setups().get(0).steps().get(1).airFile()).isEmpty();
    }

    @Test
    void layout_numbersPercentAndCrlf_areByProfile() {
        Machine m = RotarySamples.machine(false);
        Machine.Post post = new Machine.Post(
                false,
                new TreeSet<>(List.of(
                        "G0", "G1", "G4", "G17", "G21", "G90", "G94", "M0", "M3", "M5", "M30", "X", "Y", "Z", "A", "F",
                        "S", "P")),
                3,
                3,
                70,
                "M30",
                "nc",
                new Machine.Layout(10, true, true, true));
        String text = file(
                        plan(RotarySamples.on(RotarySamples.metric(false), RotarySamples.with(m, post)), SIX),
                        "LA-1-mark.nc")
                .text();

        assertThat(text)
                .startsWith("%\r\n(JOB")
                .contains("\r\nN10 G21\r\nN20 G90 G94 G17\r\n")
                .contains(" G4 P3000\r\n")
                .endsWith(" M30\r\n%\r\n");
    }

    @Test
    void sameJob_sameBytes_underAnyLocaleAndZone() {
        RotaryPlan first = plan(RotarySamples.inch(true), RotarySamples.sixWay(RotarySamples.TWIST_1_1_8));
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            for (String tag : List.of("de-DE", "tr-TR", "ar-EG", "hi-IN-u-nu-deva")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kolkata"));
                assertThat(plan(RotarySamples.inch(true), RotarySamples.sixWay(RotarySamples.TWIST_1_1_8)))
                        .isEqualTo(first);
            }
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void setup_saysWhatTheOperatorNeeds() {
        SetupSheet setup = plan(RotarySamples.metric(false), SIX).setups().get(0);

        assertThat(setup.load().id()).isEqualTo("LA");
        assertThat(setup.load().laid()).isEqualTo("1-7 CA");
        assertThat(setup.load().runs()).isEqualTo(2);
        assertThat(setup.stick()).isEqualTo(new SetupSheet.Stick(708, 100, 608, 20, 60, 83));
        assertThat(setup.zero().z()).contains("set Z to 80.05 mm");
        assertThat(setup.zero().top()).isEqualTo("TOP faces the chuck");
        assertThat(setup.notes().get(0)).contains("rotary-direction-test.ngc");
        assertThat(setup.steps()).extracting(SetupSheet.Step::operations).containsExactly(14, 42);
        assertThat(setup.inAll().seconds())
                .isEqualTo(2
                        * (setup.steps().get(0).effort().seconds()
                                + setup.steps().get(1).effort().seconds()));
    }

    @Test
    void plan_withAStopBesidePrograms_cannotBe() {
        RotaryPlan good = plan(RotarySamples.metric(false), SIX);
        Finding stop = Finding.stop(Code.FAR_WALL, new Where.Part("x"), "a", "b", "c");

        assertThatThrownBy(() -> new RotaryPlan(good.programs(), good.setups(), List.of(stop)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void machine_figuresThatCannotBe_areRefused() {
        Machine m = RotarySamples.machine(false);
        assertThatThrownBy(() -> RotarySamples.with(m, new Machine.Spindle(0, 100, 1)))
                .hasMessageContaining("spindle speeds");
        assertThatThrownBy(() -> RotarySamples.press(100, 50)).hasMessageContaining("spindle speeds");
        assertThatThrownBy(() -> RotarySamples.with(m, new Machine.Travel(0, Double.NaN, 0, 1, 1, 1, 1, 1)))
                .hasMessageContaining("travel");
        assertThatThrownBy(() -> RotarySamples.with(m, new Machine.Travel(0, 1, 0, 1, 1, 1, 1, 0)))
                .hasMessageContaining("clearance");
        assertThatThrownBy(() -> RotarySamples.with(m, new Machine.Rotary(true, true, 1, 1, 90, 0, 0, 0, 0, 0, 1)))
                .hasMessageContaining("take-up");
        assertThatThrownBy(() -> RotarySamples.with(m, new Machine.Rotary(true, true, 1, 1, 1, 0, -1, 0, 0, 0, 1)))
                .hasMessageContaining("lengths at the chuck");
        assertThatThrownBy(() -> RotarySamples.with(m, new Machine.Rotary(true, true, 1, 1, 1, 9, 0, 0, 0, 0, 8)))
                .hasMessageContaining("longest stick");
        assertThatThrownBy(() -> RotarySamples.with(m, new Machine.Post(false, Set.of(), 2, 3, 70, "M2", "ngc")))
                .hasMessageContaining("decimals");
        assertThatThrownBy(() -> RotarySamples.with(m, new Machine.Post(false, Set.of(), 3, 3, 30, "M2", "ngc")))
                .hasMessageContaining("characters");
        assertThatThrownBy(() -> RotarySamples.with(m, new Machine.Post(false, Set.of(), 3, 3, 70, "M6", "ngc")))
                .hasMessageContaining("M2 or M30");
        assertThatThrownBy(() -> new Machine.Layout(-1, false, false, false)).hasMessageContaining("step");
    }
}
