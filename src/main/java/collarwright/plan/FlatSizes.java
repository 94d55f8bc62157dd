package collarwright.plan;

import collarwright.cutting.SheetPacker.Rectangle;
import collarwright.job.PlateSettings;
import collarwright.job.StripSettings;
import collarwright.tooling.FlatStrip;
import collarwright.tooling.GuideSaddle;
import collarwright.tooling.IndexPlate;
import java.util.List;

/** How much room parts that are cut from sheet take: the least box that holds all their lines, kerf and lead-ins counted. */
final class FlatSizes {
    private static final double QUARTER = StrictMath.PI / 2;

    private FlatSizes() {}

    /** Strips of one job, all of one length and width. */
    static Rectangle strip(FlatStrip strip, StripSettings settings) {
        return new Rectangle(
                strip.length() + settings.kerf() + settings.leadIn(),
                strip.body().width() + settings.kerf());
    }

    /**
     * Tells whether a saddle's concave edge can be cut: the kerf makes its block wider and its arc narrower.
     *
     * @return whether the block's feet still stand on the arc
     */
    static boolean cuttable(GuideSaddle saddle, PlateSettings.Kerf kerf) {
        return (saddle.width() + kerf.outside()) / 2 < saddle.radius() - kerf.outside() / 2;
    }

    /** A saddle whose edge can be cut; its feet come down lower by what the kerf widens it. */
    static Rectangle saddle(GuideSaddle saddle, PlateSettings.Kerf kerf) {
        double width = saddle.width() + kerf.outside();
        double radius = saddle.radius() - kerf.outside() / 2;
        double foot = saddle.axis() + StrictMath.sqrt(radius * radius - width * width / 4);
        return new Rectangle(width, saddle.height() + kerf.outside() / 2 + kerf.leadIn() - foot);
    }

    /** A plate: arcs of the rim between its notches, and a lead-in in the middle of the widest of them. */
    static Rectangle plate(IndexPlate plate, PlateSettings.Kerf kerf) {
        double half = kerf.outside() / 2;
        double radius = plate.sizes().diameter() / 2 + half;
        double opening = StrictMath.asin((plate.sizes().pin() / 2 - half) / radius);
        double[] reach = new double[4];
        double widest = 0;
        double lead = 0;
        List<IndexPlate.Notch> notches = plate.notches();
        for (int i = notches.size() - 1; i >= 0; i--) {
            int before = (i + notches.size() - 1) % notches.size();
            double end = notches.get(i).azimuth() - opening;
            double sweep = plate.gap(before) - 2 * opening;
            for (int side = 0; side < reach.length; side++) {
                double past = turn(side * QUARTER - (end - sweep));
                double nearest = past <= sweep
                        ? 1
                        : StrictMath.max(
                                StrictMath.cos(end - side * QUARTER), StrictMath.cos(end - sweep - side * QUARTER));
                reach[side] = StrictMath.max(reach[side], radius * nearest);
            }
            if (sweep > widest + 1e-9) {
                widest = sweep;
                lead = end - sweep / 2;
            }
        }
        for (int side = 0; side < reach.length && kerf.leadIn() > 0; side++) {
            double tip = (radius + kerf.leadIn()) * StrictMath.cos(lead - side * QUARTER);
            reach[side] = StrictMath.max(reach[side], tip);
        }
        return new Rectangle(reach[1] + reach[3], reach[0] + reach[2]);
    }

    private static double turn(double angle) {
        double full = 4 * QUARTER;
        return (angle % full + full) % full;
    }
}
