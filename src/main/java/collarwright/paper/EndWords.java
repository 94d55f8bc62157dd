package collarwright.paper;

import collarwright.job.Job;
import collarwright.plan.OrderTotals;
import collarwright.plan.Plan;
import collarwright.strut.EndPlugs;
import collarwright.strut.EndWork;
import collarwright.strut.FlatEnds;
import collarwright.strut.TieHole;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/** What is done to the ends of struts besides cutting and drilling them, in words for the bench. */
final class EndWords {

    private EndWords() {}

    /** Flattening, plugs and caps, in the order in which they are done; none for ends that are cut square only. */
    static List<String> of(Plan plan) {
        Job job = plan.job();
        EndWork work = job.strut().endWork();
        int ends = 2 * OrderTotals.of(plan).struts();
        List<String> words = new ArrayList<>();
        work.flat().ifPresent(f -> words.addAll(flat(job, f)));
        work.plugs().ifPresent(p -> words.add(plugs(p, ends)));
        if (work.caps()) {
            words.add("Caps: one on each end, " + ends
                    + " in all, spare struts too. A cap that is wider than its hole goes on"
                    + " when the strut is in.");
        }
        return words;
    }

    private static List<String> flat(Job job, FlatEnds ends) {
        TieHole tie = job.strut().tieHole().orElseThrow();
        return List.of(
                "Flattened ends: cut length = hole to hole and " + mm(tie.fromEnd()) + " more at each end"
                        + ". First flatten, drill and measure one piece of this stock: if it came out longer or shorter,"
                        + " hole to hole is what counts, and the cut length is to be mended by the same amount.",
                "Flatten " + mm(ends.length()) + " of each end (by the sizes alone it comes out about "
                        + Decimals.fixed(FlatEnds.width(job.strut().stock()), 1) + " mm wide and "
                        + Decimals.fixed(FlatEnds.thickness(job.strut().stock()), 1)
                        + " mm thick), both flats in one plane; where there is a turn between, turn the strut by it before the"
                        + " second end. Then drill square through both layers.");
    }

    private static String plugs(EndPlugs plugs, int ends) {
        return "Plugs: Ø " + mm(plugs.diameter()) + ", " + mm(plugs.length()) + " long, one in each end, flush: " + ends
                + " in all, spare struts too; " + Decimals.fixed(ends * plugs.length() / 1000, 2)
                + " m of rod without cuts. Put them in before the tie holes are drilled.";
    }

    private static String mm(double length) {
        return Decimals.trimmed(length, 3) + " mm";
    }
}
