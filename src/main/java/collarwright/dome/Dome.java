package collarwright.dome;

import collarwright.finding.Finding;
import collarwright.geometry.Vec3;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A dome as nodes, hub axes and members; its size comes later, because no angle depends on it.
 *
 * <p>Frame: origin at the sphere's centre, +z through the apex, +x the stated meridian, right-handed; the unit is the
 * horizontal radius. Nodes stand in the order of their tier (struts from the apex) and, within a tier, of their place:
 * clockwise seen from above, from the +x meridian. Members stand in the order of their first, then their second node;
 * the first node is the one that comes first in the order of nodes.
 *
 * <p>Kept as plain arrays inside, because a whole sphere may have 250,000 nodes; nothing outside can change them.
 */
public final class Dome {

    private final DomeParts parts;

    Dome(DomeParts parts) {
        this.parts = parts;
    }

    /**
     * Builds the shell that the settings ask for: without what is measured in mm, which are risers and openings.
     *
     * @param source which dome
     * @return its nodes, hub axes and members
     */
    public static Dome of(DomeSource source) {
        if (source instanceof FrameSettings frame) {
            return new Dome(FrameParts.of(frame));
        }
        DomeSettings settings = (DomeSettings) source;
        boolean rows = settings.sphere().hasRows()
                && settings.sphere().subdivision() == Subdivision.CHORDS
                && settings.cut() instanceof Cut.Tiers;
        // Rows are the most built, and by far the fastest this way.
        DomeParts natural = rows
                ? new IcosahedralRows(settings).build()
                : Tiers.of(settings.sphere()).cut(settings);
        return new Dome(formed(stood(natural, settings.foot()), settings.form()));
    }

    private static DomeParts stood(DomeParts natural, Foot foot) {
        if (foot instanceof Foot.Level level) {
            return FootLevel.level(natural, level.plane());
        }
        return foot instanceof Foot.Riser riser ? FootLevel.level(natural, riser.plane()) : natural;
    }

    private static DomeParts formed(DomeParts round, Form form) {
        if (form.equals(Form.SPHERE)) {
            return round;
        }
        double[] coordinates = round.coordinates().clone();
        for (int node = 0; node < round.nodeCount(); node++) {
            coordinates[3 * node + 2] *= form.heightFactor();
        }
        DomeParts shaped = round.on(coordinates, coordinates);
        double[] axes = HubAxes.of(shaped, form.axis());
        double square = form.heightFactor() * form.heightFactor();
        for (int node = 0; node < round.nodeCount(); node++) {
            // Where the struts leave the axis open, as three in one plane do, it is square to the ellipsoid.
            if (Double.isNaN(axes[3 * node])) {
                Vec3 at = shaped.node(node);
                DomeParts.put(axes, node, new Vec3(at.x(), at.y(), at.z() / square).unit());
            } else if (DomeParts.vector(axes, node).dot(shaped.node(node)) < 0) {
                DomeParts.put(axes, node, DomeParts.vector(axes, node).times(-1));
            }
        }
        return shaped.on(coordinates, axes);
    }

    /**
     * Adds what is measured in mm: risers, and openings with their rims.
     *
     * @param radius mm of the shell's unit
     * @param girth how thick struts and collars are, which doorways are kept clear of
     * @param findings takes what is wrong with the openings, and what is to be known of them
     * @return the whole frame; this dome itself where there is nothing to add
     */
    public Dome finished(double radius, Girth girth, List<Finding> findings) {
        Optional<Foot.Riser> riser = parts.source() instanceof DomeSettings settings
                        && settings.foot() instanceof Foot.Riser wanted
                        && parts.feet().length > 0
                ? Optional.of(wanted)
                : Optional.empty();
        List<Opening> openings = parts.source().openings();
        if (riser.isEmpty() && openings.isEmpty()) {
            return this;
        }
        DomeParts standing = riser.map(r -> Risers.under(parts, r.height() / radius, r.diagonals()))
                .orElse(parts);
        return new Dome(Openings.cut(standing, openings, new Openings.Measure(radius, girth), findings));
    }

    /**
     * Returns what the dome was built from.
     *
     * @return the source
     */
    public DomeSource source() {
        return parts.source();
    }

    /**
     * Tells whether every node lies on the unit sphere with its hub's axis radial.
     *
     * @return true for spheres without risers
     */
    public boolean onSphere() {
        return parts.onSphere();
    }

    /**
     * Counts the nodes.
     *
     * @return how many nodes (hubs) there are
     */
    public int nodeCount() {
        return parts.nodeCount();
    }

    /**
     * Counts the members.
     *
     * @return how many members (struts) there are
     */
    public int memberCount() {
        return parts.memberCount();
    }

    /**
     * Tells whether nodes are named by tier and place.
     *
     * @return false for a frame from outside, whose nodes are numbered
     */
    public boolean hasTiers() {
        return parts.names().hasTiers();
    }

    /**
     * Counts the tiers.
     *
     * @return tiers with the apex as the first; 1 where nodes are numbered
     */
    public int tierCount() {
        return parts.names().tierCount();
    }

    /**
     * Returns the first node of a tier.
     *
     * @param tier 0 to {@link #tierCount()}; the last value gives the node count
     * @return node index, from 0
     */
    public int firstOfTier(int tier) {
        return parts.names().firstOfTier(tier);
    }

    /**
     * Returns the tier of a node.
     *
     * @param node node index, from 0
     * @return struts from the apex
     */
    public int tierOf(int node) {
        return parts.names().tier(node);
    }

    /**
     * Returns the tier of a node as its id counts it.
     *
     * @param node node index, from 0
     * @return from the apex, or from the foot where the settings say so
     */
    public int countedTier(int node) {
        return parts.names().countedTier(node);
    }

    /**
     * Returns the place of a node in its tier; it stays what it is when neighbours are left out.
     *
     * @param node node index, from 0
     * @return from 1, clockwise from above
     */
    public int placeOf(int node) {
        return parts.names().place(node);
    }

    /**
     * Names a node.
     *
     * @param node node index, from 0
     * @return tier and place, such as {@code T3-07}, padded to the widest tier; {@code F} for tiers from the foot;
     *     {@code N007} in a frame from outside
     */
    public String nodeId(int node) {
        return parts.names().id(node);
    }

    /**
     * Returns a node's first coordinate.
     *
     * @param node node index, from 0
     * @return x
     */
    public double x(int node) {
        return parts.coordinates()[3 * node];
    }

    /**
     * Returns a node's second coordinate.
     *
     * @param node node index, from 0
     * @return y
     */
    public double y(int node) {
        return parts.coordinates()[3 * node + 1];
    }

    /**
     * Returns a node's third coordinate.
     *
     * @param node node index, from 0
     * @return z
     */
    public double z(int node) {
        return parts.coordinates()[3 * node + 2];
    }

    /**
     * Returns a node.
     *
     * @param node node index, from 0
     * @return its place
     */
    public Vec3 node(int node) {
        return parts.node(node);
    }

    /**
     * Returns a hub's axis.
     *
     * @param node node index, from 0
     * @return unit, outward, the way the collar's TOP faces; NaN where the struts do not determine one
     */
    public Vec3 axis(int node) {
        return parts.axis(node);
    }

    /**
     * Tells how well the axes of a member's two hubs face one side of the frame.
     *
     * @param member member index, from 0
     * @return 1 wholly, as on any sphere; −1 when they face opposite sides
     */
    public double facing(int member) {
        return Outward.facing(parts, parts.axes(), member);
    }

    /**
     * Returns how far a node was moved to level the foot.
     *
     * @param node node index, from 0
     * @return in the dome's unit; 0 where it was not
     */
    public double moved(int node) {
        return parts.moved().length == 0 ? 0 : parts.moved()[node];
    }

    /**
     * Returns what a member is there for.
     *
     * @param member member index, from 0
     * @return its role
     */
    public Role role(int member) {
        return parts.roles().length == 0 ? Role.SHELL : parts.roles()[member];
    }

    /**
     * Returns the nodes that stand on the ground.
     *
     * @return node indexes, rising; empty for a whole sphere
     */
    public List<Integer> feet() {
        return Arrays.stream(parts.feet()).boxed().toList();
    }

    /**
     * Returns the first node of a member: the one nearer to the apex, or else the earlier place.
     *
     * @param member member index, from 0
     * @return node index
     */
    public int memberA(int member) {
        return parts.members()[2 * member];
    }

    /**
     * Returns the second node of a member.
     *
     * @param member member index, from 0
     * @return node index
     */
    public int memberB(int member) {
        return parts.members()[2 * member + 1];
    }

    /**
     * Returns the chord factor of a member.
     *
     * @param member member index, from 0
     * @return distance of its nodes in the dome's unit
     */
    public double chordFactor(int member) {
        double[] at = parts.coordinates();
        int a = 3 * parts.members()[2 * member];
        int b = 3 * parts.members()[2 * member + 1];
        double dx = at[b] - at[a];
        double dy = at[b + 1] - at[a + 1];
        double dz = at[b + 2] - at[a + 2];
        return StrictMath.sqrt(dx * dx + dy * dy + dz * dz);
    }

    /**
     * Returns the largest horizontal distance of a foot node from the dome's axis.
     *
     * @return in the dome's unit; 0 for a whole sphere
     */
    public double footRadius() {
        double largest = 0;
        for (int node : parts.feet()) {
            largest = StrictMath.max(largest, StrictMath.sqrt(x(node) * x(node) + y(node) * y(node)));
        }
        return largest;
    }

    /**
     * Returns the height of the lowest node.
     *
     * @return z in the dome's unit
     */
    public double lowestZ() {
        double least = Double.POSITIVE_INFINITY;
        for (int node = 0; node < nodeCount(); node++) {
            least = StrictMath.min(least, z(node));
        }
        return least;
    }

    /**
     * Returns the height of the highest node.
     *
     * @return z in the dome's unit
     */
    public double highestZ() {
        double most = Double.NEGATIVE_INFINITY;
        for (int node = 0; node < nodeCount(); node++) {
            most = StrictMath.max(most, z(node));
        }
        return most;
    }

    /**
     * Returns a point inside, which the dome is drawn from.
     *
     * @return the sphere's centre; the middle of the floor of a frame from outside
     */
    public Vec3 middle() {
        return parts.middle();
    }
}
