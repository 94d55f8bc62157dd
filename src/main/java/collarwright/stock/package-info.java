/**
 * Pipe, tube and bar as bought and as measured, and what they are made of. May import geometry.
 */
@NullMarked
package collarwright.stock;

import org.jspecify.annotations.NullMarked;
