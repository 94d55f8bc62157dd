package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.machining.Machine;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramFile;
import collarwright.machining.ProgramFile.Purpose;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotaryPlan;
import collarwright.machining.RotarySamples;
import collarwright.machining.RotarySettings;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every rule of a safe program, broken on purpose; each broken program must be caught for the reason it was broken. */
class BrokenProgramTest {

    private static final PatternRun TWO_COLLARS = new PatternRun(RotarySamples.sixWay(RotarySamples.HOLE_SAW_44), 2);

    enum Text {
        PLAIN(false, Purpose.CUT, "LA-2-HS-44.ngc"),
        CYCLES(true, Purpose.CUT, "LA-2-HS-44.ngc"),
        MARK(false, Purpose.CUT, "LA-1-mark.ngc"),
        AIR(false, Purpose.AIR_CUT, "LA-2-HS-44-air.ngc"),
        TEST(false, Purpose.DIRECTION_TEST, "rotary-direction-test.ngc");

        private final boolean cycles;
        private final Purpose purpose;
        private final String name;

        Text(boolean cycles, Purpose purpose, String name) {
            this.cycles = cycles;
            this.purpose = purpose;
            this.name = name;
        }

        RotarySettings settings() {
            return RotarySamples.metric(cycles);
        }

        ProgramFile file() {
            RotaryPlan plan = RotaryJob.plan(settings(), List.of(TWO_COLLARS));
            return plan.programs().stream()
                    .filter(p -> p.name().equals(name) && p.purpose() == purpose)
                    .findFirst()
                    .orElseThrow();
        }
    }

    private static ProgramFile with(ProgramFile file, String text) {
        return new ProgramFile(file.name(), file.purpose(), file.task(), file.lift(), file.effort(), text);
    }

    private static Arguments broken(String name, Text text, UnaryOperator<String> breaking, String expected) {
        return Arguments.of(name, text, breaking, expected);
    }

    private static Arguments swap(String name, Text text, String from, String to, String expected) {
        return broken(name, text, t -> t.replaceFirst(java.util.regex.Pattern.quote(from), quoted(to)), expected);
    }

    private static String quoted(String to) {
        return java.util.regex.Matcher.quoteReplacement(to);
    }

    static Stream<Arguments> programs() {
        return Stream.of(texts(), words(), spindle(), motions(), turns(), holes(), cycles(), others())
                .flatMap(s -> s);
    }

    private static Stream<Arguments> texts() {
        return Stream.of(
                swap(
                        "a line too long",
                        Text.PLAIN,
                        "(REVISION",
                        "(" + "X".repeat(69) + ")\n(REVISION",
                        "70 characters"),
                swap("an accent", Text.PLAIN, "Bee", "Bée", "plain letters"),
                broken("a byte order mark", Text.PLAIN, t -> "\uFEFF" + t, "plain letters"),
                swap("a tab", Text.PLAIN, "G0 Y0.000", "G0\tY0.000", "plain letters"),
                swap("nested brackets", Text.PLAIN, "(REVISION", "(a (b) c)\n(REVISION", "one comment"),
                swap("two comments", Text.PLAIN, "(REVISION", "(a) (b)\n(REVISION", "one comment"),
                swap("an open bracket", Text.PLAIN, "(REVISION", "(a\n(REVISION", "one comment"),
                swap(
                        "a realtime sign in a comment",
                        Text.PLAIN,
                        "(REVISION",
                        "(ok?)\n(REVISION",
                        "no sign in a comment"),
                swap("a message comment", Text.PLAIN, "(REVISION", "(MSG,hello)\n(REVISION", "no comment that"),
                swap("a blank line", Text.PLAIN, "G0 Y0.000", "\nG0 Y0.000", "no blank line"),
                broken("no line end at the end", Text.PLAIN, String::stripTrailing, "a line end"),
                broken("CR LF", Text.PLAIN, t -> t.replace("\n", "\r\n"), "LF at the end"),
                broken("percent signs", Text.PLAIN, t -> "%\n" + t + "%\n", "no % sign"),
                swap("N numbers", Text.PLAIN, "G0 Y0.000", "N10 G0 Y0.000", "N numbers only"),
                swap("small letters", Text.PLAIN, "G0 Y0.000", "g0 y0.000", "capital letters"),
                swap("two blanks", Text.PLAIN, "G0 Y0.000", "G0  Y0.000", "capital letters"),
                swap("no digit before the point", Text.PLAIN, "Y0.000", "Y.000", "Y with a digit"),
                swap("no digit after the point", Text.PLAIN, "Y0.000", "Y0.", "Y with a digit"),
                swap("no point", Text.PLAIN, "Y0.000", "Y0", "Y with a digit"),
                swap("an exponent", Text.PLAIN, "Y0.000", "Y0.0e0", "Y with a digit"),
                swap("minus zero", Text.PLAIN, "Y0.000", "Y-0.000", "Y without minus zero"),
                swap("a plus sign", Text.PLAIN, "Y0.000", "Y+0.000", "Y with a digit"),
                swap("a decimal comma", Text.PLAIN, "Y0.000", "Y0,000", "Y with a digit"),
                swap("a fraction of a G word", Text.PLAIN, "G0 Y0.000", "G0.0 Y0.000", "G with a whole"),
                swap("two signs", Text.PLAIN, "X60.000", "X--60.000", "letters with a number"),
                swap("a variable", Text.PLAIN, "X60.000", "X#100", "letters with a number"));
    }

    private static Stream<Arguments> words() {
        return Stream.of(
                swap("units after other words", Text.PLAIN, "G21\nG90 G94 G17", "G90 G94 G17\nG21", "G21 as the first"),
                swap("the wrong unit", Text.PLAIN, "G21", "G20", "G21 as the first"),
                swap("no unit", Text.PLAIN, "G21\n", "", "G20 or G21 before"),
                swap("a second unit", Text.PLAIN, "G0 Y0.000", "G21\nG0 Y0.000", "one unit"),
                swap("no G90", Text.PLAIN, "G90 G94 G17", "G94 G17", "G90 before"),
                swap("no G94", Text.PLAIN, "G90 G94 G17", "G90 G17", "G94 before"),
                swap("no G17", Text.PLAIN, "G90 G94 G17", "G90 G94", "G17 before"),
                swap("incremental", Text.PLAIN, "G90 G94 G17", "G91 G94 G17", "only words"),
                swap("coolant", Text.PLAIN, "M5", "M8\nM5", "only words"),
                swap("a tool change", Text.PLAIN, "S434 M3", "T1 M6\nS434 M3", "only words"),
                swap("tool length", Text.PLAIN, "S434 M3", "G43 H1\nS434 M3", "only words"),
                swap("home", Text.PLAIN, "M5", "G28\nM5", "only words"),
                swap("machine coordinates", Text.PLAIN, "M5", "G53 G0 Z0.000\nM5", "only words"),
                swap("an arc", Text.PLAIN, "M5", "G2 X1.000 F1.0\nM5", "only words"),
                swap(
                        "a cycle on a plain machine",
                        Text.PLAIN,
                        "M5",
                        "G81 X1.000 Z1.000 R2.000 F1.0\nG80\nM5",
                        "no drilling"),
                swap("no end", Text.PLAIN, "M2\n", "", "M2 at the end"),
                swap("another end", Text.PLAIN, "M2\n", "M30\n", "M2 at the end"),
                swap("words after the end", Text.PLAIN, "M2\n", "M2\nG0 X0.000\n", "nothing after"),
                swap("feed 0", Text.PLAIN, "F43.4", "F0.0", "F above 0"),
                swap("motion without a motion word", Text.PLAIN, "G0 Z117.650", "Z117.650", "G0, G1 or a cycle"));
    }

    private static Stream<Arguments> spindle() {
        return Stream.of(
                swap("never started", Text.PLAIN, "S434 M3\n", "", "the spindle running"),
                swap("started without a speed", Text.PLAIN, "S434 M3", "M3", "S with a speed"),
                swap("another speed", Text.PLAIN, "S434", "S600", "434 rpm as planned"),
                swap("too fast for the spindle", Text.PLAIN, "S434", "S9000", "S between"),
                swap("no dwell", Text.PLAIN, "G4 P3.00\n", "", "a dwell after"),
                swap("a short dwell", Text.PLAIN, "G4 P3.00", "G4 P0.30", "a dwell after"),
                swap("stopped before a cut", Text.PLAIN, "G4 P3.00", "G4 P3.00\nM5", "the spindle running"),
                swap("two dwells", Text.PLAIN, "G4 P3.00", "G4 P3.00\nG4 P3.00", "one dwell after"),
                swap(
                        "started before X",
                        Text.PLAIN,
                        "G0 X60.000\nS434 M3",
                        "S434 M3\nG0 X60.000",
                        "the spindle started over"),
                swap(
                        "started at another place",
                        Text.PLAIN,
                        "G0 X60.000\nS434 M3\nG4 P3.00",
                        "G0 X61.000\nS434 M3\nG4 P3.00\nG0 X60.000",
                        "the spindle started over"),
                swap("left running", Text.PLAIN, "M5\nM2", "M2", "the spindle off"));
    }

    private static Stream<Arguments> motions() {
        return Stream.of(
                swap("Y before Z", Text.PLAIN, "G0 Z117.650\nG0 Y0.000", "G0 Y0.000\nG0 Z117.650", "first motions"),
                swap("X before A", Text.PLAIN, "G0 A-2.000", "G0 X60.000\nG0 A-2.000", "first motions"),
                swap("no Y", Text.PLAIN, "G0 Y0.000\n", "", "first motions"),
                swap("Z up not far enough", Text.PLAIN, "G0 Z117.650", "G0 Z100.000", "first of all Z up"),
                swap("off the axis", Text.PLAIN, "G0 Y0.000", "G0 Y1.000", "Y0 over the axis"),
                swap("two axes in a rapid", Text.PLAIN, "G0 X60.000", "G0 X60.000 A0.000", "one axis"),
                swap("Z and X together", Text.PLAIN, "G0 X143.000", "G0 X143.000 Z117.650", "one axis"),
                swap("a cut along X", Text.PLAIN, "G0 X143.000", "G1 X143.000 F43.4", "cuts along Z only"),
                swap("turning too low", Text.PLAIN, "G0 A58.283", "G0 Z110.000\nG0 A58.283", "the pipe turns only"),
                swap("turning in the hole", Text.PLAIN, "G0 A58.283", "G1 Z70.000 F43.4\nG0 A58.283", "the pipe turns"),
                swap("travel too low", Text.PLAIN, "G0 X143.000", "G0 Z100.000\nG0 X143.000", "X and Y move only"),
                swap("beyond X", Text.PLAIN, "G0 X143.000", "G0 X1430.000", "X between"),
                swap("below X", Text.PLAIN, "G0 X143.000", "G0 X-11.000\nG0 X143.000", "X between"),
                swap("beyond Z", Text.PLAIN, "G0 X143.000", "G0 Z401.000\nG0 X143.000", "Z between"),
                swap("below Z", Text.PLAIN, "Z58.257", "Z-61.000", "Z between"),
                swap("too fast a feed", Text.PLAIN, "F43.4", "F1500.1", "F up to"),
                swap("over the jaws", Text.PLAIN, "G0 X60.000", "G0 X10.000", "nothing below"),
                broken(
                        "no retract at the end",
                        Text.PLAIN,
                        t -> t.replaceFirst("G0 Z117.650\nG0 Z117.650\nM5", "M5"),
                        "at the end Z up"));
    }

    private static Stream<Arguments> turns() {
        return Stream.of(
                swap("A 360", Text.PLAIN, "G0 A58.283", "G0 A360.000", "A from 0"),
                swap("negative A", Text.PLAIN, "G0 A58.283", "G0 A-301.717", "A from 0"),
                swap("A falling", Text.PLAIN, "G0 A180.000", "G0 A100.000", "A rising"),
                swap("no approach", Text.PLAIN, "G0 A-2.000\n", "", "an approach"),
                swap("a short approach", Text.PLAIN, "G0 A-2.000", "G0 A-1.000", "an approach"),
                swap(
                        "X before A",
                        Text.PLAIN,
                        "G0 A0.000\nG0 X60.000",
                        "G0 X60.000\nG0 A0.000",
                        "A turned to the first hole"),
                swap("too far below", Text.PLAIN, "G0 A-2.000", "G0 A-20.000", "A from 0"),
                swap("a hole a little off", Text.PLAIN, "G0 A58.283", "G0 A58.286", "collar 2, hole 2 at azimuth"),
                broken(
                        "mirrored",
                        Text.PLAIN,
                        t -> t.replace("A58.283", "A60.000"),
                        "collar 2, hole 2 at azimuth 58.283"));
    }

    private static Stream<Arguments> holes() {
        String last = "G0 Z66.640\nG1 Z58.257 F43.4\n";
        return Stream.of(
                swap("a hole left out", Text.PLAIN, "G0 X143.000\n", "M2\nG0 X143.000\n", "12 holes or dimples"),
                swap("another X", Text.PLAIN, "X143.000", "X143.010", "collar 2, hole 1 at X"),
                swap("too shallow", Text.PLAIN, "Z58.257", "Z58.300", "collar 1, hole 1 to Z"),
                swap("not through", Text.PLAIN, "Z58.257", "Z60.000", "the full diameter through"),
                swap("into the far wall", Text.PLAIN, "Z58.257", "Z-75.000", "the cutter off the far wall"),
                swap("a peck left out", Text.PLAIN, last, "", "collar 1, hole 1 to Z"),
                swap("pecks too deep", Text.PLAIN, "Z66.386", "Z60.386", "pecks up to"),
                swap("a rapid into the wall", Text.PLAIN, "G1 Z74.518 F43.4", "G0 Z74.518", "a rapid ends above"),
                swap("a rapid to the last bottom", Text.PLAIN, "G0 Z66.640", "G0 Z66.386", "a rapid ends above"),
                swap("a rapid below the last bottom", Text.PLAIN, "G0 Z66.640", "G0 Z60.000", "a rapid ends above"),
                swap("a last peck as a rapid", Text.PLAIN, "G1 Z58.257 F43.4", "G0 Z58.257", "a rapid ends above"),
                swap("a cut from the clear height", Text.PLAIN, "G0 Z82.650\nG1", "G1", "the first cut of a hole from"),
                swap("a long feed through the air", Text.PLAIN, "G0 Z66.640\n", "", "a cut that starts at Z"),
                swap(
                        "a peck too many",
                        Text.PLAIN,
                        "G1 Z74.518 F43.4",
                        "G1 Z78.518 F43.4\nG0 Z82.650\nG0 Z78.772\nG1 Z76.518 F43.4\nG0 Z82.650\nG0 Z76.772\nG1 Z74.518 F43.4",
                        "a hole in 3 pecks"),
                swap("R below the crown", Text.PLAIN, "G0 Z82.650", "G0 Z80.600", "a rapid ends above"),
                swap("no way out between pecks", Text.PLAIN, "G0 Z82.650\nG0 Z74.772", "G0 Z74.772", "the cutter out"),
                swap("a cut upward", Text.PLAIN, last, last + "G1 Z70.000 F43.4\n", "every cut goes deeper"),
                swap("no feed on the first cut", Text.PLAIN, "G1 Z74.518 F43.4", "G1 Z74.518", "F on the first cut"),
                swap("another feed", Text.PLAIN, "F43.4", "F143.4", "feed 43.400 mm a minute"),
                swap("a dimple through the wall", Text.MARK, "Z78.750", "Z74.000", "a dimple in the wall"),
                swap("a dimple in the air", Text.MARK, "Z78.750", "Z80.100", "a dimple in the wall"));
    }

    private static Stream<Arguments> cycles() {
        String x = "G98 G83 X60.000 Y0.000 Z58.257 R82.650 Q8.132 F43.4";
        return Stream.of(
                swap("G99", Text.CYCLES, "G98", "G99", "a cycle with all its words: G98"),
                swap("no X", Text.CYCLES, x, x.replace("X60.000 ", ""), "a cycle with all its words: X"),
                swap("no Y", Text.CYCLES, x, x.replace("Y0.000 ", ""), "a cycle with all its words: Y"),
                swap("no Z", Text.CYCLES, x, x.replace("Z58.257 ", ""), "a cycle with all its words: Z"),
                swap("no R", Text.CYCLES, x, x.replace("R82.650 ", ""), "a cycle with all its words: R"),
                swap("no Q", Text.CYCLES, x, x.replace("Q8.132 ", ""), "a cycle with all its words: Q"),
                swap("no F", Text.CYCLES, x, x.replace(" F43.4", ""), "a cycle with all its words: F"),
                swap("R below the crown", Text.CYCLES, "R82.650", "R80.500", "a rapid ends above"),
                swap("A in a cycle", Text.CYCLES, x, x + " A0.000", "no turning in a cycle"),
                swap("no G80 before turning", Text.CYCLES, "G80\n", "", "G80 before anything"),
                swap("a bare X after turning", Text.CYCLES, x + "\n", x + "\nX70.000\n", "G80 before anything"),
                swap("another peck", Text.CYCLES, "Q8.132", "Q12.200", "pecks up to"),
                swap("another depth", Text.CYCLES, "Z58.257", "Z58.260", "collar 1, hole 1 to Z"),
                swap(
                        "G81 in place of G83",
                        Text.CYCLES,
                        x,
                        x.replace("G83", "G81").replace("Q8.132 ", ""),
                        "pecks up to"),
                swap("G73 in place of G83", Text.CYCLES, "G83", "G73", "the cutter out of the hole"),
                broken(
                        "no G80 at the end",
                        Text.CYCLES,
                        t -> t.replaceFirst("G80\nG0 Z117.650\nM5\nM2", "M2"),
                        "G80 before"));
    }

    private static Stream<Arguments> others() {
        return Stream.of(
                broken(
                        "an air cut as deep as the program",
                        Text.AIR,
                        t -> Text.PLAIN.file().text(),
                        "an air cut at Z"),
                swap("an air cut that dips", Text.AIR, "G0 X143.000", "G0 Z90.000\nG0 X143.000", "an air cut at Z"),
                swap("a test that turns the other way", Text.TEST, "A30.000", "A-30.000", "Z up, A0, stop"),
                swap("a test that does not stop", Text.TEST, "M0\n", "", "Z up, A0, stop"),
                swap("a test that turns too low", Text.TEST, "G0 Z117.650", "G0 Z90.000", "Z 105.650 mm or higher"),
                swap("a test with the spindle on", Text.TEST, "G0 A30.000", "S434 M3\nG0 A30.000", "a test that moves"),
                swap("a test that travels", Text.TEST, "G0 A30.000", "G0 X0.000\nG0 A30.000", "a test that moves"),
                broken("an empty text", Text.PLAIN, t -> "", "G21 as the first word"),
                broken("half a program", Text.PLAIN, t -> t.substring(0, t.length() / 2), "M2 at the end"));
    }

    @ParameterizedTest(name = "{1}: {0}")
    @MethodSource("programs")
    void brokenProgram_isCaughtForItsReason(String name, Text text, UnaryOperator<String> breaking, String expected) {
        ProgramFile good = text.file();
        RotarySettings settings = text.settings();
        assertThat(Rehearsal.rehearse(good, settings)).isEmpty();
        String broken = breaking.apply(good.text());
        assertThat(broken).as("the text to break is there").isNotEqualTo(good.text());

        List<Finding> findings = Rehearsal.rehearse(with(good, broken), settings);

        assertThat(findings).as(name).anySatisfy(f -> assertThat(f.expected()).startsWith(expected));
        assertThat(findings).allSatisfy(f -> {
            assertThat(f.level()).isEqualTo(Level.STOP);
            assertThat(f.code()).isEqualTo(Code.REHEARSAL_FAILED);
            assertThat(f.where()).isInstanceOf(Where.Text.class);
            assertThat(f.where().text()).startsWith(good.name() + ":");
        });
        assertThat(findings).hasSizeLessThanOrEqualTo(25);
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void programInAnotherLayout_isCaught(Machine.Layout printed, Machine.Layout wanted, String expected) {
        ProgramFile file =
                RotaryJob.plan(laid(printed), List.of(TWO_COLLARS)).programs().get(0);
        assertThat(Rehearsal.rehearse(file, laid(printed))).isEmpty();

        assertThat(Rehearsal.rehearse(file, laid(wanted)))
                .anySatisfy(f -> assertThat(f.expected()).startsWith(expected));
    }

    static Stream<Arguments> layouts() {
        Machine.Layout plain = Machine.Layout.plain();
        return Stream.of(
                Arguments.of(plain, new Machine.Layout(10, false, false, false), "an N number at the front"),
                Arguments.of(new Machine.Layout(5, false, false, false), plain, "N numbers only"),
                Arguments.of(plain, new Machine.Layout(0, true, false, false), "% on the first and the last"),
                Arguments.of(new Machine.Layout(0, true, false, false), plain, "no % sign"),
                Arguments.of(plain, new Machine.Layout(0, false, true, false), "CR LF at the end"),
                Arguments.of(new Machine.Layout(0, false, true, false), plain, "LF at the end"),
                Arguments.of(plain, new Machine.Layout(0, false, false, true), "a dwell after"));
    }

    @ParameterizedTest
    @CsvSource({
        "N30 , N100000 , 'N with a whole number, 5 digits at most'",
        "N30 , N030.5 , 'N with a whole number, 5 digits at most'",
        "N30 , N20 , 'N numbers only where the profile has them, in front and rising'"
    })
    void lineNumberThatCannotBe_isCaught(String from, String to, String expected) {
        RotarySettings settings = laid(new Machine.Layout(10, false, false, false));
        ProgramFile file =
                RotaryJob.plan(settings, List.of(TWO_COLLARS)).programs().get(0);
        assertThat(Rehearsal.rehearse(file, settings)).isEmpty();
        assertThat(file.text()).contains("\n" + from + " ");

        assertThat(Rehearsal.rehearse(with(file, file.text().replace("\n" + from + " ", "\n" + to + " ")), settings))
                .anySatisfy(f -> assertThat(f.expected()).isEqualTo(expected));
    }

    private static RotarySettings laid(Machine.Layout layout) {
        RotarySettings settings = RotarySamples.metric(false);
        Machine.Post p = settings.machine().post();
        Machine.Post post = new Machine.Post(
                p.cycles(), p.words(), p.lengthDecimals(), p.angleDecimals(), p.lineLength(), "M2", "ngc", layout);
        return RotarySamples.on(settings, RotarySamples.with(settings.machine(), post));
    }
}
