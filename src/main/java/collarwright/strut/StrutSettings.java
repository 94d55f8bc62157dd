package collarwright.strut;

import collarwright.stock.RoundStock;
import java.util.Optional;

/**
 * What every strut is made of.
 *
 * @param stock the pipe, tube or bar that struts are cut from
 * @param tieHole the hole near each end; empty if none is drilled
 * @param bins how struts are sorted by size; empty if they are not. The stock's diameter is that of the chosen bin, or of
 *     all bins
 * @param endWork what else is done to the ends
 */
public record StrutSettings(RoundStock stock, Optional<TieHole> tieHole, Optional<SizeBins> bins, EndWork endWork) {

    /**
     * Struts that are not sorted.
     *
     * @param stock the pipe, tube or bar that struts are cut from
     * @param tieHole the hole near each end
     */
    public StrutSettings(RoundStock stock, Optional<TieHole> tieHole) {
        this(stock, tieHole, Optional.empty());
    }

    /**
     * Struts whose ends are cut square.
     *
     * @param stock the pipe, tube or bar that struts are cut from
     * @param tieHole the hole near each end
     * @param bins how struts are sorted by size
     */
    public StrutSettings(RoundStock stock, Optional<TieHole> tieHole, Optional<SizeBins> bins) {
        this(stock, tieHole, bins, EndWork.NONE);
    }

    /**
     * The same struts with other ends.
     *
     * @param other what is done to them
     * @return settings that differ in nothing else
     */
    public StrutSettings with(EndWork other) {
        return new StrutSettings(stock, tieHole, bins, other);
    }
}
