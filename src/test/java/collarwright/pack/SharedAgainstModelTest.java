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
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Shared patterns and holes at several heights against the independent model, which lays every strut's line in space, finds
 * contacts as largest circles in the rims' outlines, and searches the fewest patterns by itself.
 */
class SharedAgainstModelTest {

    static List<Path> jobs() throws IOException {
        return DomeJobs.shared();
    }

    @ParameterizedTest
    @MethodSource("jobs")
    @NeedsChecker(Checker.EZDXF) // the same Python
    void plan_ofSharedPatterns_agreesWithTheModel(Path job, @TempDir Path folder) throws IOException {
        Path file = folder.resolve("plan.json");
        Files.write(file, PlanJson.write(Planner.plan(DomeJobs.read(job), List.of()), List.of()));

        Run model = Run.of(List.of(
                "/usr/bin/python3",
                ProjectFolder.checkerScript("plan_model.py").toString(),
                file.toString(),
                "--fewest"));

        assertThat(model.exit()).as(model.out() + model.err()).isZero();
        assertThat(model.out()).contains("agrees");
    }
}
