/**
 * Reads job files and profiles. May import the value types of the stages.
 */
@NullMarked
package collarwright.job;

import org.jspecify.annotations.NullMarked;
