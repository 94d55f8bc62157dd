/**
 * Operations, canonical moves and posts. Zero: X0 chuck jaw face with +X toward the free end, Y0 over the axis, Z0 the rotary axis, A0 the 0° line up. May import tooling and what is upstream of it.
 */
@NullMarked
package collarwright.machining;

import org.jspecify.annotations.NullMarked;
