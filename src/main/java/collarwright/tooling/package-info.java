/**
 * Cutters and racks, the choice of a cutter for every hole, and the patterns that come of it. Azimuth clockwise from above, from the 0° line. May import strut and what is upstream of it.
 */
@NullMarked
package collarwright.tooling;

import org.jspecify.annotations.NullMarked;
