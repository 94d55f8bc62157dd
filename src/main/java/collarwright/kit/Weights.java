package collarwright.kit;

import collarwright.stock.RoundStock;

/**
 * Weight of parts cut from round stock: length times cross-section times the density of the material's profile. Holes are
 * not taken off, so that nothing is lighter than it is said to be by its shape; density and nominal wall are nominal.
 */
final class Weights {

    private Weights() {}

    /**
     * Weighs a piece.
     *
     * @param stock pipe, tube or bar
     * @param length of the piece
     * @return kg
     */
    static double kg(RoundStock stock, double length) {
        return stock.kg(length);
    }
}
