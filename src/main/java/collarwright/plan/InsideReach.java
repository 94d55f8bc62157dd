package collarwright.plan;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.job.Job;
import collarwright.units.Decimals;
import java.util.Optional;

/** Whether a hand can lay a template in the pipe, and whether it shows the holes that are there. */
final class InsideReach {
    /** A hand with a pencil goes in. Our choice, no source. */
    static final double LEAST_BORE = 150;

    private InsideReach() {}

    /** INSIDE_TEMPLATE for a pipe that is too narrow, and for one that is rolled; empty where no such templates are asked for. */
    static Optional<Finding> check(Job job) {
        double bore = 2 * job.hub().body().leastInnerRadius();
        if (!job.sheet().insideTemplates()) {
            return Optional.empty();
        }
        if (bore >= LEAST_BORE) {
            return job.shop().strip().map(s -> rolled());
        }
        return Optional.of(Finding.stop(
                Code.INSIDE_TEMPLATE,
                new Where.Part("collar"),
                "an inside diameter of " + Decimals.fixed(LEAST_BORE, 2)
                        + " mm or more, for a template that is laid in the pipe",
                Decimals.fixed(bore, 2) + " mm",
                "take inside-templates out under [sheet]: the templates for the outside are made anyway",
                "or take a wider pipe"));
    }

    private static Finding rolled() {
        return Finding.warn(
                Code.INSIDE_TEMPLATE,
                new Where.Part("collar"),
                "holes drilled in pipe, as the templates for the inside show them",
                "collars rolled from strip with their holes in them: inside these come out narrower",
                "check places by these templates, not sizes; strips/strips.csv has what rolled holes let a strut do",
                "or take inside-templates out under [sheet]");
    }
}
