package collarwright.dome;

import collarwright.geometry.Vec3;

/**
 * What a dome is made of while it is worked out; each step takes one and makes another, and changes none of its arrays.
 *
 * @param source what it is built from
 * @param coordinates three for each node
 * @param axes three for each node, unit; the very array of the coordinates on a sphere, where they are the same
 * @param members first and second node of each
 * @param roles of the members
 * @param names of the nodes
 * @param feet nodes that stand on the ground, in their order
 * @param moved how far each node was brought to level the foot; empty if none was
 */
@SuppressWarnings("ArrayRecordComponent") // private to the package; never compared
record DomeParts(
        DomeSource source,
        double[] coordinates,
        double[] axes,
        int[] members,
        Role[] roles,
        NodeNames names,
        int[] feet,
        double[] moved) {

    int nodeCount() {
        return coordinates.length / 3;
    }

    int memberCount() {
        return members.length / 2;
    }

    Vec3 node(int node) {
        return vector(coordinates, node);
    }

    Vec3 axis(int node) {
        return vector(axes, node);
    }

    static Vec3 vector(double[] from, int node) {
        return new Vec3(from[3 * node], from[3 * node + 1], from[3 * node + 2]);
    }

    static void put(double[] to, int node, Vec3 vector) {
        to[3 * node] = vector.x();
        to[3 * node + 1] = vector.y();
        to[3 * node + 2] = vector.z();
    }

    boolean onSphere() {
        return axes == coordinates;
    }

    /** The middle that a frame is looked at from: the sphere's centre, or the middle of a frame's floor. */
    Vec3 middle() {
        if (source instanceof DomeSettings) {
            return new Vec3(0, 0, 0);
        }
        Vec3 sum = new Vec3(0, 0, 0);
        double lowest = Double.POSITIVE_INFINITY;
        for (int node = 0; node < nodeCount(); node++) {
            sum = sum.plus(node(node));
            lowest = StrictMath.min(lowest, node(node).z());
        }
        Vec3 mean = sum.times(1.0 / nodeCount());
        return feet.length == 0 ? mean : new Vec3(mean.x(), mean.y(), lowest);
    }

    DomeParts on(double[] newCoordinates, double[] newAxes) {
        return new DomeParts(source, newCoordinates, newAxes, members, roles, names, feet, moved);
    }
}
