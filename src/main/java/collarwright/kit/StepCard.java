package collarwright.kit;

import collarwright.assembly.RaisingStep;
import java.util.List;

/**
 * One card of the raising order: some hubs that come to stand one after another, and the struts that go in with them.
 *
 * @param number from 1
 * @param hubs nodes that come to stand, in order; none on a card that only closes gaps, and on the last card
 * @param steps struts in the proven order; none on the last card, on which the centre rings go in
 * @param firstOrder place of the first of them in the whole order, from 1; 0 where there are none
 */
public record StepCard(int number, List<Integer> hubs, List<RaisingStep> steps, int firstOrder) {

    /** Keeps the lists. */
    public StepCard {
        hubs = List.copyOf(hubs);
        steps = List.copyOf(steps);
    }

    /**
     * Tells whether it is the last card.
     *
     * @return true if the centre rings go in on it
     */
    public boolean rings() {
        return steps.isEmpty();
    }

    /**
     * Returns the place of its last strut in the whole order.
     *
     * @return from 1; 0 where there are none
     */
    public int lastOrder() {
        return steps.isEmpty() ? 0 : firstOrder + steps.size() - 1;
    }
}
