/**
 * The whole plan of a job: runs the stages one after another and gathers what they find. May import job and the stages.
 */
@NullMarked
package collarwright.plan;

import org.jspecify.annotations.NullMarked;
