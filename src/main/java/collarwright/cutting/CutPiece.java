package collarwright.cutting;

/**
 * Pieces of one length.
 *
 * @param id what they are, such as {@code SA}
 * @param length cut length, above 0
 * @param count how many are needed, 1 or more
 */
public record CutPiece(String id, double length, int count) {
    /** Checks the ranges. */
    public CutPiece {
        if (id.isBlank() || !(length > 0 && length <= Grains.LONGEST) || count < 1) {
            throw new IllegalArgumentException("no such pieces: " + count + " × " + length + " mm " + id);
        }
    }
}
