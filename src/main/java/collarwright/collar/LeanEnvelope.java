package collarwright.collar;

import collarwright.collar.SwungContact.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;

/**
 * How far a strut can lean in its hole, all the way round.
 *
 * @param axis the hole's own axis: the limits are seen from it
 * @param limits the directions in which the strut binds, at even bearings about the axis, the first straight down the
 *     collar's axis, the next toward positive swing
 */
public record LeanEnvelope(Direction axis, List<Direction> limits) {

    /** One bearing every 5°. */
    public static final int BEARINGS = 72;

    /** Keeps the limits. */
    public LeanEnvelope {
        limits = List.copyOf(limits);
    }

    /**
     * Finds the envelope of a round strut in a round radial hole. It is the same above and below and to both sides, so only
     * a quarter is computed; less than a millisecond.
     *
     * @param strut strut diameter, at most the hole's
     * @param hole hole diameter, below the bore's
     * @param wall the collar's wall where it bears
     * @return the limits at {@link #BEARINGS} bearings
     */
    public static LeanEnvelope round(double strut, double hole, Wall wall) {
        Direction axis = new Direction(0, 0);
        double[] leans = mirrored(BEARINGS / 4, bearing -> SwungContact.tiltLimit(strut, hole, wall, bearing));
        return new LeanEnvelope(axis, directions(axis, leans));
    }

    /**
     * Finds the envelope of any hole.
     *
     * @param rolls the hole with its strut; if that is oval, at all rolls that count, as many one way as the other: at each
     *     bearing the one that binds first decides
     * @param count of bearings, a multiple of 4
     * @return the limits; empty if the strut does not pass along the hole's axis at every roll
     */
    public static Optional<LeanEnvelope> of(List<HoleContact> rolls, int count) {
        Direction axis = rolls.get(0).axis();
        DoubleFunction<Double> limit = bearing -> rolls.stream()
                .mapToDouble(contact -> contact.away(bearing).orElse(-1.0))
                .min()
                .orElse(-1);
        double[] leans = new double[count];
        if (axis.lean() == 0) {
            leans = mirrored(count / 4, limit);
        } else {
            for (int i = 0; i < count; i++) {
                leans[i] = limit.apply(2 * StrictMath.PI * i / count);
            }
        }
        return DoubleStream.of(leans).allMatch(lean -> lean >= 0)
                ? Optional.of(new LeanEnvelope(axis, directions(axis, leans)))
                : Optional.empty();
    }

    private static double[] mirrored(int quarter, DoubleFunction<Double> limit) {
        double[] leans = new double[4 * quarter];
        for (int i = 0; i <= quarter; i++) {
            double lean = limit.apply(StrictMath.PI / 2 * i / quarter);
            leans[i] = lean;
            leans[2 * quarter - i] = lean;
            leans[2 * quarter + i] = lean;
            leans[(4 * quarter - i) % (4 * quarter)] = lean;
        }
        return leans;
    }

    private static List<Direction> directions(Direction axis, double[] leans) {
        List<Direction> limits = new ArrayList<>(leans.length);
        for (int i = 0; i < leans.length; i++) {
            limits.add(axis.away(leans[i], 2 * StrictMath.PI * i / leans.length));
        }
        return limits;
    }

    /**
     * Returns the limit at one of the bearings.
     *
     * @param index of the bearing
     * @return lean from the radial line
     */
    public double lean(int index) {
        return limits.get(index).lean();
    }
}
