package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.job.CsvForm;
import collarwright.plan.Plan;
import collarwright.plan.Planner;
import collarwright.testing.DomeJobs;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class HubTableTest {

    @Test
    void hubTable_collarsUpsideDown_namesTheSideOfTop() throws IOException {
        Plan plan = Planner.plan(DomeJobs.read(DomeJobs.named("shared-jobs", "mirrored")), List.of());
        long flipped = IntStream.range(0, plan.hubs().dome().nodeCount())
                .filter(plan::flipped)
                .count();
        List<String> rows = new String(HubTable.print(plan).csv(CsvForm.USUAL), StandardCharsets.UTF_8)
                .lines()
                .toList();
        assertThat(rows.get(0)).contains("TOP of the collar");
        assertThat(rows.stream().filter(r -> r.contains(",inside,")).count()).isEqualTo(flipped);
        assertThat(rows.stream().filter(r -> r.contains(",outside,")).count())
                .isEqualTo(plan.hubs().dome().nodeCount() - flipped);
    }

    @Test
    void hubTable_withoutFlip_hasNoColumnForTop() {
        assertThat(new String(
                        HubTable.print(PackJobs.plan(PackJobs.metric())).csv(CsvForm.USUAL), StandardCharsets.UTF_8))
                .doesNotContain("TOP of the collar");
    }
}
