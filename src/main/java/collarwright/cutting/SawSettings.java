package collarwright.cutting;

/**
 * What a saw takes of every stick.
 *
 * <p>N pieces take N cuts, unless the last one ends exactly where the stick ends. A cut that falls on less than a kerf of
 * what is left takes that much only.
 *
 * @param kerf width of one cut
 * @param trimFirst what is cut off the first end before the first piece, its cut included
 * @param trimLast what is not used at the far end
 * @param grip the shortest rest that the saw still holds: where it is above 0, the last cut is a whole one and as much
 *     or more is left behind it; 0 where a stick may be used up
 */
public record SawSettings(double kerf, double trimFirst, double trimLast, double grip) {

    /** A blade of 3 mm: our choice, no source. Nothing trimmed, nothing held. */
    public static final SawSettings USUAL = new SawSettings(3, 0, 0, 0);

    /** Checks the ranges. */
    public SawSettings {
        for (double size : new double[] {kerf, trimFirst, trimLast, grip}) {
            if (!(size >= 0 && size <= Grains.LONGEST)) {
                throw new IllegalArgumentException("kerf, trim and grip are 0 or more");
            }
        }
    }

    /** What is left behind at least, in grains. */
    long heldGrains() {
        return StrictMath.max(Grains.up(trimLast), Grains.up(grip));
    }

    /**
     * The room of a stick for pieces that each carry one kerf, in grains: n pieces fit where the sum of length and kerf
     * is no more. Below 0 where nothing fits.
     */
    long room(double stick) {
        long kerfGained = grip > 0 ? 0 : Grains.up(kerf);
        return Grains.down(stick) - Grains.up(trimFirst) - heldGrains() + kerfGained;
    }

    /**
     * Returns the longest piece that a stick gives.
     *
     * @param stick its length
     * @return mm; 0 or less where it gives none
     */
    public double longestPiece(double stick) {
        return Grains.mm(room(stick) - Grains.up(kerf));
    }
}
