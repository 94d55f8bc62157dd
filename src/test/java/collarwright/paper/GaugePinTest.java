package collarwright.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.job.Job;
import collarwright.plan.Plan;
import collarwright.plan.Planner;
import collarwright.testing.Jobs;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The slack at a no-go size counts with eased rims as the plan itself does. */
class GaugePinTest {

    // A collar whose rims are eased by c binds as one of wall t − 2c inside a pipe whose radius is smaller by c: the
    // same
    // two rims. Rod through a board (published formula): D = d / cos θ + t · tan θ, here on the mid-plane.
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.8})
    void slackAtNoGo_easedRims_countTheThinnerWall(double rims) {
        Job job = Jobs.windbreak().rims(rims).job();
        Plan plan = Planner.plan(job, List.of());
        Inspection inspection = new Inspection(plan, plan.book().patterns().get(0));
        String slack = inspection.pins().rows().get(0).get(4).text();
        var hole = plan.book().patterns().get(0).holes().get(0);
        double lean = StrictMath.toRadians(Double.parseDouble(slack.replace("°", ""))) + hole.neededLean();
        double board = job.hub().body().wall().nominal() - 2 * rims;
        double strut = job.strut().stock().od().nominal();
        assertThat(strut / StrictMath.cos(lean) + board * StrictMath.tan(lean))
                .isCloseTo(Inspection.noGo(hole, Inspection.Steps.MM), within(0.02));
    }
}
