package collarwright.plan;

import collarwright.collar.CollarBody;
import collarwright.collar.Engagement;
import collarwright.finding.Code;
import collarwright.finding.Where;
import collarwright.job.Job;
import collarwright.job.Limits;
import collarwright.plan.Check.Quantity;
import collarwright.plan.Check.Sense;
import collarwright.strut.FlatEnds;
import collarwright.strut.Setbacks;
import collarwright.strut.TieHole;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The checks on one hub type as it is put together: one of each kind, on the strut that comes out worst. */
final class HubChecks {

    /** Beyond this azimuth between two struts their ends cannot meet. */
    private static final double WIDE_APART = StrictMath.PI * 0.75;

    private final HubPart part;
    private final CollarBody body;
    private final double strut;
    private final Limits limits;
    private final Optional<TieHole> tieHole;
    private final Optional<FlatEnds> flat;

    HubChecks(HubPart part, Job job) {
        this.part = part;
        this.body = part.settings().body();
        this.strut = job.strut().stock().od().max();
        this.tieHole = job.strut().tieHole();
        this.flat = job.strut().endWork().flat();
        this.limits = job.limits();
    }

    List<Check> all() {
        List<Check> checks = new ArrayList<>();
        checks.add(worst(engagement()));
        tieHole.ifPresent(t -> checks.add(worst(tieHoleFree(t))));
        flat.ifPresent(f -> checks.add(worst(flatInside(f))));
        checks.add(worst(crowding()));
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

    private int next(int strut) {
        return strut + 1 < part.size() ? strut + 1 : 0;
    }

    // Where each hub type has its own pattern, the pattern says which hub it is.
    private String place() {
        return (part.shares() ? "hub " + part.id() + " on pattern " : "pattern ") + part.patternId();
    }

    private int number(int strut) {
        return part.placement().holes().get(strut) + 1;
    }

    private Where.Part at(int strut) {
        return new Where.Part(place() + " / hole " + number(strut));
    }

    private Where.Part between(int strut) {
        return new Where.Part(place() + " / holes " + number(strut) + " and " + number(next(strut)));
    }

    private HoleCheck engagement() {
        Check.Limits least = new Check.Limits(
                OptionalDouble.of(limits.engagementStop() * strut),
                limits.engagementWarn() * strut,
                PatternChecks.OURS);
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

    private double engagement(int at) {
        double least = Double.POSITIVE_INFINITY;
        for (HubPart.Line line : part.lines().get(at)) {
            double inside = line.end().reach() - setback(at, line);
            least = StrictMath.min(
                    least,
                    Engagement.least(
                            body.leastInnerRadius(),
                            body.midRadius(),
                            part.largestDiameter(at),
                            line.end().direction(),
                            inside));
        }
        if (least < Double.POSITIVE_INFINITY) {
            return least;
        }
        return Engagement.least(
                body.leastInnerRadius(),
                body.midRadius(),
                part.largestDiameter(at),
                new Engagement.Strut(part.axialAngle(at), part.setback(at)));
    }

    // From where the line passes the hub's axis: what the line is longer than the chord is shared by both ends.
    private double setback(int at, HubPart.Line line) {
        return part.setback(at) + line.growth() / 2;
    }

    private HoleCheck tieHoleFree(TieHole tie) {
        return new HoleCheck(
                Code.STRUT_TIE_HOLE,
                Quantity.LENGTH,
                Sense.AT_LEAST,
                hole -> engagement(hole) - tie.fromEnd() - tie.diameter() / 2,
                hole -> new Check.Limits(OptionalDouble.empty(), 0, PatternChecks.GEOMETRY),
                new HoleCheck.Words(
                        this::at,
                        hole -> List.of(
                                "drill the tie hole nearer to the strut's end, so that it is free inside the collar",
                                "or take a wider collar pipe")));
    }

    // What is flat has to lie inside the inner rim: the collar holds a round strut.
    private HoleCheck flatInside(FlatEnds ends) {
        return new HoleCheck(
                Code.STRUT_FLAT,
                Quantity.LENGTH,
                Sense.AT_LEAST,
                this::engagement,
                hole -> new Check.Limits(OptionalDouble.empty(), ends.length(), PatternChecks.GEOMETRY),
                new HoleCheck.Words(
                        this::at,
                        hole -> List.of(
                                "flatten a shorter length, so that the strut is round where the collar holds it",
                                "or take a wider collar pipe")));
    }

    private HoleCheck crowding() {
        return new HoleCheck(
                Code.STRUT_CROWDING,
                Quantity.LENGTH,
                Sense.AT_LEAST,
                this::roomBeside,
                hole -> new Check.Limits(OptionalDouble.of(0), 0, PatternChecks.GEOMETRY),
                new HoleCheck.Words(
                        this::between,
                        hole -> List.of(
                                Double.isFinite(roomBeside(hole))
                                        ? "take a centre ring at least " + PatternChecks.up(-2 * roomBeside(hole))
                                                + " mm larger in diameter, so that the ends stay clear of each other"
                                        : "the two leave the hub side by side: leave one of them out")));
    }

    // How much further back the nearer of two neighbouring ends stands than it must.
    private double roomBeside(int at) {
        double gap = part.type().gapAfter(at);
        double least = Double.POSITIVE_INFINITY;
        for (HubPart.Line one : part.lines().get(at)) {
            for (HubPart.Line two : part.lines().get(next(at))) {
                least = StrictMath.min(least, roomBeside(at, one, two, gap));
            }
        }
        if (least < Double.POSITIVE_INFINITY) {
            return least;
        }
        double nearer = StrictMath.min(part.setback(at), part.setback(next(at)));
        double needed = gap >= StrictMath.PI
                ? 0
                : Setbacks.clearOfNeighbour(strut, part.axialAngle(at), part.axialAngle(next(at)), gap);
        return nearer - needed;
    }

    // Lines that miss the hub's axis cross beside it, nearer to one end or further from both.
    private double roomBeside(int at, HubPart.Line one, HubPart.Line two, double gap) {
        double first = one.end().direction().tilt();
        double second = two.end().direction().tilt();
        double apart = gap + turned(next(at), two) - turned(at, one);
        if (apart >= WIDE_APART) {
            double nearer = StrictMath.min(setback(at, one), setback(next(at), two));
            return apart >= StrictMath.PI ? nearer : nearer - Setbacks.clearOfNeighbour(strut, first, second, apart);
        }
        double sine = StrictMath.sin(apart);
        double cosine = StrictMath.cos(apart);
        double missOne = one.end().miss();
        double missTwo = two.end().miss();
        double crossOne = (missOne * cosine - missTwo) / sine / StrictMath.cos(first);
        double crossTwo = (missOne - missTwo * cosine) / sine / StrictMath.cos(second);
        double nearer = StrictMath.min(setback(at, one) - crossOne, setback(next(at), two) - crossTwo);
        return nearer - Setbacks.clearOfNeighbour(strut, first, second, apart);
    }

    // By how much a strut's line lies clockwise of where the strut points from its node.
    private double turned(int at, HubPart.Line line) {
        double off = part.pattern()
                .map(p -> StrictMath.IEEEremainder(
                        part.hole(at).azimuth()
                                - part.placement()
                                        .onPattern(part.type().struts().get(at).azimuth()),
                        2 * StrictMath.PI))
                .orElse(0.0);
        return part.placement().clockwise(off) + line.end().direction().swing();
    }

    private Check ringCover() {
        RingSeat seat = RingSeat.of(part, strut);
        return new Check(
                Code.RING_COVER,
                new Where.Part(place() + " / centre ring"),
                Quantity.LENGTH,
                Sense.AT_LEAST,
                part.settings().ringWidth() - seat.width(),
                new Check.Limits(OptionalDouble.empty(), 0, PatternChecks.GEOMETRY),
                List.of("make the ring at least " + Decimals.fixed(StrictMath.ceil(seat.width()), 0)
                        + " mm wide, so that no strut end can slip past it"));
    }
}
