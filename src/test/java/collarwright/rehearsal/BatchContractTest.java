package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.job.Job;
import collarwright.machining.Machine;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramFile;
import collarwright.machining.ProgramUnits;
import collarwright.machining.RotaryForm;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotaryPlan;
import collarwright.machining.RotarySamples;
import collarwright.machining.RotarySettings;
import collarwright.plan.Planner;
import collarwright.plan.Production;
import collarwright.testing.Checker;
import collarwright.testing.DomeJobs;
import collarwright.testing.NeedsChecker;
import collarwright.testing.ProjectFolder;
import collarwright.testing.Rs274;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The samples, and batches of 500 collars of them, on every machine that turns the pipe: both interpreters pass every program. */
@NeedsChecker(Checker.RS274)
class BatchContractTest {

    static Stream<String> machines() {
        return MachineContractTest.machines();
    }

    @ParameterizedTest
    @MethodSource("machines")
    void samples_andBatchesOf500_passBothInterpreters(String name) throws IOException {
        for (String sample : List.of("cloche", "seedling-house")) {
            Job job = DomeJobs.read(ProjectFolder.top()
                    .resolve("output-samples")
                    .resolve(sample)
                    .resolve("job.toml"));
            RotarySettings settings = settings(job, name);
            var patterns = Planner.plan(job, List.of()).book().patterns();
            int inOne = patterns.stream().mapToInt(p -> p.count()).sum();
            for (int domes : List.of(1, (500 + inOne - 1) / inOne)) {
                List<PatternRun> runs = patterns.stream()
                        .map(p -> new PatternRun(p, p.count() * domes))
                        .toList();
                passes(settings, runs);
            }
        }
    }

    private static void passes(RotarySettings settings, List<PatternRun> runs) {
        RotaryPlan plan = RotaryJob.plan(settings, runs);
        assertThat(plan.findings()).extracting(Finding::level).doesNotContain(Level.STOP);
        assertThat(Rehearsal.rehearse(plan, settings, runs)).isEmpty();
        int made = plan.setups().stream()
                .mapToInt(s -> s.load().collars() * s.load().runs())
                .sum();
        assertThat(made).isEqualTo(runs.stream().mapToInt(PatternRun::made).sum());
        for (ProgramFile file : plan.programs()) {
            Rs274.Reading reading =
                    MachineContractTest.CONTROL.read(MachineContractTest.asItReads(file.text(), settings));
            assertThat(reading.accepted())
                    .as(file.name() + ": " + reading.complaint())
                    .isTrue();
        }
    }

    private static RotarySettings settings(Job job, String name) {
        Machine machine = ProfileJobs.machines().stream()
                .filter(m -> m.name().equals(name))
                .findFirst()
                .orElseThrow();
        RotarySettings own = Production.settings(job);
        ProgramUnits units =
                machine.rotary().form().word() == RotaryForm.Word.Y_DEGREES ? ProgramUnits.MM : own.units();
        RotarySettings on = RotarySamples.on(own, machine);
        return new RotarySettings(on.machine(), units, on.cutting(), on.work(), on.label(), on.overtravel(), on.mark());
    }
}
