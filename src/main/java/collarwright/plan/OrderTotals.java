package collarwright.plan;

import collarwright.job.Order;
import collarwright.strut.StrutType;
import collarwright.tooling.Pattern;

/**
 * What is made for all domes of an order, spares included. Every strut type and every pattern gets its own spares; rings
 * are one type, and so are ties.
 *
 * @param collars of all patterns
 * @param struts of all types
 * @param rings centre rings
 * @param ties or pins, one for each strut end
 */
public record OrderTotals(int collars, int struts, int rings, int ties) {

    /**
     * Adds up an order.
     *
     * @param plan the plan
     * @return what is made; no collars where the plan has no patterns
     */
    public static OrderTotals of(Plan plan) {
        Order order = plan.job().order();
        int collars = 0;
        for (Pattern pattern : plan.book().patterns()) {
            collars = StrictMath.addExact(collars, order.made(pattern.count()));
        }
        int struts = 0;
        for (StrutType type : plan.struts().types()) {
            struts = StrictMath.addExact(struts, order.made(type.count()));
        }
        int hubs = plan.hubs().dome().nodeCount();
        int ends = 2 * plan.hubs().dome().memberCount();
        return new OrderTotals(collars, struts, order.made(hubs), order.made(ends));
    }

    /**
     * Counts plugs or caps: one for each end of every strut that is made.
     *
     * @return twice the struts, spares included
     */
    public int endParts() {
        return StrictMath.multiplyExact(2, struts);
    }
}
