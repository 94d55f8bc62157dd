/**
 * What a crew on site gets: connections from both sides, bundles with their weight, step cards for raising and taking
 * down, and what labels say. Directions as everywhere: holes count clockwise seen with TOP toward the eye; UP is straight
 * up as seen from outside. Weights in kg, their names say so. May import plan, job and the stages.
 */
@NullMarked
package collarwright.kit;

import org.jspecify.annotations.NullMarked;
