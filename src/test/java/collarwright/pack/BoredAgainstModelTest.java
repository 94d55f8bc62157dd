package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.plan.Planner;
import collarwright.testing.Checker;
import collarwright.testing.DomeJobs;
import collarwright.testing.NeedsChecker;
import collarwright.testing.ProjectFolder;
import collarwright.testing.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bored sizes and the end mills for them against the independent model. */
class BoredAgainstModelTest {

    @Test
    @NeedsChecker(Checker.EZDXF) // the same Python
    void plan_ofABoredJob_agreesWithTheModel(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("plan.json");
        Files.write(
                file,
                PlanJson.write(Planner.plan(DomeJobs.read(DomeJobs.named("bored", "hutch")), List.of()), List.of()));

        Run model = Run.of(List.of(
                "/usr/bin/python3", ProjectFolder.checkerScript("plan_model.py").toString(), file.toString()));

        assertThat(model.exit()).as(model.out() + model.err()).isZero();
        assertThat(model.out()).contains("agrees");
        assertThat(Files.readString(file)).contains("\"boredWith\"");
    }
}
