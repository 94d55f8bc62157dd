/**
 * Prints sheets as DXF, SVG and PDF, and proves them before they leave. May import drawing and the ground packages.
 */
@NullMarked
package collarwright.sheet;

import org.jspecify.annotations.NullMarked;
