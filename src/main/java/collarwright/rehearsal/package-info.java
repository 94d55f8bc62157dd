/**
 * Our own replay of a printed program, which proves it against the operations before it may leave. May import machining and what is upstream of it.
 */
@NullMarked
package collarwright.rehearsal;

import org.jspecify.annotations.NullMarked;
