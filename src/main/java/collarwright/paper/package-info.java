/**
 * Papers for people: the traveller (a PDF with route sheets for the shop) and the front page of the pack (HTML), which print
 * the same tables, which are made once; the site book and label sheets (PDF). Lengths of a page are millimetres, zero at its top left corner, y down. Directions
 * as everywhere: azimuth clockwise from above, from the 0° line; outer face seen with TOP up. May import picture, sheet,
 * plan and what is upstream of them, and units.
 */
@NullMarked
package collarwright.paper;

import org.jspecify.annotations.NullMarked;
