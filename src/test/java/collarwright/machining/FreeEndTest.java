package collarwright.machining;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A stick that stands far out is told to be supported. The factor 4 is common practice, no source. */
class FreeEndTest {

    private static RotarySettings settings(Optional<Double> longestFree) {
        Machine m = RotarySamples.machine(false);
        Machine.Rotary r = m.rotary();
        Machine.Rotary rotary = new Machine.Rotary(
                r.positive(),
                r.topTowardChuck(),
                r.rapidDegreesPerMin(),
                r.accelerationDegreesPerS2(),
                r.takeUpDegrees(),
                r.chuckLength(),
                r.jawClear(),
                r.jawHeight(),
                r.partingKerf(),
                r.endTrim(),
                r.maxStick(),
                r.form(),
                longestFree);
        return RotarySamples.on(RotarySamples.metric(false), RotarySamples.with(m, rotary));
    }

    private static RotaryPlan plan(Optional<Double> longestFree, int collars) {
        return RotaryJob.plan(
                settings(longestFree),
                List.of(new PatternRun(RotarySamples.sixWay(RotarySamples.HOLE_SAW_44), collars)));
    }

    private static List<Finding> warnings(RotaryPlan plan) {
        return plan.findings().stream().filter(f -> f.code() == Code.FREE_END).toList();
    }

    @Test
    void limit_profileSaysNothing_isFourOutsideDiameters() {
        RotarySettings settings = settings(Optional.empty());
        double diameter = 2 * settings.work().body().outerRadius();
        assertThat(FreeEnd.limit(settings)).contains(4 * diameter);
        assertThat(FreeEnd.limit(settings(Optional.of(321.0)))).contains(321.0);
    }

    @Test
    void stick_standsOutAsFarAsTheProfileSays_orALittleMore_warnedOfBeyondIt() {
        double out = plan(Optional.empty(), 9).setups().get(0).stick().stickOut();
        assertThat(warnings(plan(Optional.of(out), 9))).isEmpty();
        RotaryPlan beyond = plan(Optional.of(out - 0.5), 9);
        assertThat(warnings(beyond)).singleElement().satisfies(f -> {
            assertThat(f.level()).isEqualTo(Level.WARN);
            assertThat(f.found()).isEqualTo("it stands out " + Sizes.both(out));
            assertThat(f.expected()).contains(Sizes.both(out - 0.5), "rotary.longest-free");
            assertThat(f.hints().get(0)).startsWith("support the free end (steady)");
        });
        assertThat(beyond.programs()).isNotEmpty();
    }

    @Test
    void setupSheet_saysSupport_onlyWhereTheStickStandsOutSoFar() {
        for (SetupSheet setup : plan(Optional.empty(), 9).setups()) {
            double limit = FreeEnd.limit(settings(Optional.empty())).orElseThrow();
            boolean beyond = setup.stick().stickOut() > limit;
            assertThat(setup.notes().stream().anyMatch(n -> n.startsWith("Support the free end (steady)")))
                    .isEqualTo(beyond);
        }
        SetupSheet small = plan(Optional.of(150.0), 9).setups().get(0);
        assertThat(small.notes().get(1))
                .startsWith("Support the free end (steady): the stick stands out "
                        + Sizes.in(ProgramUnits.MM, small.stick().stickOut())
                        + ", more than 150.00 mm, by the machine's"
                        + " profile (rotary.longest-free).");
        assertThat(String.join(" ", small.notes())).doesNotContain("load", "kg", " N ");
    }
}
