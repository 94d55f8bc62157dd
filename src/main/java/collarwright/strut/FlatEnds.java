package collarwright.strut;

import collarwright.stock.RoundStock;

/**
 * Tube ends that are pressed flat after the strut is cut, so that a bolt through both layers holds them.
 *
 * @param length from the cut end to where the tube is round again, above 0
 */
public record FlatEnds(double length) {

    /** Checks the length. */
    public FlatEnds {
        if (!(length > 0 && length < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a flat end is longer than 0, not " + length);
        }
    }

    /**
     * Tells how wide a flat end comes out: half the bore's way round and a wall on each side, {@code π(d − 2t)/2 + 2t}. So
     * the middle of the wall keeps its length, and the folds are tight. An estimate: real folds are rounder and narrower. A thicker wall makes the flat narrower.
     *
     * @param od outside diameter d
     * @param wall thickness t of the wall, below half of it
     * @return mm
     */
    public static double width(double od, double wall) {
        return StrictMath.PI * (od - 2 * wall) / 2 + 2 * wall;
    }

    /**
     * Tells how wide the flat ends of a stock come out.
     *
     * @param stock a tube
     * @return mm, of its nominal sizes
     * @throws IllegalArgumentException if it is a solid bar
     */
    public static double width(RoundStock stock) {
        return width(stock.od().nominal(), wall(stock));
    }

    /**
     * Tells how thick the flat ends of a stock come out: two walls.
     *
     * @param stock a tube
     * @return mm, of its nominal sizes
     * @throws IllegalArgumentException if it is a solid bar
     */
    public static double thickness(RoundStock stock) {
        return 2 * wall(stock);
    }

    private static double wall(RoundStock stock) {
        return stock.wall()
                .orElseThrow(() -> new IllegalArgumentException("a solid bar is not pressed flat"))
                .nominal();
    }
}
