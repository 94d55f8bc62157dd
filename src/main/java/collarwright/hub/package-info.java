/**
 * Hubs: the struts around each node, their axial angles and azimuths, and which hubs are equal. Hub axis outward; azimuth clockwise from above (from outside), from the 0° line, which is the axis of hole 1. May import dome and the ground packages.
 */
@NullMarked
package collarwright.hub;

import org.jspecify.annotations.NullMarked;
