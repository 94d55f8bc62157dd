package collarwright.dome;

/**
 * Which sphere a dome is cut from.
 *
 * @param base the solid
 * @param breakdown how each of its faces is broken down
 * @param subdivision how a face is divided; arcs only for class I
 * @param up what points up
 */
public record SphereSettings(Base base, Breakdown breakdown, Subdivision subdivision, Up up) {

    /** The highest frequency of class I: T = 24,964. */
    public static final int MAX_FREQUENCY = 158;

    /** Checks the ranges. */
    public SphereSettings {
        if (subdivision == Subdivision.ARCS && breakdown.c() > 0) {
            throw new IllegalArgumentException("equal arcs are for class I, not " + breakdown);
        }
    }

    /**
     * Tells whether the sphere has rows of triangles from its apex, which portions are counted in.
     *
     * @return true for a class I icosahedron, vertex up
     */
    public boolean hasRows() {
        return base == Base.ICOSAHEDRON && breakdown.geodesicClass() == 1 && up == Up.VERTEX;
    }

    /**
     * Counts the tiers of the whole sphere after the first: the struts on the shortest way from the apex to the node
     * farthest from it.
     *
     * @return 3n for a class I icosahedron of frequency n, vertex up
     */
    public int tiers() {
        return hasRows() ? 3 * breakdown.b() : Tiers.of(this).last();
    }

    /**
     * Counts the nodes of the whole sphere.
     *
     * @return aT + 2
     */
    public int nodes() {
        return base.nodesPerT() * breakdown.t() + 2;
    }

    /**
     * Counts the members of the whole sphere.
     *
     * @return 3aT
     */
    public int members() {
        return 3 * base.nodesPerT() * breakdown.t();
    }
}
