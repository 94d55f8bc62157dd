package collarwright.plan;

import collarwright.collar.HubSettings;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.geometry.Interval;
import collarwright.job.Job;
import collarwright.tooling.HoleSize;
import collarwright.tooling.PatternBook;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What holes every bin of natural stock gets, and what it would get if all struts had the same holes.
 *
 * @param rows one for each bin and kind of strut end, bins ascending, strut types shortest first, end a before end b; where
 *     patterns are shared, one for each size of hole that the strut end gets
 */
public record BinTable(List<Row> rows) {

    /** Keeps the rows. */
    public BinTable {
        rows = List.copyOf(rows);
    }

    /**
     * A kind of hole of one bin.
     *
     * @param bin from 1, the thinnest struts first
     * @param chosen whether the job drills for this bin
     * @param strutEnd such as {@code SA} or {@code SB-a}
     * @param own the hole for the struts of this bin
     * @param whole the hole for struts of all bins, the thickest strut first, but with this bin's struts in it
     */
    public record Row(int bin, boolean chosen, String strutEnd, HoleSize own, HoleSize whole) {

        private record Bin(int number, boolean chosen) {}

        /**
         * Returns the sizes of the bin.
         *
         * @return least and largest outside diameter, the middle as nominal
         */
        public Interval od() {
            return own.need().strut();
        }

        /**
         * Finds how far a strut of middle size can lean further than it needs to.
         *
         * @param size one of the two holes
         * @return an angle, negative if the hole stops it short; empty if there is no cutter
         */
        public static Optional<Double> slack(HoleSize size) {
            return size.cutter()
                    .map(c -> HoleSize.limit(size.need(), c) - size.need().lean());
        }
    }

    /**
     * Works out the table of a plan.
     *
     * @param plan the plan
     * @return no rows if its struts are not sorted
     */
    public static BinTable of(Plan plan) {
        List<Row> rows = new ArrayList<>();
        plan.job().strut().bins().ifPresent(bins -> {
            List<StrutHole> holes = StrutHole.all(plan);
            List<HoleSize> whole = sizes(plan, bins.whole());
            for (int bin = 1; bin <= bins.count(); bin++) {
                boolean chosen = bins.chosen().equals(Optional.of(bin));
                List<HoleSize> own = chosen ? chosen(plan) : sizes(plan, bins.bin(bin));
                addRows(holes, new Row.Bin(bin, chosen), own, whole, rows);
            }
        });
        return new BinTable(rows);
    }

    // Shared holes that came out alike for a strut end are one row.
    private static void addRows(
            List<StrutHole> holes, Row.Bin bin, List<HoleSize> own, List<HoleSize> whole, List<Row> rows) {
        Set<Row> seen = new LinkedHashSet<>();
        for (StrutHole hole : holes) {
            HoleSize size = own.get(hole.slot());
            HoleSize all = whole.get(hole.slot());
            seen.add(new Row(
                    bin.number(),
                    bin.chosen(),
                    hole.strutEnd(),
                    size,
                    new HoleSize(size.need(), all.required(), all.cutter())));
        }
        rows.addAll(seen);
    }

    // What this job is drilled with, slot by slot.
    private static List<HoleSize> chosen(Plan plan) {
        return plan.book().patterns().isEmpty()
                ? sizes(plan, plan.job().strut().stock().od())
                : StrutHole.sizes(plan, plan.book(), plan.job().strut().stock().od());
    }

    // As the job's own book of patterns sizes them, with its rule of choice; none has a cutter where the strut does not
    // pass the bore.
    private static List<HoleSize> sizes(Plan plan, Interval od) {
        HubSettings hub = plan.job().hub();
        if (od.max() < 2 * hub.body().leastInnerRadius()) {
            PatternBook book = PatternBook.of(
                    plan.hubs(), plan.struts(), hub, od, plan.job().drilling());
            return StrutHole.sizes(plan, book, od);
        }
        return StrutHole.needs(plan, od).stream()
                .map(need -> new HoleSize(need, Double.POSITIVE_INFINITY, Optional.empty()))
                .toList();
    }

    /** How to sort: where, how often, and what to do at a limit. */
    public static String rule() {
        return "Sort every strut by its thicker end: measure at each end that enters a hub, where the hole will be, in two"
                + " directions square to each other, and take the largest of the four. A strut on a limit goes into the"
                + " thicker bin. Mark bin and collars alike and never mix them.";
    }

    /**
     * Names the bin that a job drills for, so that its papers say which struts its collars are for.
     *
     * @param job the job
     * @return such as {@code bin 2 of 3: struts of 40.5 to 44 mm; never mix bins}; empty if it drills for none
     */
    public static Optional<String> label(Job job) {
        return job.strut()
                .bins()
                .flatMap(bins -> bins.chosen().map(chosen -> {
                    Interval od = bins.bin(chosen);
                    return "bin " + chosen + " of " + bins.count() + ": struts of " + Decimals.trimmed(od.min(), 2)
                            + " to " + Decimals.trimmed(od.max(), 2) + " mm; never mix bins";
                }));
    }

    /** Asks for a bin where the job has chosen none. */
    static Optional<Finding> note(Job job) {
        return job.strut()
                .bins()
                .filter(bins -> bins.chosen().isEmpty())
                .map(bins -> Finding.note(
                        Code.STRUT_BINS,
                        new Where.Part("strut"),
                        "one of the " + bins.count() + " bins: "
                                + bins.limits().stream()
                                        .map(limit -> Decimals.fixed(limit, 2))
                                        .collect(Collectors.joining(" / "))
                                + " mm",
                        "no bin, so every hole is made for the whole range",
                        "write bin = 1 to " + bins.count() + ", one job for each bin",
                        "the pack's table of bins shows what each would get"));
    }
}
