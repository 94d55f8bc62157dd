package collarwright.plan;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.job.Job;
import collarwright.plan.Check.Quantity;
import collarwright.plan.Check.Sense;
import collarwright.stock.RoundStock;
import collarwright.strut.EndPlugs;
import collarwright.strut.FlatEnds;
import collarwright.strut.TieHole;
import collarwright.tooling.PatternBook;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The ends of struts: how far a tie hole's middle is from the strut's end and from its side, against the least that
 * building rules allow for a bolt, by material; what flattened ends and plugs need. Geometry only: a hole that keeps its
 * distances bears no promised load.
 */
final class EndChecks {

    private EndChecks() {}

    /**
     * A least distance, in diameters of the hole.
     *
     * @param diameters so many
     * @param source where that comes from
     */
    private record Rule(double diameters, String source) {
        double least(TieHole tie) {
            return diameters * tie.diameter();
        }
    }

    private static Rule end(String material) {
        return switch (material) {
            case "steel", "stainless" -> new Rule(1.2, "1.2 hole diameters: EN 1993-1-8, Table 3.3, from memory");
            case "aluminium" -> new Rule(1.2, "1.2 hole diameters: EN 1999-1-1, Table 8.2, from memory");
            case "wood", "hardwood", "bamboo" ->
                new Rule(
                        3.5,
                        "3.5 diameters, the least for softwood in tension: National Design Specification for Wood"
                                + " Construction, Table 12.5.1A, from memory");
            default -> new Rule(2, "2 hole diameters: common practice, no source");
        };
    }

    private static Rule side(String material) {
        return switch (material) {
            case "steel", "stainless" -> new Rule(1.2, "1.2 hole diameters: EN 1993-1-8, Table 3.3, from memory");
            case "aluminium" -> new Rule(1.2, "1.2 hole diameters: EN 1999-1-1, Table 8.2, from memory");
            case "wood", "hardwood", "bamboo" ->
                new Rule(
                        1.5,
                        "1.5 diameters along the grain: National Design Specification for Wood Construction,"
                                + " Table 12.5.1C, from memory");
            default -> new Rule(1.5, "1.5 hole diameters, a hole of a third of the strut: common practice, no source");
        };
    }

    /** The distances of the tie hole; none where there is no hole. */
    static List<Check> of(Job job) {
        return job.strut()
                .tieHole()
                .map(tie -> List.of(end(job, tie), side(job, tie)))
                .orElse(List.of());
    }

    private static Check end(Job job, TieHole tie) {
        Rule rule = end(job.strut().stock().material().name());
        double least = rule.least(tie);
        return new Check(
                Code.TIE_HOLE_EDGE,
                new Where.Part("strut / tie hole"),
                Quantity.LENGTH,
                Sense.AT_LEAST,
                tie.fromEnd(),
                new Check.Limits(OptionalDouble.empty(), least, rule.source()),
                List.of(
                        "drill the tie hole at least " + Decimals.trimmed(StrictMath.ceil(least * 10) / 10, 1)
                                + " mm from the strut's end (" + rule.source() + ")",
                        "or take a smaller tie or pin; geometry only, no load rating"));
    }

    // Across the thinnest strut; across a flat of the thinnest strut with the thickest wall, as that comes out
    // narrowest.
    private static Check side(Job job, TieHole tie) {
        RoundStock stock = job.strut().stock();
        Rule rule = side(stock.material().name());
        double half = sideways(job) / 2;
        double largest = StrictMath.floor(half / rule.diameters() * 10) / 10;
        return new Check(
                Code.TIE_HOLE_SIDE,
                new Where.Part("strut / tie hole"),
                Quantity.LENGTH,
                Sense.AT_LEAST,
                half,
                new Check.Limits(OptionalDouble.empty(), rule.least(tie), rule.source()),
                List.of(
                        "take a tie or pin for a hole of " + Decimals.trimmed(largest, 1) + " mm or less ("
                                + rule.source() + ")",
                        "or thicker struts; geometry only, no load rating"));
    }

    private static double sideways(Job job) {
        RoundStock stock = job.strut().stock();
        return job.strut().endWork().flat().isPresent()
                ? FlatEnds.width(stock.od().min(), stock.wall().orElseThrow().max())
                : stock.od().min();
    }

    /** The least length of a strut: two tie holes on one line must not run into each other, nor two plugs. */
    static Check.Limits shortest(Job job) {
        double holes =
                job.strut().tieHole().map(t -> 2 * t.fromEnd() + t.diameter()).orElse(1.0);
        double plugs = 2 * job.strut().endWork().plugs().map(EndPlugs::length).orElse(0.0);
        double least = StrictMath.max(holes, plugs);
        boolean geometry = job.strut().tieHole().isPresent() || plugs >= holes;
        return new Check.Limits(OptionalDouble.of(least), least, geometry ? "geometry" : "our choice, no source");
    }

    /** What to do about a strut that is too short. */
    static List<String> longer(Job job) {
        List<String> hints = new ArrayList<>(
                List.of("make the dome larger or its frequency lower", "or take a smaller collar and ring"));
        job.strut()
                .endWork()
                .plugs()
                .ifPresent(p -> hints.add(
                        "or shorter plugs: two of " + Decimals.trimmed(p.length(), 2) + " mm go into each strut"));
        return hints;
    }

    /** What flat ends come to, against the holes that struts go through; empty where ends stay round. */
    static Optional<Finding> flat(Job job, PatternBook book) {
        if (job.strut().endWork().flat().isEmpty()) {
            return Optional.empty();
        }
        RoundStock stock = job.strut().stock();
        OptionalDouble narrowest = FlatEntry.narrowest(book);
        double width = FlatEnds.width(stock);
        return Optional.of(Finding.warn(
                Code.FLAT_ENDS,
                new Where.Part("strut / ends"),
                "flat ends as a trial piece of this stock comes out: width, thickness, where the tube is round again",
                "about " + Decimals.fixed(width, 1) + " mm wide, " + Decimals.fixed(FlatEnds.thickness(stock), 1)
                        + " mm thick, by the sizes alone"
                        + (narrowest.isPresent()
                                ? "; holes from " + Decimals.fixed(narrowest.getAsDouble(), 1) + " mm"
                                : ""),
                "flatten one piece, drill it and measure it, before the rest is cut: a tube may crack, and every press folds"
                        + " otherwise",
                FlatEntry.inside(job, book)
                        ? "a flat end does not go through its hole: put the struts in round, then flatten and drill each"
                                + " end inside its collar; so the papers have it"
                        : "drill after flattening, hole to hole",
                "flats with their faces up may touch their neighbours where round ends do not: stand them on edge",
                "the raising order was worked out with round ends"));
    }
}
