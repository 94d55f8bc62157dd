package collarwright.tooling;

import java.util.List;
import java.util.stream.IntStream;

/**
 * How the hubs of one type sit on their pattern.
 *
 * @param pattern index of the pattern in its book
 * @param turn azimuth of the hub type's 0° line from the pattern's 0° line, clockwise from above, in [0, 2π)
 * @param holes for every strut of the hub type, in its order, the index of its hole in the pattern; all different
 */
public record Placement(int pattern, double turn, List<Integer> holes) {

    /** Keeps the list. */
    public Placement {
        holes = List.copyOf(holes);
        if (holes.stream().distinct().count() != holes.size() || !(turn >= 0 && turn < 2 * StrictMath.PI)) {
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
        return new Placement(pattern, 0, IntStream.range(0, struts).boxed().toList());
    }

    /**
     * Turns an azimuth of the hub type into one of the pattern.
     *
     * @param azimuth from the hub type's 0° line
     * @return from the pattern's 0° line, in [0, 2π)
     */
    public double onPattern(double azimuth) {
        if (turn == 0) {
            return azimuth;
        }
        double turned = (azimuth + turn) % (2 * StrictMath.PI);
        return turned < 0 ? turned + 2 * StrictMath.PI : turned;
    }
}
