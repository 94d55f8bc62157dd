package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Finding;
import collarwright.machining.ProgramFile;
import collarwright.machining.RotarySettings;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A tube cutter's program that breaks a rule is refused, with the rule's own words. */
class BrokenTubeTest {

    private static final RotarySettings SETTINGS = TubeSamples.settings(TubeSamples.plain(), false);
    private static final ProgramFile GOOD = TubeSamples.cut(TubeSamples.plan(SETTINGS));
    private static final RotarySettings MARKED =
            TubeSamples.settings(TubeSamples.with(TubeSamples.plain(), TubeSamples.laser()), false);
    private static final ProgramFile SPOTS = TubeSamples.cut(TubeSamples.plan(MARKED));

    private static Arguments swap(String name, String from, String to, String expected) {
        return broken(name, t -> t.replaceFirst(from, Matcher.quoteReplacement(to)), expected);
    }

    private static Arguments broken(String name, UnaryOperator<String> breaking, String expected) {
        return Arguments.of(name, breaking, expected);
    }

    /** The n-th match of a form changed, counted from 1. */
    private static UnaryOperator<String> nth(int n, String form, UnaryOperator<String> change) {
        return text -> {
            Matcher m = Pattern.compile(form).matcher(text);
            for (int i = 0; i < n; i++) {
                assertThat(m.find()).as(form).isTrue();
            }
            return text.substring(0, m.start()) + change.apply(m.group()) + text.substring(m.end());
        };
    }

    static Stream<Arguments> programs() {
        return Stream.of(torch(), ways(), speeds(), outlines(), partings()).flatMap(s -> s);
    }

    private static Stream<Arguments> torch() {
        return Stream.of(
                swap("never on", "\nM3\n", "\n", "switched on while it cuts"),
                swap("on too high", "G0 Z84.050\nM3", "M3\nG0 Z84.050", "where it pierces"),
                swap("on twice", "\nM3\n", "\nM3\nM3\n", "M5 before the next M3"),
                swap("off twice", "\nM5\n", "\nM5\nM5\n", "M3 before M5"),
                swap("never off", "\nM5\n", "\n", "switched off before a rapid"),
                swap("on at the end", "\nM2\n", "\nM3\nM2\n", "switched off at the end"),
                swap("no dwell", "\nG4 P0.50\n", "\n", "a dwell before the cut"),
                swap("a short dwell", "G4 P0.50", "G4 P0.10", "a dwell of 0.5 s"),
                swap("a second dwell", "G4 P0.50", "G4 P0.50\nG4 P0.50", "one dwell after M3"),
                swap("a dwell with nothing on", "\nM3\nG4 P0.50", "\nG4 P0.50\nM3", "a dwell right after M3"),
                swap("on and off", "\nM3\nG4", "\nM3\nM5\nM3\nG4", "a dwell between M3 and M5"),
                swap("a stop", "\nM3\n", "\nM3\nM0\n", "no stop in a program"));
    }

    private static Stream<Arguments> ways() {
        return Stream.of(
                swap("turned low", "G0 Z84.050\nM3", "G0 Z84.050\nG0 A1.000\nM3", "rapids of X and of the pipe"),
                swap("down too far", "G0 Z84.050\nM3", "G0 Z80.050\nM3", "a rapid down to Z 84.050 mm"),
                swap("not up", "M5\nG0 Z110.650", "M5\nG0 Z90.000", "a rapid up to Z 110.650 mm"),
                swap("two axes", "G0 X", "G0 Z110.650 X", "one axis in a move"),
                swap("an arc", "\nG93", "\nG2 X81.000 A1.000 I1.000 F1.0\nG93", "only words that"),
                swap("cuts too high", "G1 Z81.550", "G1 Z82.550", "down from the pierce height"),
                swap("down too fast", "G1 Z81.550 F2000.0", "G1 Z81.550 F5000.0", "down no faster"),
                swap("a Y", "\nG0 A", "\nG0 Y0.000\nG0 A", "first motions Z, the pipe, X"),
                swap("X first", "(G0 A-?[0-9.]+)\n(G0 X[0-9.]+)", "G0 X80.000\nG0 A0.000", "first motions Z"),
                broken("over the jaws", t -> t.replace("X39.250", "X0.250"), "in front of the jaw face"),
                broken("beyond the travel", t -> t.replace("X283.750", "X1600.000"), "X between"));
    }

    private static Stream<Arguments> speeds() {
        return Stream.of(
                broken("three in a hundred faster", nth(3, "F[0-9]{3,}\\.[0-9]{4}", f -> by(f, 1.03)), "within 2 %"),
                broken("three in a hundred slower", nth(9, "F[0-9]{3,}\\.[0-9]{4}", f -> by(f, 0.97)), "within 2 %"),
                broken("the pipe too fast", t -> t.replace("A360.000 F", "A360.000 F9"), "degrees a minute at most"),
                swap("per minute", "\nG93\n", "\n", "within 2 %"),
                broken("a stretch without a time", nth(5, " F[0-9]{3,}\\.[0-9]{4}", f -> ""), "F in every block"));
    }

    private static String by(String word, double factor) {
        return collarwright.units.Decimals.fixed(Double.parseDouble(word.substring(1)) * factor, 4)
                .replaceAll("^", "F");
    }

    private static Stream<Arguments> outlines() {
        return Stream.of(
                broken("a corner inward", nth(20, "\nG1 X[0-9.]+ A", x -> moved(x, 0.06)), "hole 1"),
                broken("a corner outward", nth(20, "\nG1 X[0-9.]+ A", x -> moved(x, -0.06)), "hole 1"),
                broken("a corner left out", nth(20, "\nG1 X[0-9.]+ A[^\n]*", x -> ""), "hole 1"),
                swap("a lead-in from outside", "\nG0 A-5.[0-9]+", "\nG0 A-14.000", "it pierces in the waste"),
                broken("an outline left open", BrokenTubeTest::open, "an outline that closes"),
                broken("no overcut", t -> t.replaceFirst("\nG1 X[^\n]*\nG1 X[^\n]*\nG94\nM5", "\nG94\nM5"), "overcut"),
                broken("a hole elsewhere", t -> t.replaceAll("(?m)^(G[01] X)8", "$19"), "hole 1"),
                broken("a hole left out", BrokenTubeTest::without, "marks and cuts"));
    }

    private static String moved(String line, double by) {
        Matcher m = Pattern.compile("X([0-9.]+)").matcher(line);
        assertThat(m.find()).isTrue();
        String x = collarwright.units.Decimals.fixed(Double.parseDouble(m.group(1)) + by, 3);
        return line.substring(0, m.start()) + "X" + x + line.substring(m.end());
    }

    /** The first outline stops a third of the way. */
    private static String open(String text) {
        int start = text.indexOf("G93\n");
        int end = text.indexOf("G94\nM5", start);
        String cut = text.substring(start, start + (end - start) / 3);
        return text.substring(0, start) + cut.substring(0, cut.lastIndexOf('\n') + 1) + text.substring(end);
    }

    private static String without(String text) {
        int start = text.indexOf("(collar 1, hole 1)");
        int next = text.indexOf("(collar", start + 1);
        return text.substring(0, start) + text.substring(next);
    }

    private static Stream<Arguments> partings() {
        return Stream.of(
                broken("a parting in another place", t -> t.replace("X202.250", "X203.250"), "part collar"),
                broken(
                        "half round",
                        t -> t.replaceFirst("A360.000", "A300.000").replaceFirst("A361\\.", "A301."),
                        "trim the free end, once round"),
                broken("a parting first", BrokenTubeTest::partedFirst, "cuts all round last of all"),
                broken("from the chuck outward", BrokenTubeTest::outward, "from the free end inward"));
    }

    private static String partedFirst(String text) {
        int trim = text.indexOf("(collar 3, trim the free end)");
        int next = text.indexOf("(collar 3, part", trim);
        int first = text.indexOf("(collar 1, hole 1)");
        int second = text.indexOf("(collar 2, hole 1)", first);
        return text.substring(0, second)
                + text.substring(trim, next)
                + text.substring(second, trim)
                + text.substring(next);
    }

    private static String outward(String text) {
        return text.replace("X202.250", "X200.250").replace("X120.750", "X202.250");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("programs")
    void program_broken_isRefused(String name, UnaryOperator<String> breaking, String expected) {
        assertThat(Rehearsal.rehearse(GOOD, SETTINGS)).isEmpty();
        String text = breaking.apply(GOOD.text());
        assertThat(text).isNotEqualTo(GOOD.text());
        assertThat(Rehearsal.rehearse(TubeSamples.with(GOOD, text), SETTINGS))
                .extracting(Finding::expected)
                .anyMatch(e -> e.contains(expected));
    }

    @ParameterizedTest
    @org.junit.jupiter.params.provider.CsvSource({
        "G4 P0.05, G4 P0.30, dimple, a dwell of",
        "G0 A0.000, G0 A1.000, 0 line dimple at",
    })
    void spot_broken_isRefused(String from, String to, String expected) {
        assertThat(Rehearsal.rehearse(SPOTS, MARKED)).isEmpty();
        String text = SPOTS.text().replaceFirst(from, to);
        assertThat(Rehearsal.rehearse(TubeSamples.with(SPOTS, text), MARKED))
                .extracting(Finding::expected)
                .anyMatch(e -> e.contains(expected));
    }
}
