package collarwright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.assembly.RaisingStep;
import collarwright.plan.Plan;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class StepCardsTest {

    private static List<SiteWork> works(List<Plan> plans) {
        return plans.stream().flatMap(plan -> SiteWork.of(plan).stream()).toList();
    }

    @Test
    void cards_haveTwelveWordsAtMost() throws IOException {
        for (Plan plan : SiteSamples.all()) {
            CardWords words = new CardWords(plan);
            for (SiteWork work : works(List.of(plan))) {
                for (StepCard card : work.cards()) {
                    String text = card.number() + " " + String.join(" ", words.lines(card));
                    assertThat(text.split("\\s+")).as(text).hasSizeLessThanOrEqualTo(12);
                }
            }
        }
    }

    @Test
    void cards_tellFirstAndLastOrderNumber_andToHoldWhereAStrutIsHeld() throws IOException {
        int told = 0;
        for (Plan plan : SiteSamples.all()) {
            CardWords words = new CardWords(plan);
            for (SiteWork work : works(List.of(plan))) {
                int before = 0;
                for (StepCard card : work.cards()) {
                    if (card.rings()) {
                        continue;
                    }
                    int last = before + card.steps().size();
                    String range = last == before + 1 ? last + ":" : before + 1 + "–" + last + ":";
                    assertThat(words.lines(card)).anyMatch(line -> line.startsWith("Struts " + range));
                    assertThat(words.lines(card).contains("Hold up"))
                            .isEqualTo(card.steps().stream().anyMatch(RaisingStep::held));
                    before = last;
                    told++;
                }
            }
        }
        assertThat(told).isPositive();
    }

    @Test
    void cards_keepTheProvenOrder_andBringEveryHubOnce() throws IOException {
        for (Plan plan : SiteSamples.all()) {
            for (SiteWork work : works(List.of(plan))) {
                List<RaisingStep> steps = new ArrayList<>();
                List<Integer> hubs = new ArrayList<>();
                for (StepCard card : work.cards()) {
                    assertThat(card.rings() || card.firstOrder() == steps.size() + 1)
                            .isTrue();
                    steps.addAll(card.steps());
                    hubs.addAll(card.hubs());
                }
                assertThat(steps)
                        .isEqualTo(plan.assembly().orElseThrow().order().steps());
                assertThat(hubs)
                        .containsExactlyInAnyOrderElementsOf(
                                IntStream.range(0, plan.hubs().dome().nodeCount())
                                        .boxed()
                                        .toList());
                assertThat(work.cards().get(work.cards().size() - 1).rings()).isTrue();
            }
        }
    }

    @Test
    void connections_ofEveryDome_agreeBothWays() throws IOException {
        for (Plan plan : SiteSamples.all()) {
            for (SiteWork work : works(List.of(plan))) {
                assertThat(work.connections().byHub())
                        .containsExactlyInAnyOrderElementsOf(work.connections().byStrut())
                        .hasSize(2 * plan.hubs().dome().memberCount());
            }
        }
    }
}
