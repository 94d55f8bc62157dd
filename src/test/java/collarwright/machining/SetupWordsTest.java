package collarwright.machining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.job.BundledProfiles;
import collarwright.job.Profiles;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every machine's sheet speaks of the words that its programs have. */
class SetupWordsTest {

    @Test
    void rotaryByA_setsA0AndY0() {
        SetupSheet.Zero zero = sheet("rotary-plain").zero();
        assertThat(zero.a()).startsWith("A0 anywhere on a new stick").contains("A+ turns the pipe clockwise");
        assertThat(zero.y()).startsWith("Y0 over the rotary axis");
    }

    @Test
    void rotaryByY_hasNoLinearY() {
        SetupSheet.Zero degrees = sheet("rotary-y-degrees").zero();
        assertThat(degrees.a()).startsWith("Y0 anywhere on a new stick").contains("Y counts degrees");
        assertThat(degrees.y()).startsWith("the tool over the rotary axis");
        // One turn is the circumference of the sample's pipe, π × 160.1 mm.
        assertThat(sheet("rotary-y-mm").zero().a()).contains("Y counts an arc, 502.97 mm for one turn");
    }

    /** Turns are counted in the program's own text: every G3 but the level one goes deeper by as much as the sheet says. */
    @Test
    void boredHole_sheetTellsTurnsAndTheirDepth_asTheProgramGoes() {
        PatternRun run = new PatternRun(BoreSamples.mixed(BoreSamples.MILL_12, 14.6, 47.32), 1);
        RotaryPlan plan = RotaryJob.plan(BoreSamples.settings(false, false), List.of(run));
        assertThat(plan.programs()).isNotEmpty();
        List<String> notes = plan.setups().get(0).notes();
        assertThat(notes).anyMatch(n -> n.startsWith("Arcs: I and J are from the start of the arc (incremental)."));
        String text = plan.programs().stream()
                .filter(p -> p.purpose() == ProgramFile.Purpose.CUT && p.text().contains("\nG3 "))
                .findFirst()
                .orElseThrow()
                .text();
        for (String size : List.of("14.60", "47.32")) {
            String note = notes.stream()
                    .filter(n -> n.startsWith("Hole " + size + " mm: "))
                    .findFirst()
                    .orElseThrow();
            Matcher told = Pattern.compile("goes round (\\d+) times, each (\\S+) mm deeper")
                    .matcher(note);
            assertThat(told.find()).as(note).isTrue();
            int turns = Integer.parseInt(told.group(1));
            double depth = Double.parseDouble(told.group(2));
            // The way of the centre: (D - 12) / 2 to the side of the axis.
            String radius = size.equals("14.60") ? "I-1.300" : "I-17.660";
            Matcher arcs =
                    Pattern.compile("((?:G3 [^\\n]*" + radius + "[^\\n]*\\n)+)").matcher(text);
            assertThat(arcs.find()).as(size).isTrue();
            List<Double> depths = Pattern.compile("Z(-?\\S+)")
                    .matcher(arcs.group(1))
                    .results()
                    .map(m -> Double.valueOf(m.group(1)))
                    .toList();
            long arcsMade = arcs.group(1).lines().count();
            assertThat(arcsMade).isEqualTo(turns + 1L);
            assertThat(depths.get(0) - depths.get(1)).isCloseTo(depth, within(0.006));
        }
    }

    @Test
    void byHand_saysWhoTurns() {
        assertThat(sheet("index-by-hand").zero().a()).startsWith("turn the pipe by hand, clockwise");
    }

    /** Whoever loosens the stick between two programs loses A0 and X0; where a file has all cutters nobody can. */
    @Test
    void severalProgramsOnAStick_nothingIsLoosenedBetweenThem() {
        assertThat(sheet("rotary-plain").notes()).anyMatch(n -> n.contains("zero A or X anew until its last program"));
        assertThat(sheet("rotary-y-mm").notes()).anyMatch(n -> n.contains("zero Y or X anew until its last program"));
        assertThat(sheet("rotary-no-spindle").notes()).noneMatch(n -> n.contains("until its last program"));
    }

    @Test
    void lengthTable_needsNoTouchingAnew() {
        assertThat(sheet("rotary-industrial").zero().z())
                .contains("control's table")
                .doesNotContain("again after");
        assertThat(sheet("rotary-plain").zero().z()).endsWith("again after every tool change");
    }

    @Test
    void spindleByHand_isSaid() {
        assertThat(sheet("rotary-no-spindle").notes())
                .anyMatch(n -> n.contains("do not switch the spindle"))
                .anyMatch(n -> n.contains("all cutters of the stick"));
        assertThat(sheet("rotary-plain").notes()).noneMatch(n -> n.contains("spindle"));
    }

    private static SetupSheet sheet(String machine) {
        Machine found =
                Profiles.load(List.of(new BundledProfiles())).machine(machine).orElseThrow();
        RotarySettings settings = RotarySamples.on(RotarySamples.metric(false), found);
        RotaryPlan plan =
                RotaryJob.plan(settings, List.of(new PatternRun(RotarySamples.sixWay(RotarySamples.HOLE_SAW_44), 2)));
        return plan.setups().get(0);
    }
}
