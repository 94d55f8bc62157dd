package collarwright.job;

import collarwright.finding.Code;
import collarwright.geometry.Interval;
import collarwright.stock.RoundStock;
import collarwright.units.Decimals;
import collarwright.units.Length;
import java.util.Optional;

/**
 * Reads what the shop measured on its stock. A measured value takes the place of the nominal one; of two measured limits
 * the middle is what is counted with. A circumference c gives the outside diameter c/π.
 */
final class MeasuredStock {

    /** How far a measured outside diameter may lie from the nominal one without a warning. Our choice, no source. */
    private static final double OD_DOUBT = 0.1;
    /** The same for a wall. Walls vary far more. */
    private static final double WALL_DOUBT = 0.5;
    /** Half or twice the nominal diameter is another pipe, or another unit. Our choice, no source. */
    private static final double OD_TIMES = 2;
    /** The same for a wall. */
    private static final double WALL_TIMES = 5;
    /** A pipe less round than this share of its diameter was not measured at one place. Our choice, no source. */
    private static final double MOST_OUT_OF_ROUND = 0.1;

    private final KeyView od;
    private final KeyView circumference;
    private final KeyView wall;
    private final KeyView outOfRound;

    private MeasuredStock(TableView table) {
        od = table.key("measured-od");
        circumference = table.key("measured-circumference");
        wall = table.key("measured-wall");
        outOfRound = table.key("out-of-round");
    }

    /**
     * Finds the measured values.
     *
     * @param table has measured-od or measured-circumference, measured-wall, out-of-round; all may be left out
     * @return the values, not yet read
     */
    static MeasuredStock in(TableView table) {
        return new MeasuredStock(table);
    }

    /**
     * Puts the measured values in.
     *
     * @param nominal the stock as bought; empty if it could not be read
     * @return the stock with what was measured, or empty after findings
     */
    Optional<RoundStock> on(Optional<RoundStock> nominal) {
        Optional<Interval> measuredOd = outside();
        Optional<Interval> measuredWall = wall.interval();
        Optional<Double> round = outOfRound.length(Length.Zero.ALLOWED).map(Length::mm);
        boolean complete = measuredOd.isPresent() == (od.present() || circumference.present())
                && measuredWall.isPresent() == wall.present()
                && round.isPresent() == outOfRound.present();
        if (nominal.isEmpty() || !complete) {
            return Optional.empty();
        }
        RoundStock stock = nominal.get();
        Interval outside = measuredOd.orElse(stock.od());
        Optional<Interval> thickness = measuredWall.isPresent() ? measuredWall : stock.wall();
        if (!StockReader.thinEnough(wall, thickness, outside) || !roundEnough(round, outside)) {
            return Optional.empty();
        }
        if (!sameThing(od.present() ? od : circumference, outside, stock.od(), OD_TIMES)
                || !stock.wall()
                        .map(usual -> sameThing(wall, thickness.orElse(usual), usual, WALL_TIMES))
                        .orElse(true)) {
            return Optional.empty();
        }
        doubt(od.present() ? od : circumference, outside, stock.od(), OD_DOUBT);
        stock.wall().ifPresent(usual -> doubt(wall, thickness.orElse(usual), usual, WALL_DOUBT));
        return Optional.of(new RoundStock(
                stock.name(),
                stock.title(),
                stock.material(),
                outside,
                thickness,
                measuredOd.isPresent(),
                measuredWall.isPresent(),
                round.orElse(stock.outOfRound()),
                stock.lengths(),
                stock.source()));
    }

    private Optional<Interval> outside() {
        Optional<Interval> direct = od.interval();
        Optional<Interval> round = circumference.interval();
        if (od.present() && circumference.present()) {
            circumference.stop(
                    Code.JOB_CONFLICT,
                    "measured-od or measured-circumference",
                    "both",
                    "keep the one you trust and take the other out");
            return Optional.empty();
        }
        return od.present()
                ? direct
                : round.map(c -> Interval.between(c.min() / StrictMath.PI, c.max() / StrictMath.PI));
    }

    private boolean roundEnough(Optional<Double> round, Interval outside) {
        if (round.orElse(0.0) <= MOST_OUT_OF_ROUND * outside.min()) {
            return true;
        }
        outOfRound.stop(
                Code.JOB_CONFLICT,
                "largest less smallest diameter, at most a tenth of the outside diameter",
                StockReader.mm(round.orElse(0.0)),
                "measure the largest and the smallest diameter at one place and take the difference");
        return false;
    }

    // Off by so much, it is another pipe or another unit.
    private static boolean sameThing(KeyView key, Interval measured, Interval nominal, double most) {
        double times = measured.nominal() / nominal.nominal();
        if (!key.present() || (times > 1 / most && times < most)) {
            return true;
        }
        key.stop(
                Code.JOB_CONFLICT,
                "the size of the stock, " + StockReader.mm(nominal.nominal()) + " nominal",
                StockReader.mm(measured.nominal()),
                "check the unit and the profile's name");
        return false;
    }

    private static void doubt(KeyView key, Interval measured, Interval nominal, double share) {
        double off = measured.nominal() / nominal.nominal() - 1;
        if (key.present() && StrictMath.abs(off) > share) {
            key.warn(
                    Code.JOB_CONFLICT,
                    "within " + Decimals.trimmed(share * 100, 0) + " % of the nominal size, "
                            + StockReader.mm(nominal.nominal()),
                    StockReader.mm(measured.nominal()) + ", " + (off > 0 ? "+" : "") + Decimals.fixed(off * 100, 1)
                            + " %",
                    "check the unit and the profile's name");
        }
    }
}
