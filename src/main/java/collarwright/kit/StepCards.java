package collarwright.kit;

import collarwright.assembly.Assembly;
import collarwright.assembly.RaisingOrder.Stage;
import collarwright.assembly.RaisingStep;
import collarwright.hub.Hubs;
import collarwright.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/** Cuts the proven raising order into step cards, without changing it. */
public final class StepCards {

    /** So many hubs at most on a card: a group that one looks at without counting. Our choice, no source. */
    private static final int HUBS = 5;

    /** Larger domes have one card for each go around a tier. Our choice, no source. */
    private static final int MOST_HUBS = 400;

    private final Hubs hubs;
    private final CardWords words;
    private final boolean[] stands;
    private final List<StepCard> cards = new ArrayList<>();
    private int order = 1;

    private StepCards(Plan plan) {
        this.hubs = plan.hubs();
        this.words = new CardWords(plan);
        this.stands = new boolean[hubs.dome().nodeCount()];
    }

    /**
     * Makes the cards.
     *
     * @param plan the plan
     * @param assembly how its frame goes together
     * @return in raising order, the card with the centre rings last; all steps of the order in their order
     */
    public static List<StepCard> of(Plan plan, Assembly assembly) {
        StepCards making = new StepCards(plan);
        assembly.order().stages().forEach(making::stage);
        making.cards.add(new StepCard(making.cards.size() + 1, List.of(), List.of(), 0));
        return List.copyOf(making.cards);
    }

    private void stage(Stage stage) {
        boolean large = hubs.dome().nodeCount() > MOST_HUBS;
        List<List<RaisingStep>> goes = large ? List.of(stage.steps()) : byHub(stage.steps());
        List<RaisingStep> open = new ArrayList<>();
        for (List<RaisingStep> go : goes) {
            List<RaisingStep> longer = new ArrayList<>(open);
            longer.addAll(go);
            StepCard card = card(longer);
            if (!open.isEmpty() && (card.hubs().size() > HUBS || words.count(card) > CardWords.MOST)) {
                close(open);
                open.clear();
            }
            open.addAll(go);
        }
        close(open);
    }

    // Steps up to the next one that brings a hub to stand.
    private List<List<RaisingStep>> byHub(List<RaisingStep> steps) {
        boolean[] now = stands.clone();
        List<List<RaisingStep>> goes = new ArrayList<>();
        for (RaisingStep step : steps) {
            int a = hubs.nodeAtA(step.member());
            int b = hubs.nodeAtB(step.member());
            if (goes.isEmpty() || !now[a] || !now[b]) {
                goes.add(new ArrayList<>());
            }
            now[a] = true;
            now[b] = true;
            goes.get(goes.size() - 1).add(step);
        }
        return goes;
    }

    private StepCard card(List<RaisingStep> steps) {
        List<Integer> rising = new ArrayList<>();
        for (RaisingStep step : steps) {
            for (int node : List.of(hubs.nodeAtA(step.member()), hubs.nodeAtB(step.member()))) {
                if (!stands[node] && !rising.contains(node)) {
                    rising.add(node);
                }
            }
        }
        return new StepCard(cards.size() + 1, rising, steps, order);
    }

    private void close(List<RaisingStep> steps) {
        StepCard card = card(steps);
        card.hubs().forEach(node -> stands[node] = true);
        order += steps.size();
        cards.add(card);
    }
}
