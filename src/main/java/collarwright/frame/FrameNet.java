package collarwright.frame;

import collarwright.geometry.Vec3;
import collarwright.units.Letters;
import java.util.Arrays;

/**
 * The nodes and members of a frame, in mm, +z up.
 *
 * <p>Nodes stand in the order of the file. Members stand in the order of their lower, then their higher node.
 */
public final class FrameNet {

    private final double[] coordinates;
    private final int[] members;

    /**
     * A frame.
     *
     * @param coordinates three for each node, finite
     * @param members two nodes for each, the lower first
     */
    public FrameNet(double[] coordinates, int[] members) {
        this.coordinates = coordinates.clone();
        this.members = members.clone();
        for (double coordinate : coordinates) {
            if (!Double.isFinite(coordinate)) {
                throw new IllegalArgumentException("a coordinate of " + coordinate);
            }
        }
        for (int m = 0; m < members.length; m += 2) {
            if (members[m] < 0 || members[m] >= members[m + 1] || members[m + 1] >= coordinates.length / 3) {
                throw new IllegalArgumentException("a member from " + members[m] + " to " + members[m + 1]);
            }
        }
    }

    /**
     * Counts the nodes.
     *
     * @return how many
     */
    public int nodeCount() {
        return coordinates.length / 3;
    }

    /**
     * Counts the members.
     *
     * @return how many
     */
    public int memberCount() {
        return members.length / 2;
    }

    /**
     * Returns a node.
     *
     * @param node index from 0
     * @return its place, mm
     */
    public Vec3 node(int node) {
        return new Vec3(coordinates[3 * node], coordinates[3 * node + 1], coordinates[3 * node + 2]);
    }

    /**
     * Returns a member's first node.
     *
     * @param member index from 0
     * @return the lower of its two nodes
     */
    public int memberA(int member) {
        return members[2 * member];
    }

    /**
     * Returns a member's second node.
     *
     * @param member index from 0
     * @return the higher of its two nodes
     */
    public int memberB(int member) {
        return members[2 * member + 1];
    }

    /**
     * Returns all coordinates.
     *
     * @return three for each node, a copy
     */
    public double[] coordinates() {
        return coordinates.clone();
    }

    /**
     * Returns all members.
     *
     * @return two nodes for each, a copy
     */
    public int[] members() {
        return members.clone();
    }

    /**
     * Returns letters that stand for the exact frame.
     *
     * @return 8 letters; equal for equal frames
     */
    public String digest() {
        StringBuilder text = new StringBuilder();
        for (double coordinate : coordinates) {
            text.append(Double.toHexString(coordinate + 0.0)).append(' ');
        }
        for (int node : members) {
            text.append(node).append(' ');
        }
        return Letters.of(text.toString());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof FrameNet net
                && Arrays.equals(coordinates, net.coordinates)
                && Arrays.equals(members, net.members);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(coordinates) + Arrays.hashCode(members);
    }

    @Override
    public String toString() {
        return "frame " + digest() + " of " + nodeCount() + " nodes and " + memberCount() + " members";
    }
}
