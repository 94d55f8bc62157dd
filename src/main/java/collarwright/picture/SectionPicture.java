package collarwright.picture;

import collarwright.collar.CollarBody;
import collarwright.geometry.Interval;
import collarwright.tooling.Hole;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * A cut through one hole along the collar's axis: the strut leans until it binds on the two rims, with the lean that it
 * needs and the slack that is left. Nominal sizes.
 *
 * <p>The hub's axis is upright, to the left; outside is to the right, TOP up.
 */
public final class SectionPicture implements Picture {

    private static final double TALL = 54;
    private static final double TEXT = 23.5;

    private final CollarBody body;
    private final Interval strut;
    private final Hole hole;
    private final Figures figures;
    private final double width;
    private final double scale;

    /**
     * What is drawn.
     *
     * @param body the collar
     * @param strut the strut's diameter
     * @param hole the hole
     */
    public record Subject(CollarBody body, Interval strut, Hole hole) {}

    /**
     * Prepares the picture.
     *
     * @param subject collar, strut and hole
     * @param figures the shop's unit
     * @param width mm on paper
     */
    public SectionPicture(Subject subject, Figures figures, double width) {
        this.body = subject.body();
        this.strut = subject.strut();
        this.hole = subject.hole();
        this.figures = figures;
        this.width = width;
        this.scale = StrictMath.min(1, TALL / body.width());
    }

    @Override
    public double width() {
        return width;
    }

    @Override
    public double height() {
        return body.width() * scale + 3 + TEXT;
    }

    @Override
    public String describe() {
        return "A cut through hole " + hole.number() + ": a strut of " + figures.size(strut.nominal())
                + " in a hole of " + figures.size(hole.diameter()) + " binds at "
                + Figures.degrees(hole.tiltLimit()) + "; it needs " + Figures.degrees(hole.neededLean())
                + ", so the slack is " + Figures.degrees(hole.slack()) + ".";
    }

    // The middle of the wall stands in the middle of the picture.
    private Spot at(double radius, double height) {
        return new Spot(width / 2 + (radius - body.midRadius()) * scale, 1.5 + (body.width() / 2 - height) * scale);
    }

    private double p() {
        return hole.diameter() / 2;
    }

    @Override
    public void paint(Sketch sketch) {
        rims(sketch);
        strut(sketch);
        walls(sketch);
        leans(sketch);
        touches(sketch);
        sketch.write(Label.of("▲ TOP", width, 5, Label.Side.RIGHT).strong());
        sketch.write(
                Label.of("inside", 0, body.width() * scale - 2, Label.Side.LEFT).in(Ink.GREY));
        sketch.write(Label.of("outside", width, body.width() * scale - 2, Label.Side.RIGHT)
                .in(Ink.GREY));
        text(sketch);
    }

    // The rims of the hole's far half.
    private void rims(Sketch sketch) {
        for (double radius : new double[] {body.innerRadius(), body.outerRadius()}) {
            List<Spot> spots = new ArrayList<>();
            for (int i = 0; i <= 36; i++) {
                double turn = i * StrictMath.PI / 36;
                double across = p() * StrictMath.sin(turn);
                double depth = StrictMath.sqrt(StrictMath.max(0, radius * radius - across * across));
                spots.add(at(depth, hole.height() + p() * StrictMath.cos(turn)));
            }
            sketch.draw(Stroking.thin(), Sketch.chain(spots, false));
        }
    }

    /** A point of the strut: along its axis from where the axis crosses the middle of the wall, and across it, up. */
    private Spot onStrut(double along, double across, double lean) {
        double s = StrictMath.sin(lean);
        double c = StrictMath.cos(lean);
        double height = pivot();
        return at(body.midRadius() + along * c + across * s, height - along * s + across * c);
    }

    // The underside rests on the outer rim's lowest point, in the mid-plane.
    private double pivot() {
        double lean = hole.tiltLimit();
        double s = StrictMath.sin(lean);
        double c = StrictMath.cos(lean);
        double r = strut.nominal() / 2;
        double x = outerRim() + r * s;
        double z = hole.height() - p() + r * c;
        return z + (x - body.midRadius()) * s / c;
    }

    private double outerRim() {
        return body.outerRim(body.bearing().nominal());
    }

    private double reach() {
        return (width / 2 - 4) / scale / StrictMath.cos(hole.tiltLimit())
                - strut.nominal() / 2 * StrictMath.sin(hole.tiltLimit());
    }

    private void strut(Sketch sketch) {
        double r = strut.nominal() / 2;
        double lean = hole.tiltLimit();
        double reach = reach();
        List<Spot> outline = new ArrayList<>(broken(-reach, 1));
        outline.addAll(broken(reach, -1));
        sketch.fill(Ink.PALE, Sketch.chain(outline, true));
        sketch.line(Stroking.edge(), onStrut(-reach, r, lean), onStrut(reach, r, lean));
        sketch.line(Stroking.edge(), onStrut(-reach, -r, lean), onStrut(reach, -r, lean));
        sketch.draw(Stroking.thin(), Sketch.chain(broken(-reach, 1), false));
        sketch.draw(Stroking.thin(), Sketch.chain(broken(reach, 1), false));
    }

    // A strut goes on beyond the picture: its end is a broken line, from its underside up or from its upper side down.
    private List<Spot> broken(double along, int turn) {
        double r = turn * strut.nominal() / 2;
        double lean = hole.tiltLimit();
        return List.of(
                onStrut(along, -r, lean),
                onStrut(along + turn * 1.5, -r / 3, lean),
                onStrut(along - turn * 1.5, r / 3, lean),
                onStrut(along, r, lean));
    }

    private void walls(Sketch sketch) {
        Spot top = at(body.innerRadius(), body.width() / 2);
        Spot topEnd = at(body.outerRadius(), hole.height() + p());
        Spot low = at(body.innerRadius(), hole.height() - p());
        Spot lowEnd = at(body.outerRadius(), -body.width() / 2);
        Hatching.cut(sketch, box(top, topEnd));
        Hatching.cut(sketch, box(low, lowEnd));
    }

    private static Rectangle2D box(Spot a, Spot b) {
        return new Rectangle2D.Double(a.x(), a.y(), b.x() - a.x(), b.y() - a.y());
    }

    private void leans(Sketch sketch) {
        double reach = reach();
        sketch.line(Stroking.thin(), onStrut(0, 0, 0), onStrut(reach * StrictMath.cos(hole.tiltLimit()), 0, 0));
        sketch.line(Stroking.axis(Ink.INK), onStrut(-reach, 0, hole.tiltLimit()), onStrut(reach, 0, hole.tiltLimit()));
        if (hole.slack() > 0) {
            sketch.line(
                    new Stroking(Stroking.NARROW, List.of(2.0, 1.25), Ink.DATUM),
                    onStrut(0, 0, hole.neededLean()),
                    onStrut(reach - 2, 0, hole.neededLean()));
        }
        Path2D.Double arc = new Path2D.Double();
        Sketch.arc(arc, onStrut(0, 0, 0), reach * 0.8 * scale, StrictMath.PI / 2, StrictMath.PI / 2 + hole.tiltLimit());
        sketch.draw(Stroking.thin(), arc);
    }

    // Where strut and rims meet: below outside in the mid-plane, above inside perhaps beside it.
    private void touches(Sketch sketch) {
        sketch.fill(Ink.INK, Sketch.circle(at(outerRim(), hole.height() - p()), 0.9));
        double r = strut.nominal() / 2;
        double s = StrictMath.sin(hole.tiltLimit());
        double c = StrictMath.cos(hole.tiltLimit());
        double least = Double.POSITIVE_INFINITY;
        double inner = body.innerRim(body.bearing().nominal());
        Spot nearest = at(inner, hole.height() + p());
        for (int i = 0; i <= 400; i++) {
            double y = r * i / 400;
            double x = StrictMath.sqrt(inner * inner - y * y);
            double z = hole.height() + StrictMath.sqrt(p() * p() - y * y);
            double room = x * s + z * c - StrictMath.sqrt(r * r - y * y);
            if (room < least - 1e-9) {
                least = room;
                nearest = at(x, z);
            }
        }
        sketch.fill(Ink.INK, Sketch.circle(nearest, 0.9));
    }

    private void text(Sketch sketch) {
        double top = body.width() * scale + 3;
        sketch.write(Label.of(
                "hole " + figures.size(hole.diameter()) + ", strut " + figures.size(strut.nominal()) + ", wall "
                        + figures.size(body.wall().nominal())
                        + body.measuredBearing()
                                .map(b -> ", bears " + figures.size(b.nominal()))
                                .orElse(""),
                0,
                top + 4,
                Label.Side.LEFT));
        row(sketch, top + 10, Stroking.axis(Ink.INK), "binds at", hole.tiltLimit());
        sketch.write(Label.of("cut through hole " + hole.number(), width, top + 10, Label.Side.RIGHT)
                .strong());
        row(
                sketch,
                top + 15.5,
                new Stroking(Stroking.NARROW, List.of(2.0, 1.25), Ink.DATUM),
                "needs",
                hole.neededLean());
        sketch.write(Label.of("slack " + Figures.degrees(hole.slack()), width, top + 15.5, Label.Side.RIGHT)
                .strong());
        sketch.write(Label.of(
                "worst cases " + Figures.degrees(hole.tiltMin()) + " to " + Figures.degrees(hole.tiltMax()),
                0,
                top + 21,
                Label.Side.LEFT));
    }

    private static void row(Sketch sketch, double y, Stroking sample, String text, double angle) {
        sketch.line(sample, new Spot(0, y), new Spot(12, y));
        sketch.write(Label.of(text + " " + Figures.degrees(angle), 14, y, Label.Side.LEFT));
    }
}
