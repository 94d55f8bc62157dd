/**
 * Writes a plan as a folder of files. May import everything but the command line.
 */
@NullMarked
package collarwright.pack;

import org.jspecify.annotations.NullMarked;
