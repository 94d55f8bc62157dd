package collarwright.picture;

import collarwright.machining.SetupSheet;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * A stick of pipe in the chuck, seen from the front: X grows to the right from the jaw face, Z up from the pipe's axis.
 * Lengths along the stick are to scale; the pipe's width is not.
 */
public final class StickPicture implements Picture {

    private static final double HIGH = 20;
    private static final double TOP = 20;
    private static final double LEFT = 22;
    private static final double RIGHT = 8;

    /** A collar that is narrower in the picture has its number and pattern below the stick. */
    private static final double ROOMY = 11;

    private static final double ROW = 5;

    private final SetupSheet setup;
    private final Figures figures;
    private final double width;
    private final double scale;
    private final List<StickLabels.Placed> labels;
    private final double below;

    /**
     * Prepares the picture.
     *
     * @param setup what is loaded
     * @param figures the shop's unit
     * @param width mm on paper
     */
    public StickPicture(SetupSheet setup, Figures figures, double width) {
        this.setup = setup;
        this.figures = figures;
        this.width = width;
        this.scale = (width - LEFT - RIGHT) / setup.stick().stickOut();
        this.labels = collar() * scale > ROOMY
                ? List.of()
                : StickLabels.of(
                        setup.load(),
                        i -> x(setup.load().edge(i)),
                        i -> x(setup.load().edge(i) + collar()),
                        LEFT + 1,
                        width - 1);
        int rows = 1 + labels.stream().mapToInt(StickLabels.Placed::row).max().orElse(-1);
        this.below = rows == 0 ? 0 : rows * ROW + 1;
    }

    @Override
    public double width() {
        return width;
    }

    @Override
    public double height() {
        return TOP + HIGH + below + 22;
    }

    @Override
    public String describe() {
        return "The stick in the chuck: X0 at the jaw face, first mid-plane at X "
                + figures.length(setup.stick().firstMiddle()) + ", then every "
                + figures.length(setup.stick().pitch())
                + ", " + setup.load().collars() + " collars from the chuck: "
                + setup.load().laid() + ". " + setup.zero().top() + ".";
    }

    private double collar() {
        return 2 * (setup.stick().firstMiddle() - setup.stick().firstEdge());
    }

    private double x(double machineX) {
        return LEFT + machineX * scale;
    }

    private double middle() {
        return TOP + HIGH / 2;
    }

    @Override
    public void paint(Sketch sketch) {
        double end = x(setup.stick().stickOut());
        Rectangle2D pipe = new Rectangle2D.Double(LEFT - 14, TOP, end - LEFT + 14, HIGH);
        sketch.fill(Ink.PALE, pipe);
        sketch.draw(Stroking.edge(), pipe);
        chuck(sketch);
        collars(sketch);
        sketch.line(Stroking.axis(Ink.GREY), new Spot(2, middle()), new Spot(width, middle()));
        axes(sketch);
        lengths(sketch);
    }

    private void chuck(Sketch sketch) {
        for (double y : new double[] {TOP - 5, TOP + HIGH}) {
            Hatching.cut(sketch, new Rectangle2D.Double(LEFT - 14, y, 14, 5));
        }
        Hatching.cut(sketch, new Rectangle2D.Double(LEFT - 20, TOP - 8, 6, HIGH + 16));
    }

    private void collars(Sketch sketch) {
        int count = setup.load().collars();
        double collar = collar();
        Path2D.Double cuts = new Path2D.Double();
        for (int i = 1; i <= count; i++) {
            double edge = setup.load().edge(i);
            for (double x : new double[] {x(edge), x(edge + collar)}) {
                cuts.moveTo(x, TOP);
                cuts.lineTo(x, TOP + HIGH);
            }
            double at = x(edge + collar / 2);
            double radius = StrictMath.min(3.4, collar * scale * 0.3);
            sketch.draw(Stroking.solid(Stroking.NARROW, Ink.INK), Sketch.circle(new Spot(at, middle()), radius));
            if (labels.isEmpty()) {
                sketch.write(Label.of(Integer.toString(i), at, TOP + HIGH - 3, Label.Side.MIDDLE));
                sketch.write(Label.of(setup.load().pattern(i), at, TOP + 4, Label.Side.MIDDLE)
                        .strong());
            }
        }
        labels.forEach(label -> below(sketch, label));
        sketch.draw(Stroking.solid(Stroking.NARROW, Ink.INK), cuts);
    }

    /** A bracket under what a label names, and a line down to it. */
    private static void below(Sketch sketch, StickLabels.Placed label) {
        double bracket = TOP + HIGH + 1.2;
        double y = TOP + HIGH + 5 + label.row() * ROW;
        sketch.line(Stroking.thin(), new Spot(label.from() + 0.3, bracket), new Spot(label.to() - 0.3, bracket));
        sketch.line(Stroking.thin(), new Spot(label.tip(), bracket), new Spot(label.tip(), y - 2.2));
        sketch.write(Label.of(label.text(), label.x(), y, Label.Side.MIDDLE));
    }

    private void axes(Sketch sketch) {
        Spot zero = new Spot(LEFT, middle());
        sketch.line(Stroking.solid(Stroking.NARROW, Ink.DATUM), zero.plus(0, -HIGH / 2 - 12), zero);
        sketch.arrow(Ink.DATUM, zero.plus(0, -HIGH / 2 - 14), 0);
        sketch.write(Label.of("Z+", LEFT - 2, TOP - 12, Label.Side.RIGHT)
                .in(Ink.DATUM)
                .strong());
        sketch.line(
                Stroking.solid(Stroking.NARROW, Ink.DATUM), zero.plus(0, -HIGH / 2 - 6), zero.plus(14, -HIGH / 2 - 6));
        sketch.arrow(Ink.DATUM, zero.plus(16, -HIGH / 2 - 6), StrictMath.PI / 2);
        sketch.write(Label.of("X+", LEFT + 18, TOP - 6, Label.Side.LEFT)
                .in(Ink.DATUM)
                .strong());
        sketch.write(Label.of("X0 jaw face, Z0 on the axis", LEFT + 27, TOP - 6, Label.Side.LEFT)
                .in(Ink.DATUM));
        sketch.write(Label.of("free end", width - 1, TOP - 6, Label.Side.RIGHT).in(Ink.GREY));
    }

    private void lengths(Sketch sketch) {
        double under = TOP + HIGH + below;
        double y = under + 12;
        double first = x(setup.stick().firstMiddle());
        sketch.draw(
                Stroking.thin(), Sketch.chain(List.of(new Spot(LEFT, TOP + HIGH + 5), new Spot(LEFT, y + 9)), false));
        sketch.line(Stroking.thin(), new Spot(first, under + 1), new Spot(first, y + 1));
        sketch.line(Stroking.thin(), new Spot(LEFT, y), new Spot(first, y));
        sketch.arrow(Ink.GREY, new Spot(first, y), StrictMath.PI / 2);
        String text = "first mid-plane X " + figures.length(setup.stick().firstMiddle())
                + (setup.load().collars() > 1
                        ? ", then every " + figures.length(setup.stick().pitch())
                        : "");
        sketch.write(Label.of(text, first + 3, y, Label.Side.LEFT).onPaper());
        double end = x(setup.stick().stickOut());
        sketch.line(Stroking.thin(), new Spot(end, under + 1), new Spot(end, y + 9));
        Dimensions.across(
                sketch,
                new Spot(LEFT, y + 7.5),
                new Spot(end, y + 7.5),
                "stands out " + figures.length(setup.stick().stickOut()));
    }
}
