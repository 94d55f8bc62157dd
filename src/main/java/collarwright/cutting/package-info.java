/**
 * Cuts pieces from sticks of stock: which piece from which stick, with kerf, end trim and saw grip, from offcuts first.
 *
 * <p>Lengths are millimetres outside and whole thousandths of a millimetre inside: pieces, kerf, trim and grip are rounded
 * up, stock is rounded down, so that a plan can always be cut and its sums add up exactly. Nothing here knows what is cut.
 * May import the ground packages.
 */
@NullMarked
package collarwright.cutting;

import org.jspecify.annotations.NullMarked;
