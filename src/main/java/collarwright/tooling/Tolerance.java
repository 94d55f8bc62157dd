package collarwright.tooling;

/**
 * How the tilt limit of a hole answers to the sizes of strut, hole and wall.
 *
 * @param spread half the width of the interval that the limit lies in if the sizes spread by chance: root-sum-square of
 *     what each of them does alone
 * @param perHole change of the limit for 0.1 mm more hole
 * @param perStrut the same for more strut
 * @param perWall the same for more wall, the outside diameter kept
 */
public record Tolerance(double spread, double perHole, double perStrut, double perWall) {

    /** Of a hole whose tolerance nobody asked for. */
    public static final Tolerance NONE = new Tolerance(0, 0, 0, 0);

    /** What {@link #perHole} and its like are given for. */
    public static final double STEP = 0.1;
}
