package collarwright.trial;

import collarwright.collar.RoundHole;
import collarwright.testing.Seeds;
import java.util.ArrayList;
import java.util.List;

/** Readings drawn from a bearing wall and an oversize that are known. */
final class Ladders {
    static final TrialCollar COLLAR = new TrialCollar(80, 4.7);
    static final double STRUT = 40;
    static final List<Double> SIZES = List.of(40.5, 41.0, 41.5, 42.5, 43.5, 45.0);

    private Ladders() {}

    /** Three readings in every hole, off by chance. */
    static List<TrialRow> read(TrialCollar collar, Guess truth, double noise, Seeds seeds) {
        return read(collar, truth, noise, 0, seeds);
    }

    /** The same with holes that come out wider or narrower by chance, too. */
    static List<TrialRow> read(TrialCollar collar, Guess truth, double noise, double scatter, Seeds seeds) {
        List<TrialRow> rows = new ArrayList<>();
        for (int hole = 1; hole <= SIZES.size(); hole++) {
            double size = SIZES.get(hole - 1);
            double half = truth.bearing() / 2;
            double drilled = size + truth.oversize() + (scatter > 0 ? scatter * gauss(seeds) : 0);
            double limit = RoundHole.tiltLimit(
                    STRUT, StrictMath.max(STRUT, drilled), collar.middle() - half, collar.middle() + half);
            for (int i = 0; i < 3; i++) {
                double angle = StrictMath.max(limit + noise * gauss(seeds), StrictMath.toRadians(0.05));
                rows.add(new TrialRow(hole, "saw", size, false, STRUT, angle));
            }
        }
        return rows;
    }

    /** Normally distributed chance by the rule of Box and Muller (Annals of Mathematical Statistics 29, 1958, 610). */
    static double gauss(Seeds seeds) {
        double radius = StrictMath.sqrt(-2 * StrictMath.log(seeds.between(1e-300, 1)));
        return radius * StrictMath.cos(seeds.between(0, 2 * StrictMath.PI));
    }
}
