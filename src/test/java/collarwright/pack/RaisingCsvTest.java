package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.job.CsvForm;
import collarwright.plan.Plan;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The raising order as a table, held against the list of members. */
class RaisingCsvTest {

    private static List<Map<String, String>> rows(Table table) {
        return CsvRecords.rows(new String(table.csv(CsvForm.USUAL), StandardCharsets.UTF_8));
    }

    @Test
    void rows_haveEveryMemberOnce_inTheOrderThatTheMembersGive() {
        Plan plan = PackJobs.plan(PackJobs.metric());
        List<Map<String, String>> raising =
                rows(RaisingCsv.print(plan, plan.assembly().orElseThrow()));
        Map<String, Map<String, String>> members = new HashMap<>();
        rows(PackTables.members(plan))
                .forEach(row -> members.put(row.get("from node") + "/" + row.get("from hole"), row));
        assertThat(raising).hasSize(plan.hubs().dome().memberCount());
        for (int i = 0; i < raising.size(); i++) {
            Map<String, String> row = raising.get(i);
            Map<String, String> member =
                    members.get(row.get("hub that comes or is pushed into") + "/" + row.get("hole"));
            assertThat(row).containsEntry("order", Integer.toString(i + 1));
            assertThat(member)
                    .containsEntry("order in raising", row.get("order"))
                    .containsEntry("member", row.get("member"))
                    .containsEntry("to node", row.get("other hub"))
                    .containsEntry("to hole", row.get("other hole"))
                    .containsEntry("from hub type", row.get("hub type"))
                    .containsEntry("from strut end", row.get("strut end"));
            assertThat(row.get("how")).isIn("the hub comes with it", "push", "bow", "no room");
        }
        assertThat(raising.get(raising.size() - 1)).containsEntry("its holes still empty", "");
    }
}
