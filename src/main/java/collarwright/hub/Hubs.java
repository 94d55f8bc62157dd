package collarwright.hub;

import collarwright.dome.Dome;
import java.util.List;

/**
 * All hubs of a dome: which are equal, how each is turned, and which hole takes which member.
 *
 * <p>Steps: 1. members of one chord factor, axial angles and twist are one strut type. 2. Around each node the struts are put in clockwise order
 * and their gaps measured in the hub's plane. 3. Hubs whose cycles of (gap, axial angle, strut type) agree up to
 * rotation are one type; its holes are numbered from the lexicographically least cycle.
 *
 * <p>Equal means within an {@link Alike}, always against the first of a kind, so that small differences do not chain.
 */
public final class Hubs {

    private final Dome dome;
    private final List<StrutShape> strutShapes;
    private final List<HubType> types;
    private final Tables tables;

    Hubs(Dome dome, List<StrutShape> strutShapes, List<HubType> types, Tables tables) {
        this.dome = dome;
        this.strutShapes = List.copyOf(strutShapes);
        this.types = List.copyOf(types);
        this.tables = tables;
    }

    /**
     * Per node and per member, by index; never handed out.
     *
     * @param typeOfNode hub type index
     * @param turnOfNode azimuth of uphill from the 0° line
     * @param strutTypeOfMember strut type index
     * @param reversed whether a member's first node is at its type's end b
     * @param holeOfEnd hole index at the first (even) and second node (odd) of each member
     */
    @SuppressWarnings("ArrayRecordComponent") // private to the package; never compared
    record Tables(
            int[] typeOfNode, double[] turnOfNode, int[] strutTypeOfMember, boolean[] reversed, byte[] holeOfEnd) {}

    /**
     * Finds the hubs of a dome.
     *
     * @param dome the dome
     * @return its hubs
     */
    public static Hubs of(Dome dome) {
        return of(dome, Alike.EXACT);
    }

    /**
     * Finds the hubs of a dome.
     *
     * @param dome the dome
     * @param alike how near two struts or hubs have to be to be of one type
     * @return its hubs
     */
    public static Hubs of(Dome dome, Alike alike) {
        return new HubFinder(dome, alike).find();
    }

    /**
     * Returns the dome.
     *
     * @return the dome that these hubs belong to
     */
    public Dome dome() {
        return dome;
    }

    /**
     * Returns the strut types.
     *
     * @return shortest first
     */
    public List<StrutShape> strutShapes() {
        return strutShapes;
    }

    /**
     * Returns the hub types.
     *
     * @return in the order of their first nodes
     */
    public List<HubType> types() {
        return types;
    }

    /**
     * Returns the type of a node's hub.
     *
     * @param node node index
     * @return index into {@link #types()}
     */
    public int typeOf(int node) {
        return tables.typeOfNode()[node];
    }

    /**
     * Returns where uphill is on a node's collar.
     *
     * @param node node index
     * @return azimuth of "up the dome" (+z projected on the hub's plane; +x at the apex and its antipode) from the 0°
     *     line, clockwise from above, in [0, 2π); for a hub that looks the same when turned, the least of the possible
     */
    public double turnOf(int node) {
        return tables.turnOfNode()[node];
    }

    /**
     * Returns the strut type of a member.
     *
     * @param member member index
     * @return index into {@link #strutShapes()}
     */
    public int strutTypeOf(int member) {
        return tables.strutTypeOfMember()[member];
    }

    /**
     * Returns the node at the end a of a member's type.
     *
     * @param member member index
     * @return node index; the member's first node where both ends are alike
     */
    public int nodeAtA(int member) {
        return tables.reversed()[member] ? dome.memberB(member) : dome.memberA(member);
    }

    /**
     * Returns the node at the end b of a member's type.
     *
     * @param member member index
     * @return node index
     */
    public int nodeAtB(int member) {
        return tables.reversed()[member] ? dome.memberA(member) : dome.memberB(member);
    }

    /**
     * Returns the hole that the end a of a member goes into.
     *
     * @param member member index
     * @return hole number at {@link #nodeAtA}, from 1
     */
    public int holeAtA(int member) {
        return tables.holeOfEnd()[2 * member + (tables.reversed()[member] ? 1 : 0)] + 1;
    }

    /**
     * Returns the hole that the end b of a member goes into.
     *
     * @param member member index
     * @return hole number at {@link #nodeAtB}, from 1
     */
    public int holeAtB(int member) {
        return tables.holeOfEnd()[2 * member + (tables.reversed()[member] ? 0 : 1)] + 1;
    }
}
