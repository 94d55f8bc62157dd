/**
 * The command line. May import everything.
 */
@NullMarked
package collarwright.cli;

import org.jspecify.annotations.NullMarked;
