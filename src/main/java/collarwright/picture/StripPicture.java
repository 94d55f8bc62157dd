package collarwright.picture;

import collarwright.collar.CollarBody;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * A collar opened out flat, its outer face toward the eye, TOP up: azimuth grows to the left. It is drawn as if cut in the
 * middle of the web before hole 1, so that all distances from the 0° line run one way.
 */
public final class StripPicture implements Picture {

    private static final double TOP = 7;
    private static final double FOOT = 13.5;

    private final CollarBody body;
    private final Pattern pattern;
    private final Figures figures;
    private final double width;
    private final double scale;

    /**
     * Prepares the picture.
     *
     * @param body the collar
     * @param pattern its holes
     * @param figures the shop's unit
     * @param width mm on paper
     */
    public StripPicture(CollarBody body, Pattern pattern, Figures figures, double width) {
        this.body = body;
        this.pattern = pattern;
        this.figures = figures;
        this.width = width;
        this.scale = (width - 2) / (2 * StrictMath.PI * body.outerRadius());
    }

    @Override
    public double width() {
        return width;
    }

    @Override
    public double height() {
        return TOP + body.width() * scale + FOOT;
    }

    @Override
    public String describe() {
        return "Collar of pattern " + pattern.id() + " opened out, outer face toward you, TOP up: "
                + pattern.holes().size() + " holes, counted to the left from the 0° line.";
    }

    private double lastGap() {
        return 2 * StrictMath.PI
                - pattern.holes().get(pattern.holes().size() - 1).azimuth();
    }

    // On paper azimuth grows to the left, from half the last gap to the right of hole 1.
    private double x(double azimuth) {
        return width - 1 - (azimuth + lastGap() / 2) * body.outerRadius() * scale;
    }

    private double y(double height) {
        return TOP + (body.width() / 2 - height) * scale;
    }

    @Override
    public void paint(Sketch sketch) {
        double bottom = y(-body.width() / 2);
        Rectangle2D strip = new Rectangle2D.Double(1, TOP, width - 2, bottom - TOP);
        sketch.fill(Ink.TINT, strip);
        for (Hole hole : pattern.holes()) {
            Path2D outline = outline(hole);
            sketch.fill(Ink.PAPER, outline);
            sketch.draw(Stroking.edge(), outline);
        }
        sketch.draw(Stroking.edge(), strip);
        sketch.line(Stroking.axis(Ink.GREY), new Spot(0, y(0)), new Spot(width, y(0)));
        sketch.line(Stroking.axis(Ink.DATUM), new Spot(x(0), TOP - 2), new Spot(x(0), bottom + 3));
        sketch.write(Label.of("▲ TOP", 1, TOP - 3.4, Label.Side.LEFT).strong());
        sketch.write(Label.of("0° line", StrictMath.min(x(0), width - 8), TOP - 3.6, Label.Side.MIDDLE)
                .in(Ink.DATUM));
        distances(sketch, bottom);
    }

    private Path2D outline(Hole hole) {
        double p = hole.diameter() / 2;
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < 72; i++) {
            double turn = i * StrictMath.PI / 36;
            double across = StrictMath.asin(p * StrictMath.sin(turn) / body.outerRadius());
            spots.add(new Spot(x(hole.azimuth() + across), y(hole.height() + p * StrictMath.cos(turn))));
        }
        return Sketch.chain(spots, true);
    }

    private void distances(Sketch sketch, double bottom) {
        for (Hole hole : pattern.holes()) {
            double x = x(hole.azimuth());
            Badges.number(sketch, new Spot(x, y(hole.height())), hole.number());
            if (hole.number() > 1) {
                sketch.line(Stroking.thin(), new Spot(x, bottom + 0.8), new Spot(x, bottom + 3));
            }
            String distance = figures.length(hole.azimuth() * body.outerRadius());
            String text = hole.number() == 1 ? "0" : distance.substring(0, distance.indexOf(' '));
            sketch.write(
                    Label.of(text, x, bottom + 5.6, Label.Side.MIDDLE).in(hole.number() == 1 ? Ink.DATUM : Ink.INK));
        }
        sketch.write(Label.of(
                        "distance from the 0° line on the outside, "
                                + figures.units().symbol(),
                        width - 1,
                        bottom + 10.8,
                        Label.Side.RIGHT)
                .in(Ink.GREY));
    }
}
