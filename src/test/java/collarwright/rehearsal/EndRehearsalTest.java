package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Finding;
import collarwright.machining.Bed;
import collarwright.machining.BedSettings;
import collarwright.machining.BenchProgram;
import collarwright.machining.EndJob;
import collarwright.machining.EndPlan;
import collarwright.machining.EndSamples;
import collarwright.machining.EndStops;
import collarwright.machining.EndTask;
import collarwright.machining.ProgramUnits;
import collarwright.testing.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Programs for the ends of struts: what is written passes, what is broken does not, for the reason it was broken. */
class EndRehearsalTest {

    private static final List<EndStops> BOTH = List.of(EndSamples.twisted(), EndSamples.straight());

    private static BedSettings settings(boolean cycles, double reach) {
        return EndSamples.settings(EndSamples.bed(cycles, true, reach, new Bed(20, 2, 25)), ProgramUnits.MM);
    }

    /** Struts of all lengths and twists on beds of all lengths, in both units, with and without cycles and a Y. */
    static EndPlan drawn(Seeds draw, List<EndStops> struts, BedSettings[] used) {
        boolean inch = draw.coin();
        Bed bed = new Bed(draw.between(0, 40), draw.between(0, 3), draw.between(12, 40));
        used[0] = EndSamples.settings(
                EndSamples.bed(draw.coin(), draw.coin(), draw.between(60, 2400), bed),
                inch ? ProgramUnits.INCH : ProgramUnits.MM);
        for (int i = 0; i < draw.whole(1, 4); i++) {
            double twist = draw.coin() ? 0 : StrictMath.toRadians(draw.between(-89.9, 90));
            struts.add(new EndStops(
                    "S" + "ABCD".charAt(i),
                    draw.whole(1, 99),
                    draw.between(120, 2400),
                    draw.between(9, 50),
                    draw.between(9, 50),
                    twist));
        }
        return EndJob.plan(used[0], struts);
    }

    @Test
    void everyProgramThatIsWritten_passes() {
        Seeds.each(120, draw -> {
            List<EndStops> struts = new ArrayList<>();
            BedSettings[] used = new BedSettings[1];
            EndPlan plan = drawn(draw, struts, used);
            assertThat(plan.programs()).isNotEmpty();
            assertThat(EndRehearsal.rehearse(plan, used[0], struts)).isEmpty();
        });
    }

    @Test
    void wrongWayRound_isCaught() {
        for (double reach : new double[] {2000, 600}) {
            BedSettings settings = settings(false, reach);
            EndPlan plan = EndJob.plan(settings, List.of(EndSamples.twisted()));
            EndPlan mirrored = with(
                    plan,
                    t -> t.contains("ANTICLOCKWISE")
                            ? t.replace("ANTICLOCKWISE", "CLOCKWISE")
                            : t.replace("CLOCKWISE", "ANTICLOCKWISE"));
            assertThat(EndRehearsal.rehearse(plan, settings, List.of(EndSamples.twisted())))
                    .isEmpty();
            assertThat(EndRehearsal.rehearse(mirrored, settings, List.of(EndSamples.twisted())))
                    .extracting(Finding::expected)
                    .containsExactly("holes turned by 23.40°, clockwise looking from E1 to E2");
        }
    }

    @Test
    void holesOfAnotherStrut_areCaught() {
        BedSettings settings = settings(false, 600);
        EndPlan plan = EndJob.plan(settings, BOTH);
        EndStops longer = new EndStops("SB", 3, 801.35, 18, 18.1, 0);
        assertThat(EndRehearsal.rehearse(plan, settings, List.of(longer)))
                .extracting(Finding::expected)
                .containsExactly("the second hole 18.100 mm from end E2");
        EndPlan half = new EndPlan(plan.programs().subList(0, 2), List.of());
        assertThat(EndRehearsal.rehearse(half, settings, BOTH))
                .extracting(Finding::expected)
                .contains("two tie holes");
    }

    private static EndPlan with(EndPlan plan, UnaryOperator<String> change) {
        return new EndPlan(plan.programs().stream().map(p -> with(p, change)).toList(), plan.findings());
    }

    private static BenchProgram<EndTask> with(BenchProgram<EndTask> p, UnaryOperator<String> change) {
        return new BenchProgram<>(p.name(), p.tasks(), p.lift(), p.seconds(), change.apply(p.text()));
    }

    private static Arguments swap(String what, String from, String to, String expected) {
        UnaryOperator<String> change = t -> t.replaceFirst(Pattern.quote(from), Matcher.quoteReplacement(to));
        return Arguments.of(what, false, 0, change, expected);
    }

    static Stream<Arguments> broken() {
        UnaryOperator<String> g99 = t -> t.replaceFirst("G98", "G99");
        UnaryOperator<String> open = t -> t.replaceFirst("G80\n", "");
        UnaryOperator<String> deep = t -> t.replaceFirst("Z-[0-9.]+ R", "Z-50.000 R");
        UnaryOperator<String> low = t -> t.replaceFirst("G0 Z7[0-9.]+\n", "G0 Z20.000\n");
        return Stream.of(
                swap("X before Z", "G0 Z48.528", "G0 X18.000", "first motions"),
                swap("Z too low at first", "G0 Z48.528", "G0 Z30.000", "first of all Z up"),
                swap("no Y", "G0 Y0.000\n", "", "first motions ZYX"),
                swap("Y beside the axis", "G0 Y0.000", "G0 Y1.000", "Y0 over"),
                swap("two axes at once", "G0 X18.000", "G0 X18.000 Z60.000", "one axis in a move"),
                swap("a turn of A", "G0 X18.000", "G0 A10.000\nG0 X18.000", "only words that the profile"),
                swap("into the stop", "G0 X18.000", "G0 X4.000", "off the stop"),
                swap("beyond the bed", "X1213.067", "X2013.067", "X between"),
                swap("no spindle", "S1592 M3\n", "", "the spindle running"),
                swap("no wait", "G4 P2.00\n", "", "a dwell after"),
                swap("another speed", "S1592", "S1600", "1592 rpm as planned"),
                swap("turned with the spindle on", "M5\nG4 P2.00\n(TURN", "(TURN", "the spindle stopped"),
                swap(
                        "a turn that nobody tells",
                        "(TURN THE STRUT 23.4 DEG",
                        "(TURN THE STRUT A BIT",
                        "words that tell"),
                swap("too fast", "F159.2", "F1592.0", "feed 159.200 mm"),
                swap("no end", "M2\n", "", "M2 at the end"),
                swap("a sideways cut", "G0 X1213.067", "G1 X1213.067 F100.0", "cuts along Z only"),
                Arguments.of("G99", true, 0, g99, "only at Z"),
                Arguments.of("no G80", true, 0, open, "G80 before"),
                Arguments.of("into the bed", true, 0, deep, "the cutter off the bed"),
                Arguments.of("an air cut in the strut", false, 1, low, "an air cut at Z"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("broken")
    void broken_isRefused(String what, boolean cycles, int file, UnaryOperator<String> change, String expected) {
        BedSettings settings = settings(cycles, 2000);
        BenchProgram<EndTask> program =
                EndJob.plan(settings, List.of(EndSamples.twisted())).programs().get(file);
        assertThat(EndRehearsal.rehearse(program, settings)).isEmpty();
        BenchProgram<EndTask> changed = with(program, change);
        assertThat(changed.text()).as(what).isNotEqualTo(program.text());
        assertThat(EndRehearsal.rehearse(changed, settings))
                .extracting(Finding::expected)
                .anyMatch(e -> e.contains(expected));
    }

    /** Every cut a little less deep, one peck left out, one retract left out. */
    @Test
    void depthAndPecks_areHeld() {
        BedSettings settings = settings(false, 2000);
        BenchProgram<EndTask> program =
                EndJob.plan(settings, List.of(EndSamples.straight())).programs().get(0);
        List<String> lines = program.text().lines().toList();
        int last = lines.lastIndexOf(lines.stream()
                .filter(l -> l.startsWith("G1 Z-"))
                .reduce((a, b) -> b)
                .orElseThrow());
        assertThat(expected(program, settings, lines, last, "G1 Z-20.300 F159.2"))
                .contains("the full diameter through");
        int first = lines.indexOf(
                lines.stream().filter(l -> l.startsWith("G1 Z")).findFirst().orElseThrow());
        assertThat(expected(program, settings, lines, first, "G1 Z10.000 F159.2"))
                .contains("pecks up to");
        assertThat(expected(program, settings, lines, first + 1, "(left out)")).contains("the cutter out of the hole");
    }

    private static String expected(
            BenchProgram<EndTask> program, BedSettings settings, List<String> lines, int at, String other) {
        List<String> changed = new ArrayList<>(lines);
        changed.set(at, other);
        return EndRehearsal.rehearse(with(program, t -> String.join("\n", changed) + "\n"), settings).stream()
                .map(Finding::expected)
                .toList()
                .toString();
    }

    @Test
    void twistOfAHole_hasNoEnds() {
        assertThat(StrutHole.clockwise("TURN THE STRUT 12.5 DEG ANTICLOCKWISE SEEN FROM THE STOP"))
                .isEqualTo(-StrictMath.toRadians(12.5));
        assertThat(StrutHole.clockwise("turn it")).isNaN();
    }
}
