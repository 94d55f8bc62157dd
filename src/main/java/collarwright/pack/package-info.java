/**
 * Writes a plan as a folder of files: all of it or none of it, and never over somebody's work. In files for other programs
 * lengths are in millimetres and angles in degrees, the key or the head says which; azimuths are clockwise from above, from
 * the 0° line. Only this package and the command line open files to write. May import everything but the command line.
 */
@NullMarked
package collarwright.pack;

import org.jspecify.annotations.NullMarked;
