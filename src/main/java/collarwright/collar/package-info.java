/**
 * The collar as a curved wall with radial round holes: where a strut binds, which webs are left. Heights from the mid-plane, + toward TOP; azimuth clockwise from above. May import hub and what is upstream of it.
 */
@NullMarked
package collarwright.collar;

import org.jspecify.annotations.NullMarked;
