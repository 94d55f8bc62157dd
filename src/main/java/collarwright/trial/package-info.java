/**
 * The trial piece: a test collar with a ladder of holes, and what the angles measured on it tell about the wall that bears and
 * the oversize of the cutters. Azimuth clockwise from above, from the 0° line; tilt from the hub's plane, toward TOP. May import tooling and what is upstream of it.
 */
@NullMarked
package collarwright.trial;

import org.jspecify.annotations.NullMarked;
