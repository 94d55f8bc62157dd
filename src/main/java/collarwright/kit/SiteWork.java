package collarwright.kit;

import collarwright.plan.Plan;
import java.util.List;
import java.util.Optional;

/**
 * All that the site pack is printed from.
 *
 * @param connections strut ends and holes, both ways
 * @param kit bundles
 * @param cards step cards in raising order
 * @param packUp the cards from the last to the first, with the bundles that fill
 * @param labels what labels say
 */
public record SiteWork(Connections connections, Kit kit, List<StepCard> cards, List<PackUp> packUp, SiteLabels labels) {

    /** Keeps the lists. */
    public SiteWork {
        cards = List.copyOf(cards);
        packUp = List.copyOf(packUp);
    }

    /**
     * Works it out.
     *
     * @param plan the plan
     * @return empty where a finding keeps the frame from being put together
     */
    public static Optional<SiteWork> of(Plan plan) {
        return plan.assembly().filter(a -> !plan.book().patterns().isEmpty()).map(assembly -> {
            Connections connections = Connections.of(plan);
            Kit kit = Kit.of(plan);
            List<StepCard> cards = StepCards.of(plan, assembly);
            return new SiteWork(
                    connections, kit, cards, PackUp.of(plan, cards, kit), SiteLabels.of(plan, connections, kit));
        });
    }
}
