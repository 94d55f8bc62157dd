package collarwright.strut;

import collarwright.stock.RoundStock;
import java.util.Optional;

/**
 * What every strut is made of.
 *
 * @param stock the pipe, tube or bar that struts are cut from
 * @param tieHole the hole near each end; empty if none is drilled
 */
public record StrutSettings(RoundStock stock, Optional<TieHole> tieHole) {}
