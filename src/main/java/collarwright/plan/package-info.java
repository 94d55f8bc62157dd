/**
 * The whole plan of a job: runs the stages one after another and gathers what they find; and what files, papers and
 * pictures alike say of it: names, totals, stock, main sizes, how a hub sits. May import job and the stages.
 */
@NullMarked
package collarwright.plan;

import org.jspecify.annotations.NullMarked;
