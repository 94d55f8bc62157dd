/**
 * Whether a frame of collars can be put together by hand: how far each strut can be pushed into a collar, how far it has to
 * be, which neighbours have to wait, how far a strut has to bow, and an order in which the whole frame goes up.
 *
 * <p>Frame of a hub: origin in the middle of the collar, +z along the hub's axis, outward, the way TOP faces; azimuth
 * clockwise from above, from the 0° line, whose direction is +x (so that +y lies a quarter turn counter-clockwise).
 * Heights from the collar's mid-plane, + toward TOP. A strut leans inward of the hub's plane where its axial angle is
 * positive. Travel counts along the strut, inward, from its seat. May import tooling and what is upstream of it.
 */
@NullMarked
package collarwright.assembly;

import org.jspecify.annotations.NullMarked;
