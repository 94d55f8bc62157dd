package collarwright.picture;

import java.awt.BasicStroke;
import java.util.List;

/**
 * How a line is drawn. Two widths, 2 : 1, as technical drawings have them, and a finer one for what stands back.
 *
 * @param width mm on paper
 * @param dash lengths of dashes and gaps in turn, mm; empty for a continuous line
 * @param ink its colour
 */
public record Stroking(double width, List<Double> dash, Ink ink) {

    /** Width of visible edges. */
    public static final double WIDE = 0.5;

    /** Width of all other lines. */
    public static final double NARROW = 0.25;

    /** Width of lines on the far side. */
    public static final double FINE = 0.1875;

    /** Checks the lengths and keeps the dashes. */
    public Stroking {
        dash = List.copyOf(dash);
        if (!(width > 0) || dash.size() % 2 != 0 || dash.stream().anyMatch(d -> !(d > 0))) {
            throw new IllegalArgumentException("a line needs a width, and a gap for each dash");
        }
    }

    /**
     * A continuous line.
     *
     * @param width mm
     * @param ink its colour
     * @return the line
     */
    public static Stroking solid(double width, Ink ink) {
        return new Stroking(width, List.of(), ink);
    }

    /**
     * A visible edge.
     *
     * @return wide and continuous
     */
    public static Stroking edge() {
        return solid(WIDE, Ink.INK);
    }

    /**
     * A dimension or help line.
     *
     * @return narrow and continuous
     */
    public static Stroking thin() {
        return solid(NARROW, Ink.GREY);
    }

    /**
     * A hidden edge.
     *
     * @return narrow and dashed
     */
    public static Stroking hidden() {
        return new Stroking(NARROW, List.of(1.5, 1.0), Ink.INK);
    }

    /**
     * An axis.
     *
     * @param ink its colour
     * @return narrow, long dashes and dots
     */
    public static Stroking axis(Ink ink) {
        return new Stroking(NARROW, List.of(5.0, 1.0, 0.5, 1.0), ink);
    }

    BasicStroke toStroke() {
        if (dash.isEmpty()) {
            return new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
        }
        float[] lengths = new float[dash.size()];
        for (int i = 0; i < lengths.length; i++) {
            lengths[i] = dash.get(i).floatValue();
        }
        return new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, lengths, 0);
    }
}
