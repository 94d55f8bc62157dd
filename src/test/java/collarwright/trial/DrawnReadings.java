package collarwright.trial;

import collarwright.collar.Direction;
import collarwright.collar.ProjectedRims;
import collarwright.collar.RoundAperture;
import collarwright.collar.StrutSection;
import collarwright.collar.SwungContact.Wall;
import collarwright.testing.Seeds;
import java.util.ArrayList;
import java.util.List;

/**
 * Readings of a ladder for a bearing wall and an oversize that are known, drawn with another solver than the fit's: the
 * projected rims of a hole of any shape, tabled over the hole's size and read between its lines by Neville's rule.
 */
final class DrawnReadings {
    private static final int LINES = 48;
    private static final int HALVINGS = 26;
    private static final int NEAR = 4;
    private static final double LEAST_READ = StrictMath.toRadians(0.05);

    private final double strut;
    private final List<Double> sizes;
    private final Guess truth;
    private final double step;
    private final double[] angles = new double[LINES];

    DrawnReadings(TrialCollar collar, double strut, List<Double> sizes, Guess truth) {
        this.strut = strut;
        this.sizes = List.copyOf(sizes);
        this.truth = truth;
        double widest = sizes.get(sizes.size() - 1) + truth.oversize() + 0.6 - strut;
        step = StrictMath.sqrt(widest) / (LINES - 1);
        double half = truth.bearing() / 2;
        Wall wall = new Wall(collar.middle() - half, collar.middle() + half);
        for (int i = 1; i < LINES; i++) {
            angles[i] = limit(new ProjectedRims(new RoundAperture(strut + i * step * i * step), wall));
        }
    }

    private double limit(ProjectedRims rims) {
        double low = 0;
        double high = StrictMath.toRadians(60);
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (rims.thickest(new Direction(middle, 0), StrutSection.round(1), 0) >= strut) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** The lean at which the strut binds in a hole, by the table. */
    double angle(double hole) {
        double at = StrictMath.sqrt(hole - strut) / step;
        int first = (int) StrictMath.max(0, StrictMath.min(LINES - NEAR, StrictMath.floor(at) - 1));
        double[] values = new double[NEAR];
        for (int i = 0; i < NEAR; i++) {
            values[i] = angles[first + i];
        }
        for (int level = 1; level < NEAR; level++) {
            for (int i = 0; i < NEAR - level; i++) {
                double left = at - first - i;
                values[i] = (values[i] * (level - left) + values[i + 1] * left) / level;
            }
        }
        return values[0];
    }

    /** Readings off by chance, in holes that come out wider or narrower by chance; one too tight for the strut is not read. */
    List<TrialRow> draw(int readings, double noise, double scatter, Seeds seeds) {
        List<TrialRow> rows = new ArrayList<>();
        for (int hole = 1; hole <= sizes.size(); hole++) {
            double size = sizes.get(hole - 1);
            double drilled = size + truth.oversize() + scatter * Ladders.gauss(seeds);
            for (int i = 0; i < readings; i++) {
                double stray = noise * Ladders.gauss(seeds);
                if (drilled > strut) {
                    double angle = StrictMath.max(angle(drilled) + stray, LEAST_READ);
                    rows.add(new TrialRow(hole, "drill", size, false, strut, angle));
                }
            }
        }
        return rows;
    }
}
