package collarwright.machining;

import collarwright.stock.RoundStock;

/**
 * A strut in its seat, seen from its end: how high and how low it may stand.
 *
 * <p>Z0 is the axis of a strut of nominal diameter. One that is thicker by e stands on a flat seat with its crown e higher; in
 * a V that opens by 2h its axis rises by e/(2 sin h), so its crown by e (1 + 1/sin h)/2, which is less than 2 e where the V
 * opens by 40° or more; one that is thinner by e comes down by less than e.
 *
 * @param stock what struts are cut from
 */
public record StrutBar(RoundStock stock) {

    /**
     * Returns how far a diameter may be off the nominal one.
     *
     * @return the larger of what it may be more and less, and out of round
     */
    public double play() {
        double more = stock.od().max() - stock.od().nominal();
        double less = stock.od().nominal() - stock.od().min();
        return StrictMath.max(more, less) + stock.outOfRound();
    }

    /**
     * Returns the crown of a strut of nominal diameter.
     *
     * @return Z, above 0
     */
    public double crown() {
        return stock.outerRadius();
    }

    /**
     * Returns the highest that a crown can stand.
     *
     * @return Z
     */
    public double highest() {
        return crown() + 2 * play();
    }

    /**
     * Returns the lowest that the far side can lie.
     *
     * @return Z, below 0
     */
    public double lowest() {
        return -(crown() + play());
    }
}
