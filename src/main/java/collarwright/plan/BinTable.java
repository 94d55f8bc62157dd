package collarwright.plan;

import collarwright.collar.CollarBody;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.geometry.Interval;
import collarwright.hub.StrutTip;
import collarwright.job.Job;
import collarwright.strut.SizeBins;
import collarwright.strut.StrutType;
import collarwright.tooling.HoleNeed;
import collarwright.tooling.HoleSize;
import collarwright.tooling.PatternBook;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What holes every bin of natural stock gets, and what it would get if all struts had the same holes.
 *
 * @param rows one for each bin and kind of strut end, bins ascending, strut types shortest first, end a before end b
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
            List<HoleSize> whole = sizes(plan, bins.whole());
            for (int bin = 1; bin <= bins.count(); bin++) {
                addRows(plan, bins, bin, whole, rows);
            }
        });
        return new BinTable(rows);
    }

    private static void addRows(Plan plan, SizeBins bins, int bin, List<HoleSize> whole, List<Row> rows) {
        boolean chosen = bins.chosen().equals(Optional.of(bin));
        List<HoleSize> own = sizes(plan, bins.bin(bin));
        for (int type = 0; type < plan.struts().types().size(); type++) {
            StrutType strut = plan.struts().types().get(type);
            for (StrutTip tip : StrutTip.values()) {
                HoleSize size = own.get(2 * type + tip.index());
                HoleSize all = whole.get(2 * type + tip.index());
                if (tip == StrutTip.A || !strut.alike()) {
                    rows.add(new Row(
                            bin,
                            chosen,
                            strut.idAt(tip),
                            size,
                            new HoleSize(size.need(), all.required(), all.cutter())));
                }
            }
        }
    }

    // For both ends of each strut type, as in a book of patterns; none has a cutter where the strut does not pass the
    // bore.
    private static List<HoleSize> sizes(Plan plan, Interval od) {
        CollarBody body = plan.job().hub().body();
        if (od.max() < 2 * body.leastInnerRadius()) {
            return PatternBook.byEnd(plan.hubs(), body, od, plan.job().drilling());
        }
        List<HoleSize> none = new ArrayList<>();
        for (var shape : plan.hubs().strutShapes()) {
            for (StrutTip tip : StrutTip.values()) {
                HoleNeed need = new HoleNeed(body, od, StrictMath.abs(shape.axialAngle(tip)));
                none.add(new HoleSize(need, Double.POSITIVE_INFINITY, Optional.empty()));
            }
        }
        return none;
    }

    /** How to sort: where, how often, and what to do at a limit. */
    public static String rule() {
        return "Sort every strut by its thicker end: measure at each end that enters a hub, where the hole will be, in two"
                + " directions square to each other, and take the largest of the four. A strut on a limit goes into the"
                + " thicker bin. Mark bin and collars alike and never mix them.";
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
