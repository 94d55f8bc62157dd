/**
 * From patterns to drilling programs for a machine that turns the pipe: sticks, operations, canonical moves, posts.
 *
 * <p>Zero: X0 is the chuck's jaw face with +X toward the free end, Y0 stands over the axis, Z0 is the rotary axis with
 * +Z up, A0 has the pattern's 0° line up; Z is the height of the cutter's lowest point. TOP of the collars faces the
 * chuck (−X): then A is the azimuth (clockwise from above TOP) on a machine with the rotary sign of RS274
 * (counter-clockwise seen from +X, from the work's point of view, so the pipe itself turns clockwise seen from +X).
 * TOP toward the free end gives (360° − azimuth); a machine that turns the other way flips A once, last.
 *
 * <p>Order of trust: operations are values; a canonical move list is made from them; a post only prints it. Lengths
 * are in millimetres, snapped to the program's last decimal, so both dialects hold the same moves; A words are in
 * degrees.
 *
 * <p>A bed for the ends of struts ({@code End…}): X0 is the face of the stop with +X along the strut, Y0 and Z0 are on
 * the strut's axis; angles about it are clockwise as seen from the stop. May import tooling and what is upstream of it.
 */
@NullMarked
package collarwright.machining;

import org.jspecify.annotations.NullMarked;
