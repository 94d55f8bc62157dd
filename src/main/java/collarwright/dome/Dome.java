package collarwright.dome;

import collarwright.geometry.Vec3;

/**
 * A dome as unit nodes on a sphere and the members between them; its size comes later, because no angle depends on it.
 *
 * <p>Frame: origin at the sphere's centre, +z through the apex, +x the stated meridian, right-handed. Nodes stand in the
 * order of their tier (struts from the apex) and, within a tier, of their place: clockwise seen from above, from the +x
 * meridian. Members stand in the order of their first, then their second node; the first node is the one that comes
 * first in the order of nodes.
 *
 * <p>Kept as plain arrays inside, because a whole 64-frequency sphere has 40,962 nodes and 122,880 members; nothing
 * outside can change them.
 */
public final class Dome {

    private final DomeSettings settings;
    private final double[] coordinates;
    private final int[] tierStart;
    private final int[] members;

    Dome(DomeSettings settings, double[] coordinates, int[] tierStart, int[] members) {
        this.settings = settings;
        this.coordinates = coordinates;
        this.tierStart = tierStart;
        this.members = members;
    }

    /**
     * Builds the dome that the settings ask for.
     *
     * @param settings frequency and rows
     * @return its nodes on the unit sphere and its members
     */
    public static Dome of(DomeSettings settings) {
        // A class I icosahedron is laid out row by row; it is the most built, and by far the fastest this way.
        boolean rows = settings.base() == Base.ICOSAHEDRON
                && settings.breakdown().geodesicClass() == 1;
        return rows
                ? new IcosahedralRows(settings).build()
                : new Tiers(new SphereNet(settings.base(), settings.breakdown())).cut(settings);
    }

    /**
     * Returns what the dome was built from.
     *
     * @return the settings
     */
    public DomeSettings settings() {
        return settings;
    }

    /**
     * Counts the nodes.
     *
     * @return how many nodes (hubs) there are
     */
    public int nodeCount() {
        return coordinates.length / 3;
    }

    /**
     * Counts the members.
     *
     * @return how many members (struts) there are
     */
    public int memberCount() {
        return members.length / 2;
    }

    /**
     * Counts the tiers.
     *
     * @return tiers with the apex as the first, so rows + 1
     */
    public int tierCount() {
        return tierStart.length - 1;
    }

    /**
     * Returns the first node of a tier.
     *
     * @param tier 0 to {@link #tierCount()}; the last value gives the node count
     * @return node index, from 0
     */
    public int firstOfTier(int tier) {
        return tierStart[tier];
    }

    /**
     * Returns the tier of a node.
     *
     * @param node node index, from 0
     * @return struts from the apex
     */
    public int tierOf(int node) {
        int tier = java.util.Arrays.binarySearch(tierStart, node);
        return tier >= 0 ? tier : -tier - 2;
    }

    /**
     * Returns a node's first coordinate.
     *
     * @param node node index, from 0
     * @return x on the unit sphere
     */
    public double x(int node) {
        return coordinates[3 * node];
    }

    /**
     * Returns a node's second coordinate.
     *
     * @param node node index, from 0
     * @return y on the unit sphere
     */
    public double y(int node) {
        return coordinates[3 * node + 1];
    }

    /**
     * Returns a node's third coordinate.
     *
     * @param node node index, from 0
     * @return z on the unit sphere
     */
    public double z(int node) {
        return coordinates[3 * node + 2];
    }

    /**
     * Returns a node.
     *
     * @param node node index, from 0
     * @return its place on the unit sphere, which is also its hub's outward axis
     */
    public Vec3 node(int node) {
        return new Vec3(x(node), y(node), z(node));
    }

    /**
     * Returns the first node of a member: the one nearer to the apex, or else the earlier place.
     *
     * @param member member index, from 0
     * @return node index
     */
    public int memberA(int member) {
        return members[2 * member];
    }

    /**
     * Returns the second node of a member.
     *
     * @param member member index, from 0
     * @return node index
     */
    public int memberB(int member) {
        return members[2 * member + 1];
    }

    /**
     * Returns the chord factor of a member.
     *
     * @param member member index, from 0
     * @return distance of its nodes on the unit sphere
     */
    public double chordFactor(int member) {
        int a = 3 * members[2 * member];
        int b = 3 * members[2 * member + 1];
        double dx = coordinates[b] - coordinates[a];
        double dy = coordinates[b + 1] - coordinates[a + 1];
        double dz = coordinates[b + 2] - coordinates[a + 2];
        return StrictMath.sqrt(dx * dx + dy * dy + dz * dz);
    }

    /**
     * Names a node.
     *
     * @param node node index, from 0
     * @return tier and place, such as {@code T3-07}; places count from 1 and are padded to the widest tier
     */
    public String nodeId(int node) {
        int tier = tierOf(node);
        String place = Integer.toString(node - tierStart[tier] + 1);
        return "T" + tier + "-" + "0".repeat(placeDigits() - place.length()) + place;
    }

    private int placeDigits() {
        int widest = 1;
        for (int tier = 0; tier < tierCount(); tier++) {
            widest = StrictMath.max(widest, tierStart[tier + 1] - tierStart[tier]);
        }
        return Integer.toString(widest).length();
    }

    /**
     * Returns the largest horizontal distance of a foot node from the dome's axis.
     *
     * @return on the unit sphere; 0 for a whole sphere
     */
    public double footRadius() {
        double largest = 0;
        for (int node = tierStart[tierCount() - 1]; node < nodeCount(); node++) {
            largest = StrictMath.max(largest, StrictMath.sqrt(x(node) * x(node) + y(node) * y(node)));
        }
        return largest;
    }

    /**
     * Returns the height of the lowest foot node.
     *
     * @return z on the unit sphere
     */
    public double footZ() {
        double least = 1;
        for (int node = tierStart[tierCount() - 1]; node < nodeCount(); node++) {
            least = StrictMath.min(least, z(node));
        }
        return least;
    }
}
