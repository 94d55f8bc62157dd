package collarwright.cutting;

/**
 * How good a plan is. No plan costs less than {@code costBound}; none that costs as little takes fewer new sticks than
 * {@code sticksBound}.
 *
 * @param cost price of the new sticks; where there are no prices, their length in mm
 * @param costBound the least it can be, as far as is proven
 * @param sticks new sticks
 * @param sticksBound the least at that cost, as far as is proven
 * @param nodes steps that the search took; it is cut off by their number, never by time
 */
public record CutProof(double cost, double costBound, int sticks, int sticksBound, long nodes) {

    /**
     * Tells whether no plan is better.
     *
     * @return true if cost and sticks meet their bounds
     */
    public boolean proven() {
        return cost <= costBound && sticks <= sticksBound;
    }

    /**
     * Returns how far from its bound the cost may be.
     *
     * @return 0 where it is proven; else the part of the cost
     */
    public double gap() {
        return cost <= costBound ? 0 : (cost - costBound) / cost;
    }
}
