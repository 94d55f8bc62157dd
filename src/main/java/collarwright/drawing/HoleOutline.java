package collarwright.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A round hole, drilled square to the pipe's axis, unrolled on a paper that is wrapped round the pipe. It is as high as
 * the drill and wider than it.
 *
 * <p>Frame: the hole's axis is the origin, x along the girth, y along the pipe's axis.
 *
 * <p>Source: round hole in a pipe, unrolled: along = p cos φ, girth = R arcsin(p sin φ / R) (standard geometry; drawn as
 * a construction in books on sheet metal, such as A. Dickason, The Geometry of Sheet Metal Work). The middle of a paper
 * of thickness τ lies at R + τ/2, so its girth is longer in that ratio.
 *
 * @param pipeRadius radius R of the pipe's face that the paper lies on
 * @param paper thickness τ of what is wrapped round it; below 0 for what is laid in it
 * @param holeRadius radius p of the drilled hole, less than the pipe's
 */
public record HoleOutline(double pipeRadius, double paper, double holeRadius) {
    private static final int LEAST_CORNERS = 24;
    private static final int MOST_CORNERS = 4096;
    private static final int SAMPLES = 16;

    /** Checks the sizes. */
    public HoleOutline {
        if (!(holeRadius > 0 && holeRadius < pipeRadius && pipeRadius + paper / 2 > 0)
                || !Double.isFinite(pipeRadius + paper)) {
            throw new IllegalArgumentException(
                    "a hole of radius " + holeRadius + " does not go into a pipe of radius " + pipeRadius);
        }
    }

    /**
     * Returns the radius at which lengths on the paper are measured.
     *
     * @return radius of the middle of the paper
     */
    public double paperRadius() {
        return pipeRadius + paper / 2;
    }

    /**
     * Returns half of its width on the paper.
     *
     * @return more than the hole's radius
     */
    public double halfWidth() {
        return at(StrictMath.PI / 2).x();
    }

    /**
     * Returns one point of the outline.
     *
     * @param angle round the hole's axis, 0 toward +y
     * @return the point on the paper
     */
    public Point at(double angle) {
        double across = holeRadius * StrictMath.sin(angle) / pipeRadius;
        return new Point(paperRadius() * StrictMath.asin(across), holeRadius * StrictMath.cos(angle));
    }

    /**
     * Returns the outline as a closed polygon.
     *
     * @param chordError the most by which a straight piece may stray from the curve, above 0
     * @return its corners, counter-clockwise from the least x; all lie on the curve, four of them at its extremes
     */
    public List<Point> corners(double chordError) {
        if (!(chordError > 0)) {
            throw new IllegalArgumentException("a chord error is above 0, not " + chordError);
        }
        int count = LEAST_CORNERS;
        while (count < MOST_CORNERS && strays(count) > chordError) {
            count += 4;
        }
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            corners.add(corner(i, count));
        }
        return List.copyOf(corners);
    }

    /**
     * Returns half of the width of a larger hole on the paper, at some height. Boxes can be kept clear of the hole by it,
     * because the outline is convex and symmetrical in both axes.
     *
     * @param height above or below the hole's axis
     * @param clearance how much the drilled hole's radius is taken larger
     * @return 0 above and below that hole; a quarter of the girth at most
     */
    public double halfWidthAt(double height, double clearance) {
        double radius = holeRadius + clearance;
        double square = radius * radius - height * height;
        if (!(square > 0)) {
            return 0;
        }
        double across = StrictMath.sqrt(square) / pipeRadius;
        return paperRadius() * StrictMath.asin(StrictMath.min(1, across));
    }

    /**
     * Tells whether a box lies within the hole.
     *
     * @param box in the frame of the outline
     * @param clearance how much the drilled hole's radius is taken smaller
     * @return true if every point of the box lies inside the smaller hole
     */
    public boolean holds(Box box, double clearance) {
        double x = StrictMath.max(StrictMath.abs(box.left()), StrictMath.abs(box.right()));
        double y = StrictMath.max(StrictMath.abs(box.bottom()), StrictMath.abs(box.top()));
        return holeRadius > clearance && inside(x, y, holeRadius - clearance);
    }

    // Rolls the point back on the pipe and looks down the hole's axis.
    private boolean inside(double x, double y, double radius) {
        double turn = x / paperRadius();
        if (turn >= StrictMath.PI / 2) {
            return false;
        }
        double across = pipeRadius * StrictMath.sin(turn);
        return across * across + y * y < radius * radius;
    }

    // Starts at -x and runs over -y. Each quarter mirrors the first one, so the outline is exactly symmetrical.
    private Point corner(int i, int count) {
        int quarter = count / 4;
        int step = i % quarter;
        int turns = i / quarter;
        boolean fromSide = turns % 2 == 0;
        Point p = at(StrictMath.PI / 2 * (fromSide ? quarter - step : step) / quarter);
        double x = step == 0 && !fromSide ? 0 : p.x();
        double y = step == 0 && fromSide ? 0 : p.y();
        double signX = turns == 0 || turns == 3 ? -1 : 1;
        double signY = turns < 2 ? -1 : 1;
        // + 0 turns −0 into 0.
        return new Point(signX * x + 0.0, signY * y + 0.0);
    }

    // One quarter is enough: the others mirror it.
    private double strays(int count) {
        double most = 0;
        double step = 2 * StrictMath.PI / count;
        for (int i = 0; i < count / 4; i++) {
            Point a = at(i * step);
            Point b = at((i + 1) * step);
            double chord = a.distance(b);
            for (int k = 1; k < SAMPLES; k++) {
                Point p = at((i + (double) k / SAMPLES) * step);
                double area = (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
                most = StrictMath.max(most, StrictMath.abs(area) / chord);
            }
        }
        return most;
    }
}
