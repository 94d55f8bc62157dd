package collarwright.plan;

import collarwright.tooling.Pattern;
import java.util.ArrayList;
import java.util.List;

/**
 * What comes off the machine and is kept together: the collars of one pattern.
 *
 * @param number from 1, in the order of the patterns
 * @param pattern the pattern's id
 * @param pieces collars in it, spares included
 * @param spares how many of them are spares, 0 or more
 */
public record Box(int number, String pattern, int pieces, int spares) {

    /**
     * Sorts the collars of an order into boxes.
     *
     * @param plan the plan
     * @return one box for each pattern
     */
    public static List<Box> of(Plan plan) {
        List<Box> boxes = new ArrayList<>();
        for (Pattern pattern : plan.book().patterns()) {
            int made = plan.job().order().made(pattern.count());
            int needed = plan.job().order().domes() * pattern.count();
            boxes.add(new Box(boxes.size() + 1, pattern.id(), made, made - needed));
        }
        return boxes;
    }
}
