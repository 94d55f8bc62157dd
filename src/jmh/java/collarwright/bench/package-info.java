/**
 * What takes time: the plan of the largest sphere and the tilt limits of holes. Built and run by the Maven profile
 * {@code bench} and by {@code .ci/bench.sh} only; nothing of it is in the program. May import everything.
 */
@NullMarked
package collarwright.bench;

import org.jspecify.annotations.NullMarked;
