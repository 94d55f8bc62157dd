package collarwright.collar;

import collarwright.collar.TangentCorner.Place;
import collarwright.collar.TangentCorner.Tangent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A circle between outlines, moved until it can grow no more.
 *
 * <p>Outlines are given as points. How near an outline comes is taken from the parabola through its nearest point and the
 * two beside it, which is as good as the curve itself. Then the outlines are replaced by their tangents where they come
 * nearest, the place where a circle has most room between these is taken, and tangents are added there, until nothing is
 * gained (the cutting planes of J. E. Kelley, The cutting-plane method for solving convex programs, J. SIAM 8 (1960)
 * 703-712; from memory). Outlines may be hollow here and there, as a slot's long side is: short steps end the search, which
 * count with nothing but what lies round the place they start from.
 */
final class GrownCircle {

    private static final int MOST_STEPS = 60;
    private static final int MOST_CUTS = 14;
    /** Of the outlines' size: a gain that no longer counts. */
    private static final double ENOUGH = 1e-10;
    /** Of the outlines' size: how much further off than the nearest a place still counts as near. */
    private static final double BAND = 0.02;
    /** Cosine between two tangents' normals, 20°, from where on they hold the circle the same way. */
    private static final double SAME_WAY = 0.94;
    /** Of the outlines' size: how far the first step may go. */
    private static final double FIRST_SPAN = 0.05;
    /** Of the outlines' size: what a step this short gains is nothing. */
    private static final double LEAST_SPAN = 1e-7;

    private final List<double[][]> outlines;
    private final double size;
    private final List<Tangent> cuts = new ArrayList<>();

    private double a;
    private double b;
    private double radius;

    /**
     * Prepares.
     *
     * @param outlines closed, each two rows: of all points the one coordinate, and the other
     * @param size of the outlines
     */
    GrownCircle(List<double[][]> outlines, double size) {
        this.outlines = List.copyOf(outlines);
        this.size = size;
    }

    /**
     * Grows.
     *
     * @param startA where the circle's centre is at first
     * @param startB the other coordinate
     * @return the radius of the largest circle near there
     */
    double from(double startA, double startB) {
        a = startA;
        b = startB;
        radius = look(a, b);
        betweenTangents();
        climb();
        return radius;
    }

    // Outlines that bulge out everywhere lie inside their tangents: none is ever dropped for being wrong.
    private void betweenTangents() {
        double span = FIRST_SPAN * size;
        for (int step = 0; step < MOST_STEPS && span > ENOUGH * size; step++) {
            TangentCorner corner = TangentCorner.best(within(span), size);
            if (corner.gain() - radius <= ENOUGH * size) {
                return;
            }
            span = moved(corner) ? span : span / 2;
            forget();
        }
    }

    // Where an outline is hollow, tangents laid elsewhere stand in the way: only those of the place itself count here.
    private void climb() {
        double span = FIRST_SPAN * size / 8;
        for (int step = 0; step < MOST_STEPS && span > LEAST_SPAN * size; step++) {
            cuts.clear();
            look(a, b);
            TangentCorner corner = TangentCorner.best(within(span), size);
            if (corner.gain() - radius <= ENOUGH * size) {
                return;
            }
            span = moved(corner) ? 2 * span : span / 3;
        }
    }

    private boolean moved(TangentCorner corner) {
        double there = look(corner.a(), corner.b());
        if (!(there > radius)) {
            return false;
        }
        radius = there;
        a = corner.a();
        b = corner.b();
        return true;
    }

    // All cuts, and the four sides of the square that a step may not leave.
    private List<Tangent> within(double span) {
        List<Tangent> all = new ArrayList<>(cuts);
        Place none = new Place(false, 0);
        all.add(new Tangent(none, a + span, 0, 1, 0));
        all.add(new Tangent(none, span - a, 0, -1, 0));
        all.add(new Tangent(none, b + span, 0, 0, 1));
        all.add(new Tangent(none, span - b, 0, 0, -1));
        return all;
    }

    // Keeps the cuts that come nearest to the circle.
    private void forget() {
        if (cuts.size() > MOST_CUTS) {
            cuts.sort(Comparator.comparingDouble(cut -> cut.room() - cut.na() * a - cut.nb() * b));
            cuts.subList(MOST_CUTS, cuts.size()).clear();
        }
    }

    // The room at a place; adds a cut wherever an outline comes near.
    private double look(double atA, double atB) {
        List<Tangent> near = new ArrayList<>();
        double least = Double.POSITIVE_INFINITY;
        for (double[][] outline : outlines) {
            double[] squares = squares(outline, atA, atB);
            int count = squares.length;
            for (int i = 0; i < count; i++) {
                int before = (i + count - 1) % count;
                int after = (i + 1) % count;
                if (squares[i] <= squares[before] && squares[i] < squares[after]) {
                    Tangent cut = cut(outline, squares, new int[] {before, i, after}, new double[] {atA, atB});
                    near.add(cut);
                    least = StrictMath.min(least, cut.room() - cut.na() * atA - cut.nb() * atB);
                }
            }
        }
        double most = least + BAND * size;
        cuts.addAll(spread(near.stream()
                .filter(cut -> cut.room() - cut.na() * atA - cut.nb() * atB <= most)
                .sorted(Comparator.comparingDouble(cut -> cut.room() - cut.na() * atA - cut.nb() * atB))
                .toList()));
        return least;
    }

    // Where a circle nearly fills a round hole, it is near all round: the nearest each way are enough.
    private static List<Tangent> spread(List<Tangent> nearestFirst) {
        List<Tangent> kept = new ArrayList<>();
        for (Tangent cut : nearestFirst) {
            if (kept.stream().noneMatch(other -> other.na() * cut.na() + other.nb() * cut.nb() > SAME_WAY)) {
                kept.add(cut);
            }
        }
        return kept;
    }

    private static double[] squares(double[][] outline, double atA, double atB) {
        double[] squares = new double[outline[0].length];
        for (int i = 0; i < squares.length; i++) {
            double da = outline[0][i] - atA;
            double db = outline[1][i] - atB;
            squares[i] = da * da + db * db;
        }
        return squares;
    }

    private static Tangent cut(double[][] outline, double[] squares, int[] three, double[] at) {
        double bend = squares[three[0]] - 2 * squares[three[1]] + squares[three[2]];
        double along = bend > 0 ? (squares[three[0]] - squares[three[2]]) / (2 * bend) : 0;
        double pa = parabola(outline[0], three, along) - at[0];
        double pb = parabola(outline[1], three, along) - at[1];
        double distance = StrictMath.sqrt(pa * pa + pb * pb);
        double na = pa / distance;
        double nb = pb / distance;
        return new Tangent(new Place(false, 0), distance + na * at[0] + nb * at[1], -1, na, nb);
    }

    private static double parabola(double[] values, int[] three, double along) {
        double before = values[three[0]];
        double middle = values[three[1]];
        double after = values[three[2]];
        return middle + along * (after - before) / 2 + along * along * (before - 2 * middle + after) / 2;
    }
}
