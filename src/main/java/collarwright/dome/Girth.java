package collarwright.dome;

/**
 * How thick the parts of a frame are about their axes and nodes.
 *
 * @param strut largest radius of a strut, mm, 0 or more
 * @param collar outside radius of a collar, mm, 0 or more
 */
public record Girth(double strut, double collar) {

    /** A frame of bare axes and nodes. */
    public static final Girth NONE = new Girth(0, 0);

    /** Checks the radii. */
    public Girth {
        if (!(strut >= 0 && collar >= 0 && strut + collar < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("no radii: " + strut + ", " + collar);
        }
    }
}
