/**
 * Lengths, angles and numbers as people write and read them. Inside the program every length is in millimetres and every angle in radians; this is the only place that turns them into anything else. Imports only java.base.
 */
@NullMarked
package collarwright.units;

import org.jspecify.annotations.NullMarked;
