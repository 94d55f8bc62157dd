package collarwright.collar;

import collarwright.collar.SwungContact.Wall;
import java.util.List;

/**
 * The shape of one hole in a collar's wall and the way it is made, as the edges that a strut may touch. What lies between
 * the edges never binds.
 */
public sealed interface Aperture permits RoundAperture, TiltedDrilling, Slot, RolledFlat, RadialCut, Countersunk {

    /**
     * Returns the size that is looked for when a strut is to lean further.
     *
     * @return diameter of the cutter, or width of a slot
     */
    double size();

    /**
     * Changes that size; all else that was stated stays.
     *
     * @param other the size
     * @return the same kind of hole in that size
     */
    Aperture withSize(double other);

    /**
     * Returns the size that the hole has to stay below.
     *
     * @param wall the collar's wall where it bears
     * @return mm; from there on it breaks out of the bore, or has another shape
     */
    double limit(Wall wall);

    /**
     * Returns the edges.
     *
     * @param wall the collar's wall where it bears
     * @return closed curves; a strut fits where its section lies inside all of them, seen along the strut
     */
    List<Rim> rims(Wall wall);

    /**
     * Returns how far the hole reaches from its centre.
     *
     * @param wall the collar's wall where it bears
     * @return mm, along the circumference or the axis, whichever is more; not less than half the size
     */
    double reach(Wall wall);

    /**
     * Tells whether the hole goes through the wall whole.
     *
     * @param wall the collar's wall where it bears
     * @return false if it breaks out of the bore or leaves no edge somewhere
     */
    default boolean goesThrough(Wall wall) {
        return size() > 0 && size() < limit(wall) && reach(wall) < wall.inner();
    }

    /**
     * Returns the direction in which a strut passes best.
     *
     * @return the hole's own axis
     */
    default Direction axis() {
        return new Direction(0, 0);
    }

    /**
     * Tells up to which lean the edges are seen as a plain outline, one inside out of the other nowhere.
     *
     * @param wall the collar's wall where it bears
     * @return an angle from the radial line, at most 75°
     */
    default double mostLean(Wall wall) {
        return RimContacts.mostLean(reach(wall), wall.inner());
    }
}
