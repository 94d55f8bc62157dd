package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.machining.BoreSamples;
import collarwright.machining.ControlHabits;
import collarwright.machining.Machine;
import collarwright.machining.Operation;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramFile;
import collarwright.machining.ProgramWords;
import collarwright.machining.RotaryForm;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotaryPlan;
import collarwright.machining.RotarySamples;
import collarwright.machining.RotarySettings;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Bored holes beside drilled ones in the dialects that have a linear Y. */
class BoreDialectsTest {

    private static final List<PatternRun> RUNS =
            List.of(new PatternRun(BoreSamples.mixed(BoreSamples.MILL_12, 20.5, 47.32), 3));

    private static Machine.Post post(Machine m, Machine.Layout layout, boolean cycles) {
        Machine.Post p = m.post();
        Set<String> words = new TreeSet<>(p.words());
        words.addAll(ProgramWords.TOOLS);
        return new Machine.Post(
                cycles, words, p.lengthDecimals(), p.angleDecimals(), 90, p.endWord(), p.extension(), layout);
    }

    private static RotaryPlan proven(Machine machine) {
        RotarySettings settings = RotarySamples.on(BoreSamples.settings(false, false), machine);
        RotaryPlan plan = RotaryJob.plan(settings, RUNS);
        assertThat(plan.findings()).extracting(Finding::level).doesNotContain(Level.STOP);
        assertThat(Rehearsal.rehearse(plan, settings, RUNS)).isEmpty();
        for (ProgramFile file : plan.programs()) {
            assertThat(Comparison.of(file, file.text(), file.name(), settings).findings())
                    .as(file.name())
                    .isEmpty();
            replayed(file, settings);
        }
        return plan;
    }

    /** Every hole and dimple stands in the replay with its own cutter's width, also where a file has all cutters. */
    private static void replayed(ProgramFile file, RotarySettings settings) {
        List<Operation> planned = file.byTask().stream()
                .flatMap(f -> f.task().stream())
                .flatMap(t -> t.operations().stream())
                .toList();
        List<Replay.Made> made = Replay.of(file, settings).holes();
        assertThat(made).as(file.name()).hasSameSizeAs(planned);
        for (int i = 0; i < made.size(); i++) {
            Operation operation = planned.get(i);
            double width = operation instanceof Operation.Bore bore
                    ? bore.diameter()
                    : operation.cutter().asDrilled().nominal();
            assertThat(made.get(i).dimple()).isEqualTo(operation instanceof Operation.Mark);
            assertThat(made.get(i).diameter()).isCloseTo(width, within(0.003));
            assertThat(made.get(i).startSeconds()).isPositive();
        }
    }

    @ParameterizedTest
    @EnumSource(ControlHabits.ToolChange.class)
    void everyToolChange_passes(ControlHabits.ToolChange change) {
        boolean table = change == ControlHabits.ToolChange.M6;
        ControlHabits habits = new ControlHabits(change, table, false, 0, false, false);
        Machine m = BoreSamples.machine(true);
        Machine.Layout layout = new Machine.Layout(5, true, true, true, habits);

        RotaryPlan plan = proven(RotarySamples.with(m, post(m, layout, true)));

        boolean oneFile = change != ControlHabits.ToolChange.FILE;
        assertThat(plan.programs()).hasSize(oneFile ? 3 : 7);
    }

    @ParameterizedTest
    @CsvSource({"true, true", "true, false", "false, true", "false, false"})
    void everySense_passes(boolean positive, boolean topTowardChuck) {
        proven(RotarySamples.turned(BoreSamples.machine(false), positive, topTowardChuck));
    }

    /** A hand turns the pipe; Y is linear. */
    @ParameterizedTest
    @CsvSource({"true", "false"})
    void turnedByHand_passes(boolean cycles) {
        Machine m = BoreSamples.machine(cycles);
        Machine.Rotary byHand = m.rotary()
                .with(new RotaryForm(RotaryForm.Word.BY_HAND, Optional.empty(), RotaryForm.Sweep.INVERSE_TIME));

        RotaryPlan plan = proven(RotarySamples.with(m, byHand));

        assertThat(plan.programs().get(2).text()).contains("TURN TO 121.717 DEG", "G3 X");
    }
}
