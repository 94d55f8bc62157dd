package collarwright.collar;

import collarwright.collar.RimContacts.State;
import collarwright.collar.RimContacts.Unknown;

/**
 * A round strut in a round hole that is drilled radially through a collar's curved wall, leaning in any direction: tilt
 * and swing together. In the plane of the collar's axis it gives the same as {@link RoundHole}, which is quicker.
 *
 * <p>The strut fits where a circle of its size fits inside both rims of the hole, seen along the strut; what lies between
 * the rims never binds. Sharp rims, rigid parts. A collar looks the same above and below and to both sides of a hole, so
 * only the size of tilt and swing counts.
 *
 * <p>Accuracy: as a rule angles within 1e-10 rad and sizes within 1e-10 of the hole's. In 200,000 drawn cases the size
 * that came back from a limit was at worst 6e-8 of the hole's off.
 */
public final class SwungContact {

    /** Enough to tell a hole to a millionth of a millionth of its size. */
    private static final int HALVINGS = 40;

    private SwungContact() {}

    /**
     * How far a strut can lean.
     *
     * @param lean an angle
     * @param binds whether the strut binds there; else it leans further than this form can tell
     */
    public record Limit(double lean, boolean binds) {}

    /**
     * Finds how far a strut can lean in one direction.
     *
     * @param strut strut diameter d
     * @param hole hole diameter D, at least d and below twice the inner radius
     * @param wall inner and outer radius of the collar
     * @param bearing the way it leans round the hole's axis: 0 straight down the collar's axis, a quarter turn sideways
     * @return the lean of {@link #limit}
     * @throws IllegalArgumentException if a size is out of its range
     */
    public static double tiltLimit(double strut, double hole, Wall wall, double bearing) {
        return limit(strut, hole, wall, bearing).lean();
    }

    /**
     * Finds how far a strut can lean in one direction, and whether it binds there.
     *
     * <p>The form holds up to 75° or a little less than the angle at which the bore is seen through the hole, which is less
     * the wider the hole is. But what passes a hole passes every wider one: where a strut does not bind within the form, it
     * leans at least as far as in any smaller hole, and that is what is returned.
     *
     * @param strut strut diameter d
     * @param hole hole diameter D, at least d and below twice the inner radius
     * @param wall inner and outer radius of the collar
     * @param bearing the way it leans round the hole's axis: 0 straight down the collar's axis, a quarter turn sideways
     * @return the lean at which it binds; or a lean that it has for certain. A wider hole never has less
     * @throws IllegalArgumentException if a size is out of its range
     */
    public static Limit limit(double strut, double hole, Wall wall, double bearing) {
        double lean = within(strut, hole, wall, bearing);
        if (lean < RimContacts.mostLean(hole / 2, wall.inner())) {
            return new Limit(lean, true);
        }
        // The widest hole in which it still binds within the form.
        double binding = strut;
        double free = hole;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (binding + free) / 2;
            Direction most = Direction.leaning(RimContacts.mostLean(middle / 2, wall.inner()), bearing);
            if (thickest(middle, most, wall) < strut) {
                binding = middle;
            } else {
                free = middle;
            }
        }
        return new Limit(RimContacts.mostLean(free / 2, wall.inner()), false);
    }

    private static double within(double strut, double hole, Wall wall, double bearing) {
        double axial = RoundHole.tiltLimit(strut, hole, wall.inner(), wall.outer());
        if (hole == strut) {
            return 0;
        }
        double start = StrictMath.min(axial, RimContacts.mostLean(hole / 2, wall.inner()));
        return RimContacts.solve(wall.seenAt(bearing), Unknown.LEAN, new State(strut / 2, hole / 2, start));
    }

    /**
     * Finds the thickest strut that can point in a direction.
     *
     * @param hole hole diameter D, below twice the inner radius
     * @param direction where the strut points
     * @param wall inner and outer radius of the collar
     * @return its diameter
     */
    public static double thickest(double hole, Direction direction, Wall wall) {
        double lean = direction.lean();
        if (lean == 0) {
            return hole;
        }
        State start = new State(hole / 2 * StrictMath.cos(lean), hole / 2, lean);
        return 2 * RimContacts.solve(wall.seenAt(direction.bearing()), Unknown.STRUT, start);
    }

    /**
     * Finds the least hole that lets a strut point in a direction.
     *
     * @param strut strut diameter d
     * @param direction where the strut points
     * @param wall inner and outer radius of the collar
     * @return the hole's diameter; positive infinity if no hole narrower than the bore does
     */
    public static double required(double strut, Direction direction, Wall wall) {
        double lean = direction.lean();
        double axial = RoundHole.required(strut, lean, wall.inner(), wall.outer());
        if (direction.swing() == 0 || axial == Double.POSITIVE_INFINITY) {
            return direction.swing() == 0 ? axial : Double.POSITIVE_INFINITY;
        }
        State start = new State(strut / 2, axial / 2, lean);
        double least = 2 * RimContacts.solve(wall.seenAt(direction.bearing()), Unknown.HOLE, start);
        return least < 2 * wall.inner() * (1 - 1e-6) ? least : Double.POSITIVE_INFINITY;
    }

    /**
     * The collar's wall where it bears.
     *
     * @param inner radius of the inner rim's cylinder
     * @param outer radius of the outer rim's cylinder, not below the inner
     */
    public record Wall(double inner, double outer) {
        /** Checks the radii. */
        public Wall {
            if (!(inner > 0 && outer >= inner)) {
                throw new IllegalArgumentException("a wall from " + inner + " to " + outer);
            }
        }

        /**
         * Returns the radius of the middle of the wall.
         *
         * @return half way from rim to rim
         */
        public double middle() {
            return (inner + outer) / 2;
        }

        private RimView seenAt(double bearing) {
            return new RimView(inner, outer, bearing);
        }
    }
}
