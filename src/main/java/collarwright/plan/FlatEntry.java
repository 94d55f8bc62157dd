package collarwright.plan;

import collarwright.job.Job;
import collarwright.strut.FlatEnds;
import collarwright.tooling.PatternBook;
import java.util.OptionalDouble;

/**
 * When ends of struts are flattened: before a strut goes into its holes, or inside its collars because a flat is wider than
 * a hole. By nominal sizes of the tube; a trial piece tells how wide flats really come out.
 */
public final class FlatEntry {

    private FlatEntry() {}

    /**
     * Finds the narrowest hole.
     *
     * @param book all patterns
     * @return its least diameter as drilled, mm; empty where there is no hole
     */
    public static OptionalDouble narrowest(PatternBook book) {
        return book.patterns().stream()
                .flatMap(p -> p.holes().stream())
                .mapToDouble(h -> h.cutter().asDrilled().min())
                .min();
    }

    /**
     * Tells whether ends are flattened and drilled only when the strut is in.
     *
     * @param job the job
     * @param book its patterns
     * @return true if ends are flattened and a flat is as wide as the narrowest hole, or wider; false where ends stay round
     */
    public static boolean inside(Job job, PatternBook book) {
        if (job.strut().endWork().flat().isEmpty()) {
            return false;
        }
        OptionalDouble hole = narrowest(book);
        return hole.isPresent() && FlatEnds.width(job.strut().stock()) >= hole.getAsDouble();
    }

    /**
     * Tells the same of a plan.
     *
     * @param plan the plan
     * @return true if ends are flattened and drilled only when the strut is in
     */
    public static boolean inside(Plan plan) {
        return inside(plan.job(), plan.book());
    }
}
