/** Breaks nothing. */
@NullMarked
package collarwright.testing.house.collar;

import org.jspecify.annotations.NullMarked;
