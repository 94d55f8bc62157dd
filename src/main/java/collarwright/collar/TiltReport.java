package collarwright.collar;

import collarwright.collar.Bench.Toward;
import collarwright.collar.Bench.Way;
import collarwright.collar.HoleContact.Range;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * One hole on the bench: where a strut binds in it, and how much each size matters.
 *
 * @param leanFrom how far the strut has to lean at least to pass; 0 in a radial hole
 * @param tiltLimit the lean at which the strut binds, at its worst roll if it is oval
 * @param binds whether it binds there; else it leans that far for certain, and further than can be told
 * @param worstRoll the roll it has it at, from the largest diameter upright
 * @param best the same at its best roll
 * @param bestRoll that roll
 * @param slopes how much each size matters, at the worst roll
 */
public record TiltReport(
        double leanFrom,
        double tiltLimit,
        boolean binds,
        double worstRoll,
        double best,
        double bestRoll,
        Slopes slopes) {

    /** The step that sensitivities are given for. */
    public static final double STEP = 0.1;

    private static final double LEAST_STEP = 1e-4;

    /**
     * Change of the tilt limit for {@value #STEP} mm more of one size.
     *
     * @param perHole of the hole
     * @param perStrut of the strut
     * @param perWall of the wall, the outside diameter kept
     */
    public record Slopes(double perHole, double perStrut, double perWall) {}

    /**
     * Reports on a hole.
     *
     * @param bench hole and strut
     * @param way which way the strut leans
     * @return tilt limit and sensitivities; empty if the strut does not pass at every roll. Sensitivities are taken over
     *     as much of a step to both sides as the strut still passes
     */
    public static Optional<TiltReport> of(Bench bench, Way way) {
        Rolls rolls = Rolls.of(bench.strut(), roll -> most(bench.range(way, roll)));
        Optional<Range> range = bench.range(way, rolls.leastRoll());
        if (range.isEmpty() || rolls.least() < 0) {
            return Optional.empty();
        }
        double limit = range.get().most();
        DoubleFunction<Optional<Range>> hole =
                more -> bench.withHole(bench.hole().size() + more).range(way, rolls.leastRoll());
        DoubleFunction<Optional<Range>> strut = more -> more > -bench.strut().smallest() / 2
                ? bench.withStrut(more).range(way, rolls.leastRoll())
                : Optional.empty();
        double wall = bench.bearing().outer() - bench.bearing().inner();
        DoubleFunction<Optional<Range>> walls =
                more -> more > -wall && bench.pipe().inner() > more
                        ? bench.withWall(more).range(way, rolls.leastRoll())
                        : Optional.empty();
        Slopes slopes = new Slopes(slope(limit, hole), slope(limit, strut), slope(limit, walls));
        return Optional.of(new TiltReport(
                range.get().least(),
                limit,
                range.get().binds(),
                rolls.leastRoll(),
                rolls.most(),
                rolls.mostRoll(),
                slopes));
    }

    private static double most(Optional<Range> range) {
        return range.map(Range::most).orElse(-1.0);
    }

    private static double slope(double limit, DoubleFunction<Optional<Range>> changed) {
        Side above = side(limit, changed, 1);
        Side below = side(limit, changed, -1);
        double span = above.at() - below.at();
        return span > 0 ? (above.limit() - below.limit()) * STEP / span : 0;
    }

    /** How far a size could be changed, and the limit there. */
    private record Side(double at, double limit) {}

    private static Side side(double limit, DoubleFunction<Optional<Range>> changed, int sign) {
        for (double step = STEP / 2; step > LEAST_STEP; step /= 4) {
            Optional<Range> range = changed.apply(sign * step);
            if (range.isPresent()) {
                return new Side(sign * step, range.get().most());
            }
        }
        return new Side(0, limit);
    }

    /**
     * Tells whether the strut touches the inner edge beside the mid-plane, where the flat-board form is too generous.
     *
     * @param bench hole and strut
     * @param way which way the strut leans
     * @return empty where the formula does not hold: for other than round radial holes and round struts, or to the side
     */
    public Optional<Boolean> beside(Bench bench, Way way) {
        boolean axial = way instanceof Toward toward && StrictMath.abs(StrictMath.sin(toward.bearing())) < 1e-12;
        if (!(bench.hole() instanceof RoundAperture && bench.strut().isRound() && axial)) {
            return Optional.empty();
        }
        double held = StrictMath.cos(tiltLimit) / (bench.hole().size() / 2)
                + StrictMath.sin(tiltLimit) / bench.bearing().inner();
        return Optional.of(held > 1 / (bench.strut().largest() / 2));
    }
}
