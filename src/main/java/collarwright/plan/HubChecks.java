package collarwright.plan;

import collarwright.collar.CollarBody;
import collarwright.collar.Engagement;
import collarwright.collar.Webs;
import collarwright.finding.Code;
import collarwright.finding.Where;
import collarwright.plan.Check.Quantity;
import collarwright.plan.Check.Sense;
import collarwright.strut.Setbacks;
import collarwright.strut.TieHole;
import collarwright.tooling.Hole;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntFunction;

/** The checks on one hub type: one of each kind, on the hole that comes out worst. */
final class HubChecks {

    private static final String OURS = "our choice, no source; editable in [limits]";
    private static final String GEOMETRY = "geometry";

    private final HubPart part;
    private final CollarBody body;
    private final double strut;
    private final collarwright.job.Limits limits;
    private final Optional<TieHole> tieHole;

    HubChecks(HubPart part, double strut, Optional<TieHole> tieHole, collarwright.job.Limits limits) {
        this.part = part;
        this.body = part.settings().body();
        this.strut = strut;
        this.tieHole = tieHole;
        this.limits = limits;
    }

    List<Check> all() {
        List<Check> checks = new ArrayList<>();
        checks.add(worst(this::webBetween));
        checks.add(worst(this::webToEdge));
        checks.add(worst(this::engagement));
        tieHole.ifPresent(t -> checks.add(worst(hole -> tieHoleFree(hole, t))));
        checks.add(worst(this::crowding));
        checks.add(worst(this::slack));
        checks.add(worst(this::reach));
        checks.add(ringCover());
        return checks;
    }

    private Check worst(IntFunction<Check> check) {
        Check worst = check.apply(0);
        for (int hole = 1; hole < part.size(); hole++) {
            Check next = check.apply(hole);
            worst = next.margin() < worst.margin() ? next : worst;
        }
        return worst;
    }

    private int next(int hole) {
        return (hole + 1) % part.size();
    }

    private Where.Part at(int hole) {
        return new Where.Part("pattern " + part.pattern().id() + " / hole " + (hole + 1));
    }

    private Where.Part between(int hole) {
        return new Where.Part("pattern " + part.pattern().id() + " / holes " + (hole + 1) + " and " + (next(hole) + 1));
    }

    private Check webBetween(int hole) {
        double inner = body.leastInnerRadius();
        double gap = part.type().gapAfter(hole);
        double first = part.largestDiameter(hole);
        double second = part.largestDiameter(next(hole));
        double larger = StrictMath.max(first, second);
        double web = Webs.between(inner, gap, first, second);
        double enough = outsideFor(gap, first, second, limits.webStop() * larger);
        return new Check(
                Code.WEB_BETWEEN_HOLES,
                between(hole),
                Quantity.LENGTH,
                Sense.AT_LEAST,
                web,
                new Check.Limits(OptionalDouble.of(limits.webStop() * larger), limits.webWarn() * larger, OURS),
                List.of(
                        "take a collar pipe with this wall of at least " + Decimals.fixed(enough, 1)
                                + " mm outside diameter (below it the holes run into each other inside)",
                        "or a thinner strut, which needs smaller holes"));
    }

    // The outside diameter, with the thickest wall, at which the web at the inner wall is what the limit asks.
    private double outsideFor(double gap, double first, double second, double web) {
        double low = StrictMath.max(first, second) / 2;
        double high = low * 2 + web;
        while (Webs.between(high, gap, first, second) < web && high < 1e6) {
            high *= 2;
        }
        for (int step = 0; step < 60; step++) {
            double middle = (low + high) / 2;
            if (Webs.between(middle, gap, first, second) < web) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 2 * (high + body.wall().max());
    }

    private Check webToEdge(int hole) {
        double diameter = part.largestDiameter(hole);
        double height = part.pattern().holes().get(hole).height();
        double least = diameter * (1 + 2 * limits.webWarn());
        return new Check(
                Code.WEB_TO_EDGE,
                at(hole),
                Quantity.LENGTH,
                Sense.AT_LEAST,
                Webs.toEdge(body.width(), height, diameter),
                new Check.Limits(OptionalDouble.of(limits.webStop() * diameter), limits.webWarn() * diameter, OURS),
                List.of("cut the collar " + Decimals.fixed(least, 1) + " mm wide or wider"));
    }

    private double engagementOf(int hole) {
        return Engagement.least(
                body.leastInnerRadius(),
                body.midRadius(),
                part.largestDiameter(hole),
                new Engagement.Strut(part.axialAngle(hole), part.setback(hole)));
    }

    private Check engagement(int hole) {
        return new Check(
                Code.STRUT_ENGAGEMENT,
                at(hole),
                Quantity.LENGTH,
                Sense.AT_LEAST,
                engagementOf(hole),
                new Check.Limits(
                        OptionalDouble.of(limits.engagementStop() * strut), limits.engagementWarn() * strut, OURS),
                List.of(
                        "take a wider collar pipe, so that more of the strut stands inside",
                        "or a thinner centre ring"));
    }

    private Check tieHoleFree(int hole, TieHole tie) {
        double room = engagementOf(hole) - tie.fromEnd() - tie.diameter() / 2;
        return new Check(
                Code.STRUT_TIE_HOLE,
                at(hole),
                Quantity.LENGTH,
                Sense.AT_LEAST,
                room,
                new Check.Limits(OptionalDouble.empty(), 0, GEOMETRY),
                List.of(
                        "drill the tie hole nearer to the strut's end, so that it is free inside the collar",
                        "or take a wider collar pipe"));
    }

    private Check crowding(int hole) {
        double gap = part.type().gapAfter(hole);
        double nearer = StrictMath.min(part.setback(hole), part.setback(next(hole)));
        double needed = gap >= StrictMath.PI
                ? 0
                : Setbacks.clearOfNeighbour(strut, part.axialAngle(hole), part.axialAngle(next(hole)), gap);
        return new Check(
                Code.STRUT_CROWDING,
                between(hole),
                Quantity.LENGTH,
                Sense.AT_LEAST,
                nearer - needed,
                new Check.Limits(OptionalDouble.of(0), 0, GEOMETRY),
                List.of("take a centre ring at least " + Decimals.fixed(2 * (needed - nearer), 1)
                        + " mm larger in diameter, so that the ends stay clear of each other"));
    }

    private Check slack(int hole) {
        Hole drilled = part.pattern().holes().get(hole);
        return new Check(
                Code.HOLE_SLACK,
                at(hole),
                Quantity.ANGLE,
                Sense.AT_MOST,
                drilled.slack(),
                new Check.Limits(OptionalDouble.empty(), limits.slackWarn(), OURS),
                List.of(
                        "add a cutter nearer to " + Decimals.fixed(drilled.required(), 2) + " mm to the rack",
                        "or take a thicker collar wall: the same steps of the rack then mean fewer degrees"));
    }

    private Check reach(int hole) {
        Hole drilled = part.pattern().holes().get(hole);
        return new Check(
                Code.HOLE_SHORT_OF_REACH,
                at(hole),
                Quantity.ANGLE,
                Sense.AT_LEAST,
                drilled.slack(),
                new Check.Limits(OptionalDouble.empty(), 0, GEOMETRY),
                List.of("the strut binds before it has its angle: use fit = \"reach\", or ease the rims by hand"));
    }

    private Check ringCover() {
        RingSeat seat = RingSeat.of(part.type(), part.struts(), body.midRadius(), strut);
        return new Check(
                Code.RING_COVER,
                new Where.Part("pattern " + part.pattern().id() + " / centre ring"),
                Quantity.LENGTH,
                Sense.AT_LEAST,
                part.settings().ringWidth() - seat.width(),
                new Check.Limits(OptionalDouble.empty(), 0, GEOMETRY),
                List.of("make the ring at least " + Decimals.fixed(StrictMath.ceil(seat.width()), 0)
                        + " mm wide, so that no strut end can slip past it"));
    }
}
