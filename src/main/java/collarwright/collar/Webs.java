package collarwright.collar;

/** The material that is left between holes. */
public final class Webs {

    private Webs() {}

    /**
     * The web between two radial holes on one height, along the circumference at a radius: {@code R·(δ − arcsin(p1/R) −
     * arcsin(p2/R))}.
     *
     * @param radius where to measure: the inner radius gives the least web
     * @param gap azimuth from one hole to the other, δ
     * @param first diameter of one hole
     * @param second diameter of the other
     * @return arc length; negative if the holes run into each other; −∞ if a hole is wider than the radius allows
     */
    public static double between(double radius, double gap, double first, double second) {
        if (first >= 2 * radius || second >= 2 * radius) {
            return Double.NEGATIVE_INFINITY;
        }
        return radius * (gap - StrictMath.asin(first / 2 / radius) - StrictMath.asin(second / 2 / radius));
    }

    /**
     * The web from a hole to the nearer edge of the collar.
     *
     * @param width of the collar
     * @param height of the hole's axis above the mid-plane
     * @param hole its diameter
     * @return length; negative if the hole breaks out
     */
    public static double toEdge(double width, double height, double hole) {
        return width / 2 - StrictMath.abs(height) - hole / 2;
    }
}
