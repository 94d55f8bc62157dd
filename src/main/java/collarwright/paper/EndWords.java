package collarwright.paper;

import collarwright.job.Job;
import collarwright.plan.FlatEntry;
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
        int ends = OrderTotals.of(plan).endParts();
        List<String> words = new ArrayList<>();
        work.flat().ifPresent(f -> words.addAll(FlatEntry.inside(plan) ? inside(plan, f) : flat(job, f)));
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

    // One sequence, the same on all papers: a flat that is wider than its hole is made behind it.
    private static List<String> inside(Plan plan, FlatEnds ends) {
        Job job = plan.job();
        TieHole tie = job.strut().tieHole().orElseThrow();
        return List.of(
                "Cut only: do not flatten or drill an end before its strut is in. By the sizes alone a flat comes out about "
                        + Decimals.fixed(FlatEnds.width(job.strut().stock()), 1) + " mm wide and "
                        + Decimals.fixed(FlatEnds.thickness(job.strut().stock()), 1)
                        + " mm thick; the narrowest hole is "
                        + Decimals.fixed(FlatEntry.narrowest(plan.book()).orElseThrow(), 1)
                        + " mm. A flattened end does not go in.",
                "A trial piece first: put an offcut of this stock through a hole of a collar, flatten and drill it there and"
                        + " measure it. Cut length = hole to hole and " + mm(tie.fromEnd())
                        + " more at each end: if the trial came out longer or shorter, hole to hole is what counts, and the"
                        + " cut length is to be mended by the same amount.",
                "Put the strut in round, with its collars. When all struts are in, hub by hub, centre ring still out: flatten "
                        + mm(ends.length())
                        + " of each end inside the collar, then drill the bolt hole square through both"
                        + " layers, " + mm(tie.fromEnd())
                        + " from the cut end, marked with a stop block or a template.",
                "Wear eye protection and gloves; hold the drill with both hands and the strut in a clamp. Stand on a platform"
                        + " or scaffold, never on the frame.");
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
