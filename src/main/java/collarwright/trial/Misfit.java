package collarwright.trial;

import java.util.List;

/**
 * Readings that no bearing wall and no oversize explain: a wrong hole or strut, a slip of the pen, or angles that were taken
 * from elsewhere. A fit to them says nothing, however small its limits come out.
 */
public final class Misfit {

    /** A reading that is off by no more is never refused. Our choice, no source: five times what a digital level strays by. */
    public static final double MOST_OFF = StrictMath.toRadians(1.5);

    /** What a hole may come out wider or narrower than the fit has it. Our choice, no source. */
    public static final double MOST_HOLE = 0.3;

    private Misfit() {}

    /**
     * Lists the readings that do not fit.
     *
     * @param fit a fit
     * @return those that are off by more than {@link #MOST_OFF}, and by more than a hole that is {@value #MOST_HOLE} mm wider
     *     or narrower would explain; in the order of the rows
     */
    public static List<TrialRow> of(TrialFit fit) {
        return fit.rows().stream().filter(row -> misfits(fit, row)).toList();
    }

    private static boolean misfits(TrialFit fit, TrialRow row) {
        if (StrictMath.abs(fit.off(row)) <= MOST_OFF) {
            return false;
        }
        BearingModel model = new BearingModel(fit.collar(), fit.rows());
        double oversize = fit.oversize().value().nominal();
        double hole = StrictMath.max(row.strut(), row.drilled(oversize));
        double other = hole + (fit.off(row) > 0 ? MOST_HOLE : -MOST_HOLE);
        double most = StrictMath.min(fit.collar().bore() - 1e-6, StrictMath.max(row.strut(), other));
        TrialRow moved = new TrialRow(row.hole(), row.cutter(), most, true, row.strut(), row.angle(), row.weight());
        double explained = model.angle(moved, new Guess(fit.bearing().value().nominal(), oversize)) - fit.fitted(row);
        return StrictMath.abs(fit.off(row)) > StrictMath.abs(explained) + MOST_OFF / 2;
    }
}
