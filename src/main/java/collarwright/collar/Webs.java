package collarwright.collar;

/** The material that is left between holes. */
public final class Webs {

    private static final int THIRDS = 100;

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
     * How far apart two holes are.
     *
     * @param gap azimuth from one to the other
     * @param rise height of the other above the one
     */
    public record Apart(double gap, double rise) {}

    /**
     * The web between two radial holes that may lie at different heights: the shortest way from outline to outline on the
     * developed wall. It is the largest gap that two parallel lines leave between the outlines, over all slopes of the
     * lines; where the holes run into each other, how far they would have to be moved apart, as a negative number.
     *
     * @param radius where to measure
     * @param apart how far apart the centres are
     * @param first diameter of one hole
     * @param second diameter of the other
     * @return length; −∞ if a hole is wider than the radius allows
     */
    public static double between(double radius, Apart apart, double first, double second) {
        if (apart.rise() == 0 || first >= 2 * radius || second >= 2 * radius) {
            return between(radius, apart.gap(), first, second);
        }
        double along = radius * apart.gap();
        double low = -StrictMath.PI / 2;
        double high = StrictMath.PI / 2;
        for (int i = 0; i < THIRDS; i++) {
            double one = low + (high - low) / 3;
            double two = high - (high - low) / 3;
            if (gap(radius, along, apart.rise(), first, second, one)
                    < gap(radius, along, apart.rise(), first, second, two)) {
                low = one;
            } else {
                high = two;
            }
        }
        return gap(radius, along, apart.rise(), first, second, (low + high) / 2);
    }

    private static double gap(double radius, double along, double rise, double first, double second, double slope) {
        double s = StrictMath.cos(slope);
        double z = StrictMath.sin(slope);
        return along * s + rise * z - support(radius, first / 2, s, z) - support(radius, second / 2, s, z);
    }

    // How far the outline s = R·arcsin(p·sin φ / R), z = p·cos φ reaches in a direction.
    private static double support(double radius, double p, double s, double z) {
        double k = p / radius;
        double square = 2 * s * s / (1 + StrictMath.sqrt(1 - 4 * k * k * z * z * s * s));
        double sine = StrictMath.sqrt(StrictMath.min(1, square));
        double cosine = StrictMath.sqrt(StrictMath.max(0, 1 - square));
        return StrictMath.abs(s) * radius * StrictMath.asin(k * sine) + StrictMath.abs(z) * p * cosine;
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
