package collarwright.kit;

import collarwright.job.Job;
import collarwright.plan.Plan;
import collarwright.plan.Planner;
import collarwright.testing.DomeJobs;
import collarwright.testing.ProjectFolder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;

/** Plans of the samples and of other domes, for tests of what goes to the site. */
final class SiteSamples {

    private SiteSamples() {}

    static Plan sample(String name) {
        return plan(ProjectFolder.top().resolve("output-samples").resolve(name).resolve("job.toml"));
    }

    static Plan plan(Path file) {
        try {
            Job job = DomeJobs.read(file);
            return Planner.plan(job, List.of());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Plan> all() throws IOException {
        List<Plan> plans =
                new java.util.ArrayList<>(List.of(sample("orchard-net"), sample("seedling-house"), sample("cloche")));
        DomeJobs.files().forEach(file -> plans.add(plan(file)));
        DomeJobs.shared().forEach(file -> plans.add(plan(file)));
        return plans;
    }
}
