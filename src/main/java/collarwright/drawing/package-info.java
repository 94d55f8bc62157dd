/**
 * Drawings as sheets of lines, arcs, circles, paths and single-stroke labels on layers by role. x to the right, y up, millimetres; angles counter-clockwise from +x. May import tooling and what is upstream of it.
 */
@NullMarked
package collarwright.drawing;

import org.jspecify.annotations.NullMarked;
