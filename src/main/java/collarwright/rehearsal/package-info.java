/**
 * Our own replay of a printed program, before it may leave.
 *
 * <p>It reads nothing but the text, with its own interpreter of RS274 words, rebuilds the holes from the moves, and holds
 * them and every rule of a safe program against what was planned. It uses other methods than the stage that made the
 * program: holes are turned back into space and the cutter's edge is held against the pipe point by point. Frame and
 * zero: as in {@code collarwright.machining}. May import machining and what is upstream of it.
 */
@NullMarked
package collarwright.rehearsal;

import org.jspecify.annotations.NullMarked;
