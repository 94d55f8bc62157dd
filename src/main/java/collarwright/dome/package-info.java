/**
 * The dome as nodes on a unit sphere and the members between them. Frame: origin at the sphere's centre, +z through the apex, +x the stated meridian; tiers count struts from the apex, places run clockwise seen from above (outside), from the +x meridian. May import geometry and finding.
 */
@NullMarked
package collarwright.dome;

import org.jspecify.annotations.NullMarked;
