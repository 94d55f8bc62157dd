package collarwright.picture;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.plan.Plan;
import collarwright.plan.Planner;
import collarwright.testing.Jobs;
import collarwright.tooling.Hole;
import collarwright.tooling.SharingLimits;
import java.util.List;
import org.junit.jupiter.api.Test;

class RiskPictureTest {

    // The words name the kind of hole with the least room between need and tightest case first.
    @Test
    void describe_holes_tellsTheLeastSlackFirst() {
        Plan plan = Planner.plan(Jobs.windbreak().job(), List.of());
        Hole tightest = plan.book().patterns().stream()
                .flatMap(p -> p.holes().stream())
                .min((a, b) -> Double.compare(a.tiltMin() - a.neededLean(), b.tiltMin() - b.neededLean()))
                .orElseThrow();
        String words = new RiskPicture(plan, 180).describe();
        int first = words.indexOf(" needs ");
        assertThat(words).as("exact patterns: by strut").contains("SA: ");
        assertThat(words.substring(first))
                .startsWith(" needs " + Figures.degrees(tightest.neededLean()) + ", binds between "
                        + Figures.degrees(tightest.tiltMin()) + " and " + Figures.degrees(tightest.tiltMax()));
        assertThat(new RiskPicture(plan, 180).legend())
                .contains("Dot: the lean")
                .doesNotContain("kinds with the least");
    }

    @Test
    void describe_sharedPatterns_namesHolesOfThem() {
        Plan plan = Planner.plan(Jobs.windbreak().shared(SharingLimits.USUAL).job(), List.of());
        assertThat(new RiskPicture(plan, 180).describe()).containsPattern("C[A-Z] [0-9]");
        assertThat(new RiskPicture(plan, 180).height()).isGreaterThan(30);
    }

    @Test
    void legend_manyKinds_saysHowManyAreShown() {
        Plan plan = Planner.plan(Jobs.windbreak().dome(16, 24).job(), List.of());
        RiskPicture picture = new RiskPicture(plan, 180);
        assertThat(picture.legend()).contains("The 24 kinds with the least slack of");
        assertThat(picture.height()).isLessThan(200);
    }
}
