/**
 * Struts: setbacks, cut lengths, end-drill offsets, and the size of the dome that follows from them. May import collar and what is upstream of it.
 */
@NullMarked
package collarwright.strut;

import org.jspecify.annotations.NullMarked;
