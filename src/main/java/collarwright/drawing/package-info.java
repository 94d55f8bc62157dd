/**
 * Drawings as sheets of lines, arcs, circles, paths and single-stroke labels on layers by role, and the templates drawn on
 * them. No file format is known here.
 *
 * <p>Axes of a sheet: origin in its lower left corner, x to the right, y up, millimetres; angles counter-clockwise from +x;
 * an arc's sweep and a path's bulge are + counter-clockwise.
 *
 * <p>A wrap lies printed face up with TOP away from the reader: +y is toward TOP, and azimuth (clockwise from above, from
 * the 0° line, which is the axis of hole 1) grows to the left, toward −x.
 *
 * <p>May import tooling and what is upstream of it.
 */
@NullMarked
package collarwright.drawing;

import org.jspecify.annotations.NullMarked;
