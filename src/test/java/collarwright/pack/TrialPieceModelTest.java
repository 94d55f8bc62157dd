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

/** A measured bearing wall reaches the plan file, and the independent model finds the same leans and holes with it. */
class TrialPieceModelTest {

    private static ObjectNode plan() throws IOException {
        return (ObjectNode) new ObjectMapper().readTree(PlanJson.write(PackJobs.plan(PackJobs.tried()), List.of()));
    }

    private static Run model(ObjectNode plan, Path folder) throws IOException {
        Path file = folder.resolve("plan.json");
        Files.write(file, new ObjectMapper().writeValueAsBytes(plan));
        return Run.of(List.of(
                "/usr/bin/python3", ProjectFolder.checkerScript("plan_model.py").toString(), file.toString()));
    }

    @Test
    void inputs_tellTheTrialPiece_andNotesNameIt() throws IOException {
        ObjectNode plan = plan();
        assertThat(plan.at("/inputs/collar/trialPiece/bearingWallMm").asDouble())
                .isEqualTo(1.2);
        assertThat(plan.at("/inputs/collar/trialPiece/oversizeMaxMm").asDouble())
                .isEqualTo(0.22);
        assertThat(plan.at("/findings").toString())
                .contains("bearing wall 1.2 mm (0.9 to 1.5 mm) from trial piece shed-160");
    }

    @Test
    @NeedsChecker(Checker.EZDXF) // the same Python
    void model_withTheSameBearingWall_agrees_andWithTheFullWallDoesNot(@TempDir Path folder) throws IOException {
        ObjectNode plan = plan();
        Run tried = model(plan, folder);
        assertThat(tried.exit()).as(tried.out() + tried.err()).isZero();

        plan.withObject("/inputs/collar").remove("trialPiece");
        Run full = model(plan, folder);
        assertThat(full.exit()).isEqualTo(1);
        assertThat(full.out()).contains("requiredMm").contains("tiltLimitDeg");
    }
}
