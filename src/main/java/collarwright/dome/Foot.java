package collarwright.dome;

/** How a dome stands. */
public sealed interface Foot {

    /** Which plane a foot is levelled to. */
    enum Plane {
        /** The one with the least largest movement of a foot node. */
        LEAST_MOVE,
        /** The one that leaves the fewest strut types. */
        FEWEST_TYPES
    }

    /** The foot nodes stay where the breakdown puts them. */
    record Natural() implements Foot {}

    /**
     * The foot nodes are brought to one plane along their meridians.
     *
     * @param plane which plane
     */
    record Level(Plane plane) implements Foot {}

    /**
     * A level foot carried down by vertical struts to a second ring.
     *
     * @param plane which plane the shell's foot is levelled to
     * @param height from the shell's foot nodes down to the second ring, node to node, above 0
     * @param diagonals whether each quad between two risers gets a diagonal
     */
    record Riser(Plane plane, double height, boolean diagonals) implements Foot {
        /** Checks the height. */
        public Riser {
            if (!(height > 0 && height < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("a riser has a height, not " + height);
            }
        }
    }
}
