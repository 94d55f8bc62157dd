package collarwright.plan;

import collarwright.cutting.CutPlan;
import collarwright.stock.RoundStock;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What to pull from the store for one kind of part, for all domes and spares.
 *
 * @param role what it is for
 * @param stock the pipe, tube or bar
 * @param pieces how many parts are cut from it
 * @param netLength length of all parts together, without cuts
 * @param kerf width of one cut, where it is known
 * @param plan which part is cut from which stick; of collars that a machine drills on sticks, which of its sticks is cut from
 *     which stock. Empty where they are made of strip, or where nobody knows the lengths that the stock is sold in
 * @param forMachine whether the plan cuts the sticks of a machine, by the names of their layouts, in place of the parts:
 *     collars that are drilled and parted on sticks
 */
public record StockNeed(
        Role role,
        RoundStock stock,
        int pieces,
        double netLength,
        OptionalDouble kerf,
        Optional<CutPlan> plan,
        boolean forMachine) {

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
     * Returns the length with one cut for every part.
     *
     * @return net length and cuts; only the net length where the width of a cut is not known
     */
    public double length() {
        return netLength + pieces * kerf.orElse(0);
    }
}
