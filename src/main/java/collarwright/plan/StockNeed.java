package collarwright.plan;

import collarwright.collar.HubSettings;
import collarwright.job.Job;
import collarwright.machining.Machine;
import collarwright.stock.RoundStock;
import collarwright.strut.StrutType;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What to pull from the store for one kind of part, for all domes and spares.
 *
 * @param role what it is for
 * @param stock the pipe, tube or bar
 * @param pieces how many parts are cut from it
 * @param netLength length of all parts together, without cuts
 * @param kerf width of one cut, where the machine's profile tells it
 */
public record StockNeed(Role role, RoundStock stock, int pieces, double netLength, OptionalDouble kerf) {

    /** What stock is for. */
    public enum Role {
        /** Struts. */
        STRUT,
        /** Collars. */
        COLLAR,
        /** Centre rings. */
        RING
    }

    /**
     * Lists what a plan needs.
     *
     * @param plan the plan
     * @return struts, collars and rings, in this order; ties are not stock
     */
    public static List<StockNeed> of(Plan plan) {
        Job job = plan.job();
        HubSettings hub = job.hub();
        OrderTotals made = OrderTotals.of(plan);
        double struts = 0;
        for (StrutType type : plan.struts().types()) {
            struts += job.order().made(type.count()) * type.cut();
        }
        Machine machine = job.shop().machine();
        OptionalDouble parting =
                machine.programmed() ? OptionalDouble.of(machine.rotary().partingKerf()) : OptionalDouble.empty();
        return List.of(
                new StockNeed(Role.STRUT, job.strut().stock(), made.struts(), struts, OptionalDouble.empty()),
                new StockNeed(Role.COLLAR, hub.collar(), made.collars(), made.collars() * hub.width(), parting),
                new StockNeed(
                        Role.RING, hub.ring(), made.rings(), made.rings() * hub.ringWidth(), OptionalDouble.empty()));
    }

    /**
     * Returns the length with one cut for every part.
     *
     * @return net length and cuts; only the net length where the width of a cut is not known
     */
    public double length() {
        return netLength + pieces * kerf.orElse(0);
    }
}
