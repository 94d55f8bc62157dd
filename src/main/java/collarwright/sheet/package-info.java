/**
 * Prints sheets as DXF, SVG and PDF, and proves them before they leave. Every writer prints the same shapes and refuses a
 * sheet that does not pass the lint.
 *
 * <p>Axes: those of the sheet (origin lower left, x to the right, y up, millimetres, angles counter-clockwise from +x). DXF
 * keeps them; SVG counts y down from the upper edge; PDF counts in points from the page's lower left corner.
 *
 * <p>May import drawing and the ground packages.
 */
@NullMarked
package collarwright.sheet;

import org.jspecify.annotations.NullMarked;
