/**
 * Vectors, intervals and roots. Right-handed axes. Imports only java.base.
 */
@NullMarked
package collarwright.geometry;

import org.jspecify.annotations.NullMarked;
