package collarwright.dome;

/**
 * The form of the shell.
 *
 * @param heightFactor 1 for a sphere; otherwise an ellipsoid, its height over its horizontal size, 0.1 to 10
 * @param axis how the axes of its hubs are laid
 */
public record Form(double heightFactor, Axis axis) {

    /** A sphere. */
    public static final Form SPHERE = new Form(1, Axis.FITTED);

    /** The flattest form. Our choice, no source. */
    public static final double LEAST_FACTOR = 0.1;

    /** The steepest form. Our choice, no source. */
    public static final double MOST_FACTOR = 10;

    /** How the axes of hubs are laid. */
    public enum Axis {
        /** Radial on a sphere, square to the best fitting curved surface on any other form. */
        FITTED,
        /** So that the struts of a hub lean as equally as they can. */
        EVEN_TILTS
    }

    /** Checks the range. */
    public Form {
        if (!(heightFactor >= LEAST_FACTOR && heightFactor <= MOST_FACTOR)) {
            throw new IllegalArgumentException("no such height factor: " + heightFactor);
        }
    }
}
