package collarwright.machining;

/**
 * How many sticks and layouts an order takes, beside the least that any plan could take.
 *
 * @param sticks sticks that are run
 * @param leastSticks no plan takes fewer, whatever lies beside what
 * @param layouts different sticks, each with its own set of programs
 * @param leastLayouts proven: no plan with as many sticks, under the same rule, has fewer layouts
 */
public record StickCount(int sticks, int leastSticks, int layouts, int leastLayouts) {

    /** Nothing to run. */
    public static final StickCount NONE = new StickCount(0, 0, 0, 0);

    /** Checks that nothing lies below its bound. */
    public StickCount {
        if (leastSticks < 0 || leastLayouts < 0 || sticks < leastSticks || layouts < leastLayouts) {
            throw new IllegalArgumentException("fewer than the least: " + sticks + " sticks, " + layouts + " layouts");
        }
    }

    /**
     * Returns whether no plan takes fewer sticks.
     *
     * @return true if the bound is reached
     */
    public boolean fewestSticks() {
        return sticks == leastSticks;
    }

    /**
     * Returns whether no plan with as many sticks takes fewer layouts.
     *
     * @return true if that is proven
     */
    public boolean fewestLayouts() {
        return layouts == leastLayouts;
    }
}
