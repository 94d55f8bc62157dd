package collarwright.dome;

/**
 * How a triangle of the base is broken down: from one corner of the base to the next it is b steps along a line of the
 * grid, then, turned left by 60° as seen from outside, c steps more.
 *
 * <p>Class I has c = 0 (its b is the frequency), class II has b = c, class III all others; (b, c) and (c, b) of class III
 * are mirror images. Source of the classes: J. D. Clinton, Advanced Structural Geometry Studies, Part I, NASA CR-1734,
 * 1971 (names from memory).
 *
 * @param b at least 1
 * @param c at least 0
 */
public record Breakdown(int b, int c) {

    /** The largest T. Our choice, no source: 250,000 nodes of an icosahedron. */
    public static final int MOST_T = 25_000;

    /** Checks the ranges. */
    public Breakdown {
        if (b < 1 || c < 0 || b > MOST_T || c > MOST_T || t(b, c) > MOST_T) {
            throw new IllegalArgumentException("no such breakdown: (" + b + ", " + c + ")");
        }
    }

    private static long t(long b, long c) {
        return b * b + b * c + c * c;
    }

    /**
     * Counts the small triangles of a face.
     *
     * @return T = b² + bc + c²
     */
    public int t() {
        return (int) t(b, c);
    }

    /**
     * Returns the class.
     *
     * @return 1, 2 or 3
     */
    public int geodesicClass() {
        return c == 0 ? 1 : b == c ? 2 : 3;
    }
}
