package collarwright.collar;

/**
 * A strut that sits slanting between two edges and is pushed along beside its axis: from some way off, friction holds it,
 * however hard the push. A collar of length h on a round bar, loaded along the bar at the arm L from its axis, locks when
 * the coefficient of friction is above {@code h/(2L)} (J. L. Meriam, L. G. Kraige, J. N. Bolton, Engineering Mechanics:
 * Statics, 9th ed., Problem 6/110: h = 200 mm, L = 450 mm, 0.222). Rigid parts; no rating of what a joint holds.
 */
public final class SelfLocking {

    private SelfLocking() {}

    /**
     * Finds the friction from which a strut locks.
     *
     * @param bearing length along the strut between the two edges that it bears on
     * @param arm how far from the strut's axis it is pushed along, above 0
     * @return coefficient of friction
     */
    public static double leastFriction(double bearing, double arm) {
        return bearing / (2 * arm);
    }

    /**
     * Finds how far off its axis a strut may be pushed and still slides.
     *
     * @param bearing length along the strut between the two edges that it bears on
     * @param friction coefficient of friction, above 0
     * @return the arm
     */
    public static double farthestSliding(double bearing, double friction) {
        return bearing / (2 * friction);
    }

    /**
     * Finds the length that a leaning strut bears on: from the lowest point of the outer edge to the highest of the inner.
     *
     * @param hole height of the hole
     * @param wall thickness of the wall where it bears
     * @param lean of the strut
     * @return along the strut; nearly so where it touches beside the mid-plane or leans to the side
     */
    public static double bearingLength(double hole, double wall, double lean) {
        return wall * StrictMath.cos(lean) + hole * StrictMath.sin(lean);
    }
}
