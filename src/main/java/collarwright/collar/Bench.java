package collarwright.collar;

import collarwright.collar.SwungContact.Wall;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One hole on the bench with the strut that is to lean in it.
 *
 * @param hole the hole
 * @param strut the strut's section
 * @param pipe the collar's wall
 * @param rims size of the 45° chamfer that eases both edges evenly; 0 for sharp ones
 */
public record Bench(Aperture hole, StrutSection strut, Wall pipe, double rims) {

    /** Which way a strut leans. */
    public sealed interface Way permits Toward, Swung {

        /**
         * Returns where the strut points when it leans that way.
         *
         * @param lean how far, or with a swing the tilt
         * @return the direction
         */
        Direction at(double lean);
    }

    /**
     * Toward a bearing.
     *
     * @param bearing round the radial line: 0 straight down the collar's axis, a quarter turn to positive swing
     */
    public record Toward(double bearing) implements Way {
        @Override
        public Direction at(double lean) {
            return Direction.leaning(lean, bearing);
        }
    }

    /**
     * In tilt, while it is swung to the side.
     *
     * @param swing what it is swung by
     */
    public record Swung(double swing) implements Way {
        @Override
        public Direction at(double lean) {
            return new Direction(lean, swing);
        }
    }

    /**
     * Returns the wall where it bears.
     *
     * @return the pipe's wall less its eased edges
     */
    public Wall bearing() {
        return new Wall(pipe.inner() + rims, pipe.outer() - rims);
    }

    /**
     * Finds how far the strut leans at one roll.
     *
     * @param way which way it leans
     * @param roll of an oval strut, from its largest diameter upright
     * @return from where to where; empty if the strut does not pass, or the hole does not go through
     */
    public Optional<HoleContact.Range> range(Way way, double roll) {
        Wall wall = bearing();
        if (!hole.goesThrough(wall) || strut.largest() >= 2 * wall.inner()) {
            return Optional.empty();
        }
        HoleContact contact = new HoleContact(hole, wall, strut, roll);
        return way instanceof Toward toward ? contact.toward(toward.bearing()) : contact.tilting(((Swung) way).swing());
    }

    /**
     * Finds the size that the hole needs at one roll, all else kept.
     *
     * @param way which way the strut leans
     * @param lean how far
     * @param roll of an oval strut
     * @return the size; empty if no hole of this kind does
     */
    public OptionalDouble required(Way way, double lean, double roll) {
        HoleContact.Seat seat = new HoleContact.Seat(way.at(lean), roll);
        double size = HoleContact.required(hole, bearing(), strut, seat);
        return size < Double.POSITIVE_INFINITY ? OptionalDouble.of(size) : OptionalDouble.empty();
    }

    Bench withHole(double size) {
        return new Bench(hole.withSize(size), strut, pipe, rims);
    }

    Bench withStrut(double more) {
        return new Bench(hole, strut.thicker(more), pipe, rims);
    }

    // The outside diameter stays.
    Bench withWall(double more) {
        return new Bench(hole, strut, new Wall(pipe.inner() - more, pipe.outer()), rims);
    }
}
