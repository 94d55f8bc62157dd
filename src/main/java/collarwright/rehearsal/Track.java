package collarwright.rehearsal;

import java.util.List;

/**
 * A closed track on the unrolled outside of a pipe.
 *
 * @param spots its corners; the last is joined to the first
 */
record Track(List<Spot> spots) {

    Track {
        spots = List.copyOf(spots);
    }

    /**
     * A place.
     *
     * @param x along the pipe
     * @param arc round it
     */
    record Spot(double x, double arc) {
        double to(Spot other) {
            return StrictMath.hypot(other.x - x, other.arc - arc);
        }
    }

    /** How far a place lies from the track. */
    double near(Spot spot) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < spots.size(); i++) {
            Spot a = spots.get(i);
            Spot b = spots.get((i + 1) % spots.size());
            double dx = b.x - a.x;
            double dy = b.arc - a.arc;
            double square = dx * dx + dy * dy;
            double share = square > 0 ? ((spot.x - a.x) * dx + (spot.arc - a.arc) * dy) / square : 0;
            double at = StrictMath.max(0, StrictMath.min(1, share));
            double offX = a.x + at * dx - spot.x;
            double offY = a.arc + at * dy - spot.arc;
            least = StrictMath.min(least, offX * offX + offY * offY);
        }
        return StrictMath.sqrt(least);
    }

    /** How far a place lies outside of the track; below 0 inside. */
    double outside(Spot spot) {
        return holds(spot) ? -near(spot) : near(spot);
    }

    /** Counts how often a ray from the place crosses the track. */
    private boolean holds(Spot spot) {
        boolean in = false;
        for (int i = 0; i < spots.size(); i++) {
            Spot a = spots.get(i);
            Spot b = spots.get((i + 1) % spots.size());
            if ((a.arc > spot.arc) != (b.arc > spot.arc)
                    && spot.x < a.x + (spot.arc - a.arc) / (b.arc - a.arc) * (b.x - a.x)) {
                in = !in;
            }
        }
        return in;
    }
}
