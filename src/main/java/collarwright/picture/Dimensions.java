package collarwright.picture;

/** Dimension lines: arrows at both ends, the figure in a gap of the line, never turned. */
final class Dimensions {

    private Dimensions() {}

    /** A level dimension, from left to right. */
    static void across(Sketch sketch, Spot left, Spot right, String figure) {
        sketch.line(Stroking.thin(), left, right);
        sketch.arrow(Ink.GREY, left, 1.5 * StrictMath.PI);
        sketch.arrow(Ink.GREY, right, 0.5 * StrictMath.PI);
        Spot middle = left.middle(right);
        boolean inside = right.x() - left.x() > sketch.widthOf(figure) + 8;
        double y = inside ? middle.y() : middle.y() + 4;
        sketch.write(Label.of(figure, middle.x(), y, Label.Side.MIDDLE).onPaper());
    }

    /** An upright dimension, from top to bottom. */
    static void upright(Sketch sketch, Spot top, Spot bottom, String figure) {
        sketch.line(Stroking.thin(), top, bottom);
        sketch.arrow(Ink.GREY, top, 0);
        sketch.arrow(Ink.GREY, bottom, StrictMath.PI);
        Spot middle = top.middle(bottom);
        sketch.write(Label.of(figure, middle.x(), middle.y(), Label.Side.MIDDLE).onPaper());
    }
}
