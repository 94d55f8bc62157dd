package collarwright.plan;

import collarwright.collar.CollarBody;
import collarwright.collar.Engagement;
import collarwright.collar.Webs;
import collarwright.finding.Code;
import collarwright.finding.Where;
import collarwright.job.Job;
import collarwright.job.Limits;
import collarwright.plan.Check.Quantity;
import collarwright.plan.Check.Sense;
import collarwright.strut.Setbacks;
import collarwright.strut.TieHole;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The checks on one hub type: one of each kind, on the hole that comes out worst. */
final class HubChecks {

    private static final String OURS = "our choice, no source; editable in [limits]";
    private static final String GEOMETRY = "geometry";

    private final HubPart part;
    private final CollarBody body;
    private final double strut;
    private final double easy;
    private final Limits limits;
    private final Optional<TieHole> tieHole;

    HubChecks(HubPart part, Job job) {
        this.part = part;
        this.body = part.settings().body();
        this.strut = job.strut().stock().od().max();
        this.easy = strut + job.drilling().leastClearance();
        this.tieHole = job.strut().tieHole();
        this.limits = job.limits();
    }

    List<Check> all() {
        List<Check> checks = new ArrayList<>();
        checks.add(worst(webBetween()));
        checks.add(worst(webToEdge()));
        checks.add(worst(engagement()));
        tieHole.ifPresent(t -> checks.add(worst(tieHoleFree(t))));
        checks.add(worst(crowding()));
        checks.add(worst(slack()));
        checks.add(worst(reach()));
        checks.add(ringCover());
        return checks;
    }

    /** Those that need no hole, for a hub whose holes have no cutter. */
    List<Check> withoutHoles() {
        return List.of(worst(crowding()), ringCover());
    }

    private Check worst(HoleCheck check) {
        return check.worst(part.size());
    }

    private int next(int hole) {
        return hole + 1 < part.size() ? hole + 1 : 0;
    }

    private Where.Part at(int hole) {
        return new Where.Part("pattern " + part.id() + " / hole " + (hole + 1));
    }

    private Where.Part between(int hole) {
        return new Where.Part("pattern " + part.id() + " / holes " + (hole + 1) + " and " + (next(hole) + 1));
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
    private static String up(double least) {
        return Decimals.fixed(StrictMath.ceil(least * 10) / 10, 1);
    }

    private double webBetween(double radius, int hole) {
        return Webs.between(
                radius, part.type().gapAfter(hole), part.largestDiameter(hole), part.largestDiameter(next(hole)));
    }

    private double largerDiameter(int hole) {
        return StrictMath.max(part.largestDiameter(hole), part.largestDiameter(next(hole)));
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
                hole -> Webs.toEdge(body.width(), part.hole(hole).height(), part.largestDiameter(hole)),
                hole -> webLimits(part.largestDiameter(hole)),
                new HoleCheck.Words(
                        this::at, hole -> List.of("cut the collar " + up(widthFor(hole)) + " mm wide or wider")));
    }

    private double widthFor(int hole) {
        double height = part.hole(hole).height();
        return part.largestDiameter(hole) * (1 + 2 * limits.webWarn()) + 2 * StrictMath.abs(height);
    }

    private HoleCheck engagement() {
        Check.Limits least = new Check.Limits(
                OptionalDouble.of(limits.engagementStop() * strut), limits.engagementWarn() * strut, OURS);
        return new HoleCheck(
                Code.STRUT_ENGAGEMENT,
                Quantity.LENGTH,
                Sense.AT_LEAST,
                this::engagement,
                hole -> least,
                new HoleCheck.Words(
                        this::at,
                        hole -> List.of(
                                "take a wider collar pipe, so that more of the strut stands inside",
                                "or a thinner centre ring")));
    }

    private double engagement(int hole) {
        return Engagement.least(
                body.leastInnerRadius(),
                body.midRadius(),
                part.largestDiameter(hole),
                new Engagement.Strut(part.axialAngle(hole), part.setback(hole)));
    }

    private HoleCheck tieHoleFree(TieHole tie) {
        return new HoleCheck(
                Code.STRUT_TIE_HOLE,
                Quantity.LENGTH,
                Sense.AT_LEAST,
                hole -> engagement(hole) - tie.fromEnd() - tie.diameter() / 2,
                hole -> new Check.Limits(OptionalDouble.empty(), 0, GEOMETRY),
                new HoleCheck.Words(
                        this::at,
                        hole -> List.of(
                                "drill the tie hole nearer to the strut's end, so that it is free inside the collar",
                                "or take a wider collar pipe")));
    }

    private HoleCheck crowding() {
        return new HoleCheck(
                Code.STRUT_CROWDING,
                Quantity.LENGTH,
                Sense.AT_LEAST,
                this::roomBeside,
                hole -> new Check.Limits(OptionalDouble.of(0), 0, GEOMETRY),
                new HoleCheck.Words(
                        this::between,
                        hole -> List.of(
                                Double.isFinite(roomBeside(hole))
                                        ? "take a centre ring at least " + up(-2 * roomBeside(hole))
                                                + " mm larger in diameter, so that the ends stay clear of each other"
                                        : "the two leave the hub side by side: leave one of them out")));
    }

    // How much further back the nearer of two neighbouring ends stands than it must.
    private double roomBeside(int hole) {
        double gap = part.type().gapAfter(hole);
        double nearer = StrictMath.min(part.setback(hole), part.setback(next(hole)));
        double needed = gap >= StrictMath.PI
                ? 0
                : Setbacks.clearOfNeighbour(strut, part.axialAngle(hole), part.axialAngle(next(hole)), gap);
        return nearer - needed;
    }

    private HoleCheck slack() {
        return new HoleCheck(
                Code.HOLE_SLACK,
                Quantity.ANGLE,
                Sense.AT_MOST,
                hole -> part.hole(hole).slack(),
                hole -> new Check.Limits(OptionalDouble.empty(), limits.slackWarn(), OURS),
                new HoleCheck.Words(
                        this::at,
                        hole -> List.of(
                                "add a cutter nearer to "
                                        + Decimals.fixed(
                                                StrictMath.max(part.hole(hole).required(), easy), 2)
                                        + " mm to the rack",
                                "or take a thicker collar wall: the same steps of the rack then mean fewer degrees")));
    }

    private HoleCheck reach() {
        return new HoleCheck(
                Code.HOLE_SHORT_OF_REACH,
                Quantity.ANGLE,
                Sense.AT_LEAST,
                hole -> part.hole(hole).slack(),
                hole -> new Check.Limits(OptionalDouble.empty(), 0, GEOMETRY),
                new HoleCheck.Words(
                        this::at,
                        hole -> List.of(
                                HubPlay.shortOf(part.hole(hole)), "use fit = \"reach\", or ease the rims by hand")));
    }

    private Check ringCover() {
        RingSeat seat = RingSeat.of(part.type(), part.struts(), body.midRadius(), strut);
        return new Check(
                Code.RING_COVER,
                new Where.Part("pattern " + part.id() + " / centre ring"),
                Quantity.LENGTH,
                Sense.AT_LEAST,
                part.settings().ringWidth() - seat.width(),
                new Check.Limits(OptionalDouble.empty(), 0, GEOMETRY),
                List.of("make the ring at least " + Decimals.fixed(StrictMath.ceil(seat.width()), 0)
                        + " mm wide, so that no strut end can slip past it"));
    }
}
