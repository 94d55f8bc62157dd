package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.testing.Checker;
import collarwright.testing.NeedsChecker;
import collarwright.testing.ProjectFolder;
import collarwright.testing.Run;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Eased rims reach the plan file, and the independent model finds the same leans and holes with them. */
class EasedRimsTest {

    private static ObjectNode plan(double rims) throws IOException {
        return (ObjectNode) new ObjectMapper().readTree(PlanJson.write(PackJobs.plan(PackJobs.eased(rims)), List.of()));
    }

    private static Run model(ObjectNode plan, Path folder) throws IOException {
        Path file = folder.resolve("plan.json");
        Files.write(file, new ObjectMapper().writeValueAsBytes(plan));
        return Run.of(List.of(
                "/usr/bin/python3", ProjectFolder.checkerScript("plan_model.py").toString(), file.toString()));
    }

    @Test
    void inputs_alwaysSayHowFarRimsAreEased() throws IOException {
        assertThat(plan(0).at("/inputs/collar/rimsMm").asDouble(-1)).isZero();
        assertThat(plan(0.5).at("/inputs/collar/rimsMm").asDouble()).isEqualTo(0.5);
    }

    @Test
    @NeedsChecker(Checker.EZDXF) // the same Python
    void model_withTheSameRims_agrees_andWithSharpOnesDoesNot(@TempDir Path folder) throws IOException {
        ObjectNode plan = plan(0.5);
        Run eased = model(plan, folder);
        assertThat(eased.exit()).as(eased.out() + eased.err()).isZero();
        assertThat(plan.at("/patterns/0/holes/0/requiredMm").asDouble())
                .isLessThan(plan(0).at("/patterns/0/holes/0/requiredMm").asDouble());

        plan.withObject("/inputs/collar").put("rimsMm", 0);
        Run sharp = model(plan, folder);
        assertThat(sharp.exit()).isEqualTo(1);
        assertThat(sharp.out()).contains("requiredMm").contains("tiltLimitDeg");
    }
}
