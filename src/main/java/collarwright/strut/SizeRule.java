package collarwright.strut;

/** What fixes the size of the dome. All sizes are to nodes (where the strut axes meet), above 0. */
public sealed interface SizeRule {

    /**
     * Returns the given size.
     *
     * @return mm
     */
    double value();

    /**
     * The radius of the sphere.
     *
     * @param value centre to node
     */
    record Radius(double value) implements SizeRule {}

    /**
     * The floor diameter.
     *
     * @param value twice the largest horizontal distance of a foot node from the dome's axis
     */
    record FloorDiameter(double value) implements SizeRule {}

    /**
     * The height.
     *
     * @param value apex node to lowest foot node, along the dome's axis
     */
    record Height(double value) implements SizeRule {}

    /**
     * The longest strut.
     *
     * @param value cut length of the strut type that is cut longest
     */
    record LongestStrut(double value) implements SizeRule {}
}
