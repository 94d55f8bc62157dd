/**
 * Frames that somebody brings: reads nodes and members from the files that general programs write, and writes them.
 *
 * <p>Lengths in mm once they are read, +z up, right-handed, the file's own origin. Takes bytes and gives values and
 * findings; no files, no clock. May import finding, geometry and units.
 */
@org.jspecify.annotations.NullMarked
package collarwright.frame;
