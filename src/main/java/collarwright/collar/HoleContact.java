package collarwright.collar;

import collarwright.collar.SwungContact.Wall;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * Where a strut binds in a hole of any shape. A round strut in a round radial hole goes through {@link SwungContact}, which
 * is exact and some ten thousand times quicker; all else through {@link ProjectedRims}.
 */
public final class HoleContact {

    private static final double NEAR = 1e-8;
    /** Sine of a bearing that is straight up or down. */
    private static final double UPRIGHT = 1e-12;
    /** Of the hole's size: a strut that is thicker by less still passes. */
    private static final double HAIR = 1e-7;
    /** Sizes that are tried, from the strut's to the largest, until one is large enough. */
    private static final int SIZES = 64;

    private final Aperture hole;
    private final Wall wall;
    private final StrutSection strut;
    private final double roll;
    private final Optional<ProjectedRims> rims;

    /**
     * Prepares a hole and its strut.
     *
     * @param hole the hole
     * @param wall the collar's wall where it bears
     * @param strut the strut's section
     * @param roll of an oval strut: from its largest diameter upright
     * @throws IllegalArgumentException if the hole does not go through the wall whole
     */
    public HoleContact(Aperture hole, Wall wall, StrutSection strut, double roll) {
        this.hole = hole;
        this.wall = wall;
        this.strut = strut;
        this.roll = roll;
        this.rims = hole instanceof RoundAperture && strut.isRound()
                ? Optional.empty()
                : Optional.of(new ProjectedRims(hole, wall));
    }

    /**
     * How far a strut can lean.
     *
     * @param least above 0 where it cannot stand straight, or below where it can lean back beyond
     * @param most where it binds
     * @param binds whether it does; else it leans that far for certain, and further than can be told
     */
    public record Range(double least, double most, boolean binds) {}

    /**
     * Finds how far the strut can lean toward a bearing.
     *
     * @param bearing which way, round the radial line: 0 straight down the collar's axis
     * @return from where to where; empty if it passes nowhere on that way
     */
    public Optional<Range> toward(double bearing) {
        if (rims.isEmpty()) {
            return passes() ? Optional.of(exact(bearing)) : Optional.empty();
        }
        return range(LeanPath.toward(hole, wall, bearing));
    }

    private Range exact(double bearing) {
        if (StrictMath.abs(StrictMath.sin(bearing)) < UPRIGHT) {
            double limit = RoundHole.tiltLimit(strut.largest(), hole.size(), wall.inner(), wall.outer());
            return new Range(0, limit, true);
        }
        SwungContact.Limit limit = SwungContact.limit(strut.largest(), hole.size(), wall, bearing);
        return new Range(0, limit.lean(), limit.binds());
    }

    private boolean passes() {
        return hole.size() >= strut.largest();
    }

    /**
     * Finds how far the strut can lean away from the hole's own axis.
     *
     * @param bearing which way, round that axis
     * @return the angle from that axis; empty if the strut does not pass along it
     */
    public Optional<Double> away(double bearing) {
        return rims.isEmpty()
                ? toward(bearing).map(Range::most)
                : range(LeanPath.away(hole, wall, bearing)).map(Range::most);
    }

    /**
     * Finds how far a strut that is swung to the side can tilt.
     *
     * @param swing the swing
     * @return from which tilt to which; empty if it passes at none
     */
    public Optional<Range> tilting(double swing) {
        if (!passesSomewhere()) {
            return Optional.empty();
        }
        Optional<Range> found = range(LeanPath.tilting(hole, wall, swing));
        return rims.isEmpty() ? found.map(range -> widened(range, swing)) : found;
    }

    // What passes a round hole passes every wider one, so a wider hole never has less.
    private Range widened(Range found, double swing) {
        if (found.binds()) {
            return found;
        }
        double most = found.most();
        double step = (hole.limit(wall) - strut.largest()) / SIZES;
        for (double size = strut.largest() + step; size < hole.size(); size += step) {
            HoleContact smaller = new HoleContact(hole.withSize(size), wall, strut, roll);
            Optional<Range> range = smaller.range(LeanPath.tilting(smaller.hole, wall, swing));
            most = StrictMath.max(most, range.map(Range::most).orElse(0.0));
        }
        return new Range(found.least(), most, false);
    }

    private boolean passesSomewhere() {
        return rims.isPresent() || passes();
    }

    /**
     * Returns the hole's own axis.
     *
     * @return where a strut passes best
     */
    public Direction axis() {
        return hole.axis();
    }

    /**
     * Finds how thick a strut of this shape could be.
     *
     * @param direction where it points
     * @return the largest diameter
     */
    public double thickest(Direction direction) {
        return rims.isPresent()
                ? rims.get().thickest(direction, strut, roll)
                : SwungContact.thickest(hole.size(), direction, wall);
    }

    private Optional<Range> range(LeanPath path) {
        DoubleUnaryOperator spare = lean -> thickest(path.at().apply(lean)) - strut.largest();
        double start = path.start();
        if (spare.applyAsDouble(start) < -HAIR * hole.size()) {
            return Optional.empty();
        }
        // A slot as wide as the strut lets it pass at many leans by a hair.
        DoubleUnaryOperator room = spare.applyAsDouble(start) <= HAIR * hole.size()
                ? lean -> spare.applyAsDouble(lean) + 2 * HAIR * hole.size()
                : spare;
        boolean binds = room.applyAsDouble(path.most()) < 0;
        return Optional.of(new Range(end(room, start, 0), end(room, start, path.most()), binds));
    }

    private static double end(DoubleUnaryOperator spare, double start, double end) {
        if (spare.applyAsDouble(end) >= 0) {
            return end;
        }
        return spare.applyAsDouble(start) <= 0 ? start : Crossing.between(spare, start, end, NEAR);
    }

    /**
     * Finds the least hole of its kind that lets the strut point in a direction.
     *
     * @param hole the kind of hole, in any size
     * @param wall the collar's wall where it bears
     * @param strut the strut's section
     * @param seat where it points and, if oval, how it is turned
     * @return its size; positive infinity if none does that goes through the wall whole
     */
    public static double required(Aperture hole, Wall wall, StrutSection strut, Seat seat) {
        if (hole instanceof RoundAperture && strut.isRound()) {
            return SwungContact.required(strut.largest(), seat.direction(), wall);
        }
        DoubleUnaryOperator spare = size -> spare(hole.withSize(size), wall, strut, seat);
        double top = hole.limit(wall);
        double step = (top - strut.smallest()) / SIZES;
        double below = strut.smallest() * (1 - HAIR);
        for (int i = 1; i < SIZES; i++) {
            double size = strut.smallest() + i * step;
            if (spare.applyAsDouble(size) >= 0) {
                return Crossing.between(spare, size, below, NEAR * size);
            }
            below = size;
        }
        return Double.POSITIVE_INFINITY;
    }

    // Less than nothing where the hole does not go through, or is seen too flat.
    private static double spare(Aperture hole, Wall wall, StrutSection strut, Seat seat) {
        boolean seen = hole.goesThrough(wall)
                && hole.mostLean(wall) >= seat.direction().lean();
        return (seen ? new ProjectedRims(hole, wall).thickest(seat.direction(), strut, seat.roll()) : 0)
                - strut.largest();
    }

    /**
     * How a strut sits in its hole.
     *
     * @param direction where it points
     * @param roll of an oval strut: from its largest diameter upright
     */
    public record Seat(Direction direction, double roll) {}
}
