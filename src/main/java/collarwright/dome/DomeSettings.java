package collarwright.dome;

/**
 * Which dome to build: a base broken down with equal chords on its flat faces, a corner up, cut off after a row.
 *
 * @param base the solid
 * @param breakdown how each of its faces is broken down
 * @param rows rows of triangles kept from the apex; the dome then has tiers 0 to rows. At most {@link #allRows}
 */
public record DomeSettings(Base base, Breakdown breakdown, int rows) {

    /** The highest frequency of class I. */
    public static final int MAX_FREQUENCY = 64;

    /** Checks the ranges. */
    public DomeSettings {
        boolean tooFine = breakdown.geodesicClass() == 1 && breakdown.b() > MAX_FREQUENCY;
        if (tooFine || rows < 1 || rows > allRows(base, breakdown)) {
            throw new IllegalArgumentException("no such dome: " + base + " " + breakdown + ", rows " + rows);
        }
    }

    /**
     * An icosahedron of class I.
     *
     * @param frequency 1 to 64
     * @param rows 1 to 3 · frequency
     */
    public DomeSettings(int frequency, int rows) {
        this(Base.ICOSAHEDRON, new Breakdown(frequency, 0), rows);
    }

    /**
     * Counts the rows of a whole sphere: the struts on the shortest way from the apex to the node farthest from it.
     *
     * @param base the solid
     * @param breakdown of its faces
     * @return 3n for a class I icosahedron of frequency n, 2n for such an octahedron
     */
    public static int allRows(Base base, Breakdown breakdown) {
        if (breakdown.geodesicClass() == 1 && base != Base.TETRAHEDRON) {
            return (base == Base.ICOSAHEDRON ? 3 : 2) * breakdown.b();
        }
        return new Tiers(new SphereNet(base, breakdown)).last();
    }

    /**
     * Tells whether the whole sphere is kept.
     *
     * @return true if no row is cut off
     */
    public boolean whole() {
        return rows == allRows(base, breakdown);
    }
}
