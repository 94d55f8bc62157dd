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
 */
public record StrutSettings(RoundStock stock, Optional<TieHole> tieHole, Optional<SizeBins> bins) {

    /**
     * Struts that are not sorted.
     *
     * @param stock the pipe, tube or bar that struts are cut from
     * @param tieHole the hole near each end
     */
    public StrutSettings(RoundStock stock, Optional<TieHole> tieHole) {
        this(stock, tieHole, Optional.empty());
    }
}
