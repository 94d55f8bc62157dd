package collarwright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.picture.TrialPlans;
import collarwright.plan.Plan;
import collarwright.plan.Planner;
import collarwright.plan.Uphill;
import collarwright.testing.DomeJobs;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whoever hangs the collars is told which go on upside down. */
class UpsideDownPapersTest {

    private static Plan plan(String job) throws IOException {
        return Planner.plan(DomeJobs.read(DomeJobs.named("shared-jobs", job)), List.of());
    }

    private static List<Integer> flipped(Plan plan) {
        return IntStream.range(0, plan.hubs().dome().nodeCount())
                .filter(plan::flipped)
                .boxed()
                .toList();
    }

    private static String text(List<String> pages, String about) {
        return pages.stream()
                .filter(p -> p.startsWith(about))
                .collect(Collectors.joining())
                .replaceAll("\\s+", " ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"mirrored", "mirrored-shared"})
    void traveller_collarsUpsideDown_saysSoWhereverTheyAreHung(String job) throws IOException {
        Plan plan = plan(job);
        List<String> pages = PdfText.pages(Traveller.print(TrialPapers.of(plan)));
        String hubs = text(pages, "Hubs ");
        assertThat(hubs).contains("unless the row says TOP inside");
        for (int node : flipped(plan)) {
            assertThat(hubs).contains("TOP inside, " + Uphill.of(plan, node).words());
        }
        assertThat(text(pages, "Dome ")).contains("A double ring: the collar goes on upside down, TOP inside.");
        for (int type = 0; type < plan.hubs().types().size(); type++) {
            String page = text(
                    pages,
                    "Pattern "
                            + plan.book()
                                    .patterns()
                                    .get(plan.placement(type).pattern())
                                    .id() + ", checks");
            if (plan.placement(type).flipped()) {
                assertThat(page)
                        .contains("TOP inside: these collars go on upside down")
                        .contains(" inside");
            }
        }
    }

    @Test
    void papers_noCollarUpsideDown_sayNothingOfIt() {
        Plan plan = TrialPlans.windbreak();
        assertThat(PdfText.pages(Traveller.print(TrialPapers.of(plan)))).noneMatch(p -> p.contains("upside down"));
        assertThat(new String(FrontPage.print(TrialPapers.of(plan)), StandardCharsets.UTF_8))
                .doesNotContain("upside down");
    }
}
