package collarwright.drawing;

import collarwright.tooling.GuideSaddle;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/** Draws a drill guide's saddle: its outline, the hole's axis, and where the sides of the cutter are. */
public final class SaddleDrawing {
    private static final List<Double> HEIGHTS = List.of(4.0, 3.5, 3.0, 2.5, 2.0, 1.5);
    private static final double TICK = 6;
    private static final double CLEAR = 1;

    private final GuideSaddle saddle;
    private final Cut cut;
    private final Drawing drawing = new Drawing();

    private SaddleDrawing(GuideSaddle saddle, Cut cut) {
        this.saddle = saddle;
        this.cut = cut;
    }

    /**
     * Draws a saddle.
     *
     * @param saddle the block
     * @param revision the job's revision
     * @param cut kerf and lead-ins
     * @return the part in the frame of the block
     */
    public static FlatPart draw(GuideSaddle saddle, String revision, Cut cut) {
        SaddleDrawing it = new SaddleDrawing(saddle, cut);
        it.outline();
        it.axis();
        double half = saddle.width() / 2;
        it.words(List.of(saddle.cutter().marked(), "OD " + Decimals.trimmed(2 * saddle.radius(), 2)), 2, half - 2);
        it.words(List.of("axis", revision), -half + 2, -2);
        return new FlatPart("saddle " + saddle.cutter().id(), it.drawing.layers());
    }

    private double foot(double x, double radius) {
        return saddle.axis() + StrictMath.sqrt(radius * radius - x * x);
    }

    private void outline() {
        double kerf = cut.kerfOutside() / 2;
        double half = saddle.width() / 2 + kerf;
        double radius = saddle.radius() - kerf;
        double top = saddle.height() + kerf;
        double y = foot(half, radius);
        double sweep = 2 * StrictMath.asin(half / radius);
        drawing.add(
                Role.CUT_OUTSIDE,
                new Path(
                        List.of(
                                // Over the pipe from left to right: clockwise round its axis.
                                new Vertex(new Point(-half, y), -StrictMath.tan(sweep / 4)),
                                new Vertex(new Point(half, y), 0),
                                new Vertex(new Point(half, top), 0),
                                new Vertex(new Point(-half, top), 0)),
                        true));
        if (cut.leadIn() > 0) {
            drawing.add(Role.LEAD_IN, Line.of(half / 2, top + cut.leadIn(), half / 2, top));
        }
    }

    private void axis() {
        drawing.add(Role.MARK, Line.of(0, saddle.sagitta() + CLEAR, 0, saddle.height() - CLEAR));
        double side = saddle.cutter().size() / 2;
        if (side < saddle.width() / 2 - 2 * CLEAR) {
            for (double x : new double[] {-side, side}) {
                double y = foot(x, saddle.radius()) + CLEAR;
                drawing.add(Role.MARK, Line.of(x, y, x, y + TICK));
            }
        }
    }

    // From the top down, beside the axis, as large as the column lets them be.
    private void words(List<String> texts, double left, double right) {
        List<String> said = new ArrayList<>(texts);
        said.replaceAll(StrokeFont::say);
        double height = HEIGHTS.stream()
                .filter(h -> said.stream().allMatch(t -> StrokeFont.width(t, h) <= right - left))
                .findFirst()
                .orElse(HEIGHTS.get(HEIGHTS.size() - 1));
        double y = saddle.height() - 2 * CLEAR - height;
        for (String text : said) {
            drawing.add(Role.MARK, Label.centred(text, height, (left + right) / 2, y));
            y -= 1.7 * height;
        }
    }
}
