package collarwright.kit;

import collarwright.geometry.Interval;
import collarwright.stock.RoundStock;

/**
 * Weight of parts cut from round stock: length times cross-section times the density of the material's profile. Holes are
 * not taken off, so that nothing is lighter than it is said to be by its shape; density and nominal wall are nominal.
 */
final class Weights {

    private static final double CUBIC_MM_PER_CUBIC_M = 1e9;

    private Weights() {}

    /**
     * Weighs a piece.
     *
     * @param stock pipe, tube or bar
     * @param length of the piece
     * @return kg
     */
    static double kg(RoundStock stock, double length) {
        double outside = stock.od().nominal() / 2;
        double inside = outside - stock.wall().map(Interval::nominal).orElse(outside);
        double area = StrictMath.PI * (outside * outside - inside * inside);
        return area * length * stock.material().densityKgPerM3() / CUBIC_MM_PER_CUBIC_M;
    }
}
