package collarwright.collar;

import java.util.List;

/**
 * The solution of the linear problem: the largest gain that leaves some centre clear of all tangents.
 *
 * @param gain of the unknown
 * @param a place of the circle's centre along the lean
 * @param b across
 * @param places where the three tangents that hold it touch their rims
 */
record TangentCorner(double gain, double a, double b, List<Place> places) {

    /** Keeps the places. */
    TangentCorner {
        places = List.copyOf(places);
    }

    /**
     * A place on a rim.
     *
     * @param outer whether on the outer rim
     * @param phi round the rim, from the far side of the lean
     */
    record Place(boolean outer, double phi) {}

    /**
     * A tangent of a rim: {@code room + slope·gain − na·a − nb·b} is how far a circle about (a, b) is clear of it.
     *
     * @param place where it touches
     * @param room of a circle about the origin
     * @param slope how much room a gain of the unknown makes
     * @param na outward normal, along the lean
     * @param nb across
     */
    record Tangent(Place place, double room, double slope, double na, double nb) {}

    /** Of a rim's size: a tangent that is crossed by less is not crossed. */
    private static final double ROUNDING = 1e-12;

    static TangentCorner best(List<Tangent> tangents, double scale) {
        Tangent[] all = tangents.toArray(Tangent[]::new);
        double[] best = {Double.NEGATIVE_INFINITY, 0, 0};
        int[] held = new int[3];
        double[] trial = new double[3];
        for (int i = 0; i < all.length; i++) {
            for (int j = i + 1; j < all.length; j++) {
                for (int k = j + 1; k < all.length; k++) {
                    if (meet(all[i], all[j], all[k], trial) && trial[0] > best[0] && clear(all, trial, scale)) {
                        System.arraycopy(trial, 0, best, 0, 3);
                        held[0] = i;
                        held[1] = j;
                        held[2] = k;
                    }
                }
            }
        }
        if (best[0] == Double.NEGATIVE_INFINITY) {
            throw new IllegalStateException("rims without a corner");
        }
        List<Place> places = List.of(all[held[0]].place(), all[held[1]].place(), all[held[2]].place());
        return new TangentCorner(best[0], best[1], best[2], places);
    }

    // Where room + slope·gain − na·a − nb·b is 0 for all three; false if they have no such point.
    private static boolean meet(Tangent u, Tangent v, Tangent w, double[] out) {
        double uv = u.na() * v.nb() - u.nb() * v.na();
        double vw = v.na() * w.nb() - v.nb() * w.na();
        double wu = w.na() * u.nb() - w.nb() * u.na();
        double det = u.slope() * vw + v.slope() * wu + w.slope() * uv;
        if (StrictMath.abs(det) < 1e-300) {
            return false;
        }
        double gain = -(u.room() * vw + v.room() * wu + w.room() * uv) / det;
        double ru = u.room() + u.slope() * gain;
        double rv = v.room() + v.slope() * gain;
        double rw = w.room() + w.slope() * gain;
        out[0] = gain;
        // From the two tangents that cross at the steepest angle.
        double most = StrictMath.max(StrictMath.abs(uv), StrictMath.max(StrictMath.abs(vw), StrictMath.abs(wu)));
        if (most == StrictMath.abs(uv)) {
            cross(u, ru, v, rv, uv, out);
        } else if (most == StrictMath.abs(vw)) {
            cross(v, rv, w, rw, vw, out);
        } else {
            cross(w, rw, u, ru, wu, out);
        }
        return most > 0;
    }

    private static void cross(Tangent u, double ru, Tangent v, double rv, double det, double[] out) {
        out[1] = (ru * v.nb() - rv * u.nb()) / det;
        out[2] = (u.na() * rv - v.na() * ru) / det;
    }

    private static boolean clear(Tangent[] all, double[] at, double scale) {
        for (Tangent t : all) {
            if (t.room() + t.slope() * at[0] - t.na() * at[1] - t.nb() * at[2] < -ROUNDING * scale) {
                return false;
            }
        }
        return true;
    }
}
