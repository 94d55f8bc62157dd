package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Finding;
import collarwright.machining.Load;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramFile;
import collarwright.machining.ProgramTask;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotaryPlan;
import collarwright.machining.RotarySamples;
import collarwright.machining.RotarySettings;
import collarwright.machining.SetupSheet;
import collarwright.machining.StickRule;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Whole orders of mixed sticks: what would make the wrong collars is refused. */
class MixedRehearsalTest {

    private static final RotarySettings SETTINGS = RotarySamples.metric(false);
    private static final List<PatternRun> ORDER = List.of(
            new PatternRun(RotarySamples.sixWay(RotarySamples.HOLE_SAW_44), 29),
            new PatternRun(RotarySamples.pattern("CB", RotarySamples.TWIST_1_1_8, 0, 100, 250), 11),
            new PatternRun(RotarySamples.pattern("CC", RotarySamples.HOLE_SAW_44, 0, 58.2827, 200), 8));

    private static List<Finding> check(RotaryPlan plan) {
        return Rehearsal.rehearse(plan, SETTINGS, ORDER);
    }

    @Test
    void mixedAndSingleSticks_pass() {
        for (StickRule rule : StickRule.values()) {
            assertThat(check(RotaryJob.plan(SETTINGS, ORDER, rule))).isEmpty();
        }
    }

    @Test
    void stickRunOnceTooOften_isCaught() {
        RotaryPlan plan = RotaryJob.plan(SETTINGS, ORDER);
        List<SetupSheet> setups = plan.setups().stream()
                .map(s -> with(s, load(s.load(), s.load().patterns(), s.load().runs() + 1)))
                .toList();

        assertThat(check(new RotaryPlan(plan.programs(), setups, List.of())))
                .filteredOn(f -> f.expected().endsWith(" collars"))
                .extracting(f -> f.where().text())
                .contains("pattern CA");
    }

    @Test
    void collarsThatChangePlaces_areCaught() {
        RotaryPlan plan = RotaryJob.plan(SETTINGS, ORDER);
        Load mixed = plan.setups().stream()
                .map(SetupSheet::load)
                .filter(Load::mixed)
                .findFirst()
                .orElseThrow();
        List<String> turned = new ArrayList<>(mixed.patterns());
        Collections.reverse(turned);
        Load wrong = load(mixed, turned, mixed.runs());
        List<SetupSheet> setups = plan.setups().stream()
                .map(s -> s.load().equals(mixed) ? with(s, wrong) : s)
                .toList();
        List<ProgramFile> files = plan.programs().stream()
                .map(f -> f.task().filter(t -> t.load().equals(mixed)).isPresent()
                        ? new ProgramFile(
                                f.name(),
                                f.purpose(),
                                f.task()
                                        .map(t -> new ProgramTask(
                                                wrong, t.cutter(), t.cut(), t.heights(), t.operations())),
                                f.lift(),
                                f.effort(),
                                f.text())
                        : f)
                .toList();

        assertThat(check(new RotaryPlan(files, setups, List.of())))
                .isNotEmpty()
                .anySatisfy(f ->
                        assertThat(f.expected()).startsWith("collar 1, hole ").endsWith("made once"));
    }

    // A saw of 44.5 at most whose middle stands 20 in front of the jaw face reaches 2.25 behind it.
    @Test
    void cutterOverTheJaws_isCaught() {
        RotaryPlan plan = RotaryJob.plan(SETTINGS, ORDER);
        ProgramFile saw = plan.programs().stream()
                .filter(f -> f.purpose() == ProgramFile.Purpose.CUT && f.name().contains("HS-44"))
                .findFirst()
                .orElseThrow();
        ProgramFile moved = new ProgramFile(
                saw.name(),
                saw.purpose(),
                saw.task(),
                saw.lift(),
                saw.effort(),
                saw.text().replace("X60.000", "X20.000"));

        assertThat(moved.text()).isNotEqualTo(saw.text());
        assertThat(Rehearsal.rehearse(moved, SETTINGS))
                .filteredOn(f -> f.expected().equals("the side of the cutter in front of the jaw face"))
                .isNotEmpty()
                .allSatisfy(f -> assertThat(f.found()).isEqualTo("X -2.250 mm"));
    }

    private static Load load(Load l, List<String> patterns, int runs) {
        return new Load(
                l.id(), patterns, runs, l.firstEdge(), l.pitch(), l.stickLength(), l.fromLength(), l.sticksPerLength());
    }

    private static SetupSheet with(SetupSheet s, Load load) {
        return new SetupSheet(s.machine(), load, s.zero(), s.stick(), s.steps(), s.notes());
    }
}
