package collarwright.tooling;

import collarwright.hub.Hubs;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How the hubs of one type sit on their pattern.
 *
 * <p>A flipped collar is put on upside down, TOP toward the inside of the dome. Seen from outside its azimuths run the
 * other way round, and what lies above its mid-plane lies below.
 *
 * @param pattern index of the pattern in its book
 * @param turn azimuth of the hub type's 0° line from the pattern's 0° line, clockwise seen with TOP toward the eye, in
 *     [0, 2π)
 * @param flipped whether the collar is put on upside down
 * @param holes for every strut of the hub type, in its order, the index of its hole in the pattern; all different
 */
public record Placement(int pattern, double turn, boolean flipped, List<Integer> holes) {

    private static final double TURN = 2 * StrictMath.PI;

    /** Keeps the list. */
    public Placement {
        holes = List.copyOf(holes);
        if (holes.stream().distinct().count() != holes.size() || !(turn >= 0 && turn < TURN)) {
            throw new IllegalArgumentException("two struts in one hole, or a turn of " + turn);
        }
    }

    /**
     * A hub type that has a pattern of its own.
     *
     * @param pattern index of the pattern
     * @param struts how many struts the hub has
     * @return hole for strut
     */
    public static Placement own(int pattern, int struts) {
        return new Placement(
                pattern, 0, false, IntStream.range(0, struts).boxed().toList());
    }

    /**
     * Counts the collars of a pattern in one dome.
     *
     * @param hubs the hubs
     * @param placements by hub type
     * @param pattern index of the pattern
     * @return how many hubs take it
     */
    static int collars(Hubs hubs, List<Placement> placements, int pattern) {
        return IntStream.range(0, placements.size())
                .filter(type -> placements.get(type).pattern() == pattern)
                .map(type -> hubs.types().get(type).count())
                .sum();
    }

    /**
     * Turns an azimuth of the hub type into one of the pattern.
     *
     * @param azimuth from the hub type's 0° line, clockwise seen from outside the dome
     * @return from the pattern's 0° line, clockwise seen with TOP toward the eye, in [0, 2π)
     */
    public double onPattern(double azimuth) {
        if (turn == 0 && !flipped) {
            return azimuth;
        }
        return wrapped(flipped ? turn - azimuth : azimuth + turn);
    }

    /**
     * Turns an azimuth of the pattern into how it is seen on the node.
     *
     * @param azimuth from the pattern's 0° line, clockwise seen with TOP toward the eye
     * @return from the pattern's 0° line, clockwise seen from outside the dome, in [0, 2π)
     */
    public double fromOutside(double azimuth) {
        return flipped ? wrapped(-azimuth) : azimuth;
    }

    /**
     * Turns a small azimuth of the pattern, such as an error, into one on the node, or the other way round.
     *
     * @param angle clockwise seen with TOP toward the eye
     * @return clockwise seen from outside the dome
     */
    public double clockwise(double angle) {
        return flipped ? -angle : angle;
    }

    /**
     * Turns a height on the collar into one on the node, or the other way round.
     *
     * @param height above the mid-plane, + toward TOP
     * @return from the mid-plane, + away from the inside of the dome
     */
    public double outward(double height) {
        // 0 less 0 is no -0.
        return flipped ? 0 - height : height;
    }

    private static double wrapped(double azimuth) {
        double whole = azimuth % TURN;
        double positive = whole < 0 ? whole + TURN : whole;
        // + 0.0: an azimuth of -0 is one of 0; and what is less than 0 by rounding must not become a full turn.
        return positive >= TURN ? 0 : positive + 0.0;
    }
}
