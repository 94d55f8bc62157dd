package collarwright.plan;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.plan.Check.Quantity;
import collarwright.plan.Check.Sense;
import collarwright.tooling.Sharing;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.List;
import java.util.OptionalDouble;

/** What shared patterns cost, held to the limits of the job, and told. */
final class SharingChecks {

    private static final Where PATTERNS = new Where.Part("shared patterns");

    private SharingChecks() {}

    static List<Check> of(Sharing sharing) {
        return List.of(
                check(
                        Code.HOLE_EXTRA_LEAN,
                        Quantity.ANGLE,
                        sharing.extraLean(),
                        sharing.limits().extraLean(),
                        "extra-lean"),
                check(
                        Code.HUB_MISS,
                        Quantity.LENGTH,
                        sharing.miss(),
                        sharing.limits().miss(),
                        "miss"));
    }

    private static Check check(Code code, Quantity quantity, double value, double limit, String key) {
        return new Check(
                code,
                PATTERNS,
                quantity,
                Sense.AT_MOST,
                value,
                new Check.Limits(OptionalDouble.of(limit), limit, PatternChecks.OURS),
                List.of("raise " + key + " in [limits], or use patterns = \"exact\""));
    }

    static Finding note(Sharing sharing) {
        boolean proven = sharing.atLeast() == sharing.patterns();
        return Finding.note(
                Code.PATTERNS_SHARED,
                PATTERNS,
                "as few patterns as serve all " + sharing.hubTypes() + " hub types within extra-lean and miss",
                sharing.patterns() + (sharing.patterns() == 1 ? " pattern" : " patterns")
                        + (proven
                                ? ", and fewer do not, each filled by one of its hubs"
                                : "; fewer than " + sharing.atLeast() + " do not, and what lies between is not settled")
                        + ". A strut may lean up to " + degrees(sharing.extraLean())
                        + " further than its axial angle, and passes its hub's axis by up to "
                        + Decimals.fixed(sharing.miss(), 1) + " mm",
                "patterns = \"exact\" makes " + sharing.exact() + " patterns without either");
    }

    private static String degrees(double angle) {
        return Decimals.fixed(Angles.degrees(angle), 2) + "°";
    }
}
