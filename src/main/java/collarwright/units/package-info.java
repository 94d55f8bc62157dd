/**
 * Lengths, angles and numbers as people write and read them.
 *
 * <p>Inside the program every length is in millimetres and every angle in radians; this is the only place that turns them
 * into anything else. Texts are read exactly (an inch is 25.4 mm) and rounded once to a double; a text that is no length
 * comes back as a refusal with what was expected, what was found and what to do. A decimal comma is never read as anything.
 * Printing is the same under every locale. Imports only java.base.
 */
@NullMarked
package collarwright.units;

import org.jspecify.annotations.NullMarked;
