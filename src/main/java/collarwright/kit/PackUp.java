package collarwright.kit;

import collarwright.plan.Plan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Taking a dome down: the cards from the last to the first, and which bundles are full after each.
 *
 * @param card which card is undone
 * @param full ids of the bundles of one dome that are full now, in their order
 */
public record PackUp(StepCard card, List<String> full) {

    /** Keeps the list. */
    public PackUp {
        full = List.copyOf(full);
    }

    /**
     * Lists the steps of taking a dome down.
     *
     * @param plan the plan
     * @param cards its step cards in raising order
     * @param kit its bundles
     * @return the steps; every bundle of one dome becomes full once
     */
    public static List<PackUp> of(Plan plan, List<StepCard> cards, Kit kit) {
        CardWords words = new CardWords(plan);
        Map<String, Integer> off = new HashMap<>();
        List<Bundle> waiting = new ArrayList<>(kit.perDome());
        List<PackUp> steps = new ArrayList<>();
        for (int i = cards.size() - 1; i >= 0; i--) {
            StepCard card = cards.get(i);
            if (card.rings()) {
                off.merge("ring", plan.hubs().dome().nodeCount(), Integer::sum);
                off.merge("tie", 2 * plan.hubs().dome().memberCount(), Integer::sum);
                off.merge("cap", 2 * plan.hubs().dome().memberCount(), Integer::sum);
            } else {
                words.collars(card).forEach((id, count) -> off.merge(id, count, Integer::sum));
                words.struts(card).forEach((id, count) -> off.merge(id, count, Integer::sum));
            }
            List<String> full = new ArrayList<>();
            for (Bundle bundle : List.copyOf(waiting)) {
                int have = off.getOrDefault(bundle.part(), 0);
                if (have >= bundle.pieces()) {
                    off.put(bundle.part(), have - bundle.pieces());
                    waiting.remove(bundle);
                    full.add(bundle.id());
                }
            }
            steps.add(new PackUp(card, full));
        }
        if (!waiting.isEmpty()) {
            throw new IllegalStateException("bundles that stay open: " + waiting);
        }
        return steps;
    }
}
