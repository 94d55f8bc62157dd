package collarwright.plan;

import collarwright.finding.Code;
import collarwright.finding.Where;
import collarwright.job.Job;
import collarwright.plan.Check.Quantity;
import collarwright.plan.Check.Sense;
import collarwright.strut.TieHole;
import collarwright.units.Decimals;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far a tie hole's middle is from the strut's end, against the least that building rules allow for a bolt, by material.
 * Geometry only: a hole that keeps it bears no promised load.
 */
final class TieHoleEdge {

    private TieHoleEdge() {}

    /**
     * The least distance from the end, in diameters of the hole.
     *
     * @param diameters so many
     * @param source where that comes from
     */
    private record Rule(double diameters, String source) {}

    private static Rule rule(String material) {
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

    static Optional<Check> of(Job job) {
        return job.strut().tieHole().map(tie -> check(job, tie));
    }

    private static Check check(Job job, TieHole tie) {
        Rule rule = rule(job.strut().stock().material().name());
        double least = rule.diameters() * tie.diameter();
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
}
