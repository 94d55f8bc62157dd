package collarwright.picture;

import collarwright.collar.CollarBody;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import java.awt.geom.Path2D;
import java.util.stream.Collectors;

/** A collar cut through at the height of its holes, seen from above: every hole with its number, azimuth and cutter. */
public final class RingPicture implements Picture {

    private static final double MARGIN = 18;

    private final CollarBody body;
    private final Pattern pattern;
    private final double width;
    private final Spot centre;
    private final double scale;

    /**
     * Prepares the picture.
     *
     * @param body the collar
     * @param pattern its holes
     * @param width mm on paper
     */
    public RingPicture(CollarBody body, Pattern pattern, double width) {
        this.body = body;
        this.pattern = pattern;
        this.width = width;
        this.centre = new Spot(width / 2, width / 2 - 2);
        this.scale = (width / 2 - MARGIN) / body.outerRadius();
    }

    @Override
    public double width() {
        return width;
    }

    @Override
    public double height() {
        return width - 4;
    }

    @Override
    public String describe() {
        return "Collar of pattern " + pattern.id() + " seen from above, clockwise from the 0° line: "
                + pattern.holes().stream()
                        .map(h -> "hole " + h.number() + " at " + Figures.degrees(h.azimuth()) + ", "
                                + h.cutter().marked())
                        .collect(Collectors.joining("; "))
                + ".";
    }

    @Override
    public void paint(Sketch sketch) {
        double outer = body.outerRadius() * scale;
        // The lower half of the collar, seen beyond the cut.
        sketch.draw(Stroking.thin(), Sketch.circle(centre, outer));
        sketch.draw(Stroking.thin(), Sketch.circle(centre, body.innerRadius() * scale));
        for (int i = 0; i < pattern.holes().size(); i++) {
            Path2D web = web(i);
            sketch.fill(Ink.TINT, web);
            sketch.draw(Stroking.edge(), web);
        }
        for (Hole hole : pattern.holes()) {
            axis(sketch, hole, outer);
        }
        turn(sketch);
        pattern.holes().forEach(hole -> letters(sketch, hole, outer));
    }

    // The wall between a hole and the next: the sides of a radial hole are parallel to its axis.
    private Path2D web(int index) {
        Hole from = pattern.holes().get(index);
        Hole to = pattern.holes().get((index + 1) % pattern.holes().size());
        double turn = index + 1 < pattern.holes().size() ? 0 : 2 * StrictMath.PI;
        Path2D.Double path = new Path2D.Double();
        Sketch.arc(
                path,
                centre,
                body.outerRadius() * scale,
                edge(from, body.outerRadius(), 1),
                turn + edge(to, body.outerRadius(), -1));
        Sketch.arc(
                path,
                centre,
                body.innerRadius() * scale,
                turn + edge(to, body.innerRadius(), -1),
                edge(from, body.innerRadius(), 1));
        path.closePath();
        return path;
    }

    private static double edge(Hole hole, double radius, int side) {
        return hole.azimuth() + side * StrictMath.asin(hole.diameter() / 2 / radius);
    }

    private void axis(Sketch sketch, Hole hole, double outer) {
        boolean datum = hole.number() == 1;
        Stroking style = Stroking.axis(datum ? Ink.DATUM : Ink.GREY);
        double from = datum ? 0 : body.innerRadius() * scale - 1.5;
        sketch.line(style, centre.polar(from, hole.azimuth()), centre.polar(outer + 2, hole.azimuth()));
    }

    // Which way azimuth grows.
    private void turn(Sketch sketch) {
        double radius = body.innerRadius() * scale * 0.46;
        Path2D.Double arc = new Path2D.Double();
        double end = 5.0 / 3 * StrictMath.PI;
        Sketch.arc(arc, centre, radius, 0.25, end);
        sketch.draw(Stroking.solid(Stroking.NARROW, Ink.DATUM), arc);
        sketch.arrow(Ink.DATUM, centre.polar(radius, end + 0.1), end + 0.1 + StrictMath.PI / 2);
    }

    private void letters(Sketch sketch, Hole hole, double outer) {
        double inside = body.innerRadius() * scale - 2.2 - Badges.RADIUS;
        Badges.number(sketch, centre.polar(inside, hole.azimuth()), hole.number());
        double sine = StrictMath.abs(StrictMath.sin(hole.azimuth()));
        double cosine = StrictMath.abs(StrictMath.cos(hole.azimuth()));
        Spot at = centre.polar(outer + 3.4 + 5.6 * sine + 2.6 * cosine, hole.azimuth());
        Ink ink = hole.number() == 1 ? Ink.DATUM : Ink.INK;
        sketch.write(Label.of(Figures.degrees(hole.azimuth()), at.x(), at.y() - 2.5, Label.Side.MIDDLE)
                .in(ink));
        sketch.write(Label.of(hole.cutter().marked(), at.x(), at.y() + 2.5, Label.Side.MIDDLE)
                .strong());
    }
}
