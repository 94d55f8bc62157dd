package collarwright.plan;

import collarwright.collar.CollarBody;
import collarwright.collar.Webs;
import collarwright.finding.Code;
import collarwright.finding.Where;
import collarwright.job.Job;
import collarwright.job.Limits;
import collarwright.plan.Check.Quantity;
import collarwright.plan.Check.Sense;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import collarwright.units.Decimals;
import java.util.List;
import java.util.OptionalDouble;

/** The checks on one pattern: one of each kind, on the hole that comes out worst. */
final class PatternChecks {

    static final String OURS = "our choice, no source; editable in [limits]";
    static final String GEOMETRY = "geometry";

    private final Pattern pattern;
    private final CollarBody body;
    private final SlackAdvice slackAdvice;
    private final Limits limits;

    PatternChecks(Pattern pattern, CollarBody body, Job job) {
        this.pattern = pattern;
        this.body = body;
        this.slackAdvice = new SlackAdvice(body, job);
        this.limits = job.limits();
    }

    List<Check> all() {
        int holes = pattern.holes().size();
        return List.of(webBetween().worst(holes), webToEdge().worst(holes), slack().worst(holes), reach().worst(holes));
    }

    private Hole hole(int index) {
        return pattern.holes().get(index);
    }

    private int next(int hole) {
        return hole + 1 < pattern.holes().size() ? hole + 1 : 0;
    }

    private double diameter(int hole) {
        return hole(hole).cutter().asDrilled().max();
    }

    private Where.Part at(int hole) {
        return new Where.Part("pattern " + pattern.id() + " / hole " + (hole + 1));
    }

    private Where.Part between(int hole) {
        return new Where.Part("pattern " + pattern.id() + " / holes " + (hole + 1) + " and " + (next(hole) + 1));
    }

    private HoleCheck webBetween() {
        return new HoleCheck(
                Code.WEB_BETWEEN_HOLES,
                Quantity.LENGTH,
                Sense.AT_LEAST,
                hole -> webBetween(body.leastInnerRadius(), hole),
                hole -> webLimits(largerDiameter(hole)),
                new HoleCheck.Words(
                        this::between,
                        hole -> List.of(
                                "take a collar pipe with this wall of at least " + up(outsideFor(hole))
                                        + " mm outside diameter: it leaves " + Decimals.fixed(missedWeb(hole), 1)
                                        + " mm between the holes at the inner wall",
                                "or a thinner strut, which needs smaller holes")));
    }

    // A least size with one decimal, rounded up: who follows the hint must not fall short by the rounding.
    static String up(double least) {
        return Decimals.fixed(StrictMath.ceil(least * 10) / 10, 1);
    }

    private double webBetween(double radius, int hole) {
        int after = next(hole);
        double gap = hole(after).azimuth() - hole(hole).azimuth();
        double rise = hole(after).height() - hole(hole).height();
        return Webs.between(
                radius,
                new Webs.Apart(gap <= 0 ? gap + 2 * StrictMath.PI : gap, rise),
                diameter(hole),
                diameter(after));
    }

    private double largerDiameter(int hole) {
        return StrictMath.max(diameter(hole), diameter(next(hole)));
    }

    private Check.Limits webLimits(double diameter) {
        return new Check.Limits(OptionalDouble.of(limits.webStop() * diameter), limits.webWarn() * diameter, OURS);
    }

    // The limit that a web misses: the one that stops, or else the one that warns.
    private double missedWeb(int hole) {
        double stop = limits.webStop() * largerDiameter(hole);
        return webBetween(body.leastInnerRadius(), hole) < stop ? stop : limits.webWarn() * largerDiameter(hole);
    }

    // The outside diameter, with the thickest wall, at which the web at the inner wall is what the limit asks.
    private double outsideFor(int hole) {
        double web = missedWeb(hole);
        double low = largerDiameter(hole) / 2;
        double high = low * 2 + StrictMath.max(0, web);
        while (webBetween(high, hole) < web && high < 1e6) {
            high *= 2;
        }
        for (int step = 0; step < 60; step++) {
            double middle = (low + high) / 2;
            if (webBetween(middle, hole) < web) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 2 * (high + body.wall().max());
    }

    private HoleCheck webToEdge() {
        return new HoleCheck(
                Code.WEB_TO_EDGE,
                Quantity.LENGTH,
                Sense.AT_LEAST,
                hole -> Webs.toEdge(body.width(), hole(hole).height(), diameter(hole)),
                hole -> webLimits(diameter(hole)),
                new HoleCheck.Words(
                        this::at, hole -> List.of("cut the collar " + up(widthFor(hole)) + " mm wide or wider")));
    }

    private double widthFor(int hole) {
        double height = hole(hole).height();
        return diameter(hole) * (1 + 2 * limits.webWarn()) + 2 * StrictMath.abs(height);
    }

    private HoleCheck slack() {
        return new HoleCheck(
                Code.HOLE_SLACK,
                Quantity.ANGLE,
                Sense.AT_MOST,
                hole -> hole(hole).slack(),
                hole -> new Check.Limits(OptionalDouble.empty(), limits.slackWarn(), OURS),
                new HoleCheck.Words(this::at, hole -> slackAdvice.of(hole(hole))));
    }

    private HoleCheck reach() {
        return new HoleCheck(
                Code.HOLE_SHORT_OF_REACH,
                Quantity.ANGLE,
                Sense.AT_LEAST,
                hole -> hole(hole).slack(),
                hole -> new Check.Limits(OptionalDouble.empty(), 0, GEOMETRY),
                new HoleCheck.Words(
                        this::at,
                        hole -> List.of("use fit = \"reach\", or ease the rims by hand (now: "
                                + HubPlay.shortOf(hole(hole)) + ")")));
    }
}
