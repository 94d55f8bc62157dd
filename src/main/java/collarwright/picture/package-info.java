/**
 * Pictures for people: dome, hub, collar, hole and strut, painted once with Graphics2D and shown as SVG or in a PDF.
 * Lengths are millimetres on paper, x to the right, y down, zero at the top left corner. A hub and a collar are seen from
 * above (from outside the dome, TOP toward the eye): azimuth grows clockwise on paper, the 0° line points up.
 * Letters are outlines of the typeface that the PDF library carries, so that a picture has the same bytes on every
 * machine. May import plan and what is upstream of it, units, and of sheet the typeface and the writing of text.
 */
@NullMarked
package collarwright.picture;

import org.jspecify.annotations.NullMarked;
