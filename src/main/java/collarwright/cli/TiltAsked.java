package collarwright.cli;

import collarwright.collar.Bench;
import collarwright.collar.Direction;
import java.util.Optional;

/**
 * What {@code tilt} was asked, all of it read and possible.
 *
 * @param bench hole and strut; of a hole that was looked for, the size that was found
 * @param way which way the strut leans
 * @param lean how far it needs to lean, if that was given
 * @param wall of the collar, as it was given
 * @param found whether the hole's size was looked for
 */
record TiltAsked(Bench bench, Bench.Way way, Optional<Double> lean, double wall, boolean found) {

    Optional<Direction> need() {
        return lean.map(way::at);
    }

    double outsideDiameter() {
        return 2 * bench.pipe().outer();
    }
}
