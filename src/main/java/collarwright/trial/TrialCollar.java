package collarwright.trial;

/**
 * The collar that is tried.
 *
 * @param outerRadius outside radius
 * @param wall thickness, below the radius
 */
public record TrialCollar(double outerRadius, double wall) {
    /** Checks the sizes. */
    public TrialCollar {
        if (!(wall > 0 && wall < outerRadius)) {
            throw new IllegalArgumentException("a wall of " + wall + " in a collar of radius " + outerRadius);
        }
    }

    /**
     * Returns the radius of the middle of the wall.
     *
     * @return outside radius less half the wall
     */
    double middle() {
        return outerRadius - wall / 2;
    }

    /**
     * Returns the diameter of the bore.
     *
     * @return twice the inside radius
     */
    double bore() {
        return 2 * (outerRadius - wall);
    }
}
