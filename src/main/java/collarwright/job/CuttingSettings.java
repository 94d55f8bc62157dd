package collarwright.job;

import collarwright.cutting.SawSettings;
import collarwright.cutting.StockLength;
import java.util.List;

/**
 * How pieces are cut from stock.
 *
 * @param saw what the saw takes
 * @param merge cut lengths that differ by no more are cut at one stop, in their middle; 0 for exact lengths
 * @param keep rests as long as this or longer are offcuts for other work
 * @param struts lengths that the struts' stock is sold in, with prices and numbers; empty if not known
 * @param collars the same of the collars' pipe
 * @param rings the same of the centre rings' stock
 * @param offcuts what is left over from other work, of all stocks of the job
 * @param prices what things cost in the user's price file; a price in the job's own lengths goes before it
 */
public record CuttingSettings(
        SawSettings saw,
        double merge,
        double keep,
        List<StockLength> struts,
        List<StockLength> collars,
        List<StockLength> rings,
        List<Offcut> offcuts,
        PriceList prices) {

    /** Shortest rest that is kept where the job does not say. Our choice, no source. */
    public static final double USUAL_KEEP = 500;

    /** A usual saw, exact lengths, no offcuts, and stock as its profile has it. */
    public static final CuttingSettings USUAL =
            new CuttingSettings(SawSettings.USUAL, 0, USUAL_KEEP, List.of(), List.of(), List.of(), List.of());

    /** Keeps the lists. */
    public CuttingSettings {
        struts = List.copyOf(struts);
        collars = List.copyOf(collars);
        rings = List.copyOf(rings);
        offcuts = List.copyOf(offcuts);
        if (!(merge >= 0 && keep >= 0)) {
            throw new IllegalArgumentException("merge and keep are 0 or more");
        }
    }

    /**
     * How pieces are cut where there is no price file.
     *
     * @param saw what the saw takes
     * @param merge cut lengths that differ by no more are cut at one stop
     * @param keep rests as long as this or longer are offcuts
     * @param struts lengths that the struts' stock is sold in
     * @param collars the same of the collars' pipe
     * @param rings the same of the centre rings' stock
     * @param offcuts what is left over from other work
     */
    public CuttingSettings(
            SawSettings saw,
            double merge,
            double keep,
            List<StockLength> struts,
            List<StockLength> collars,
            List<StockLength> rings,
            List<Offcut> offcuts) {
        this(saw, merge, keep, struts, collars, rings, offcuts, PriceList.NONE);
    }

    /**
     * One piece that is left over.
     *
     * @param id its name, written on it
     * @param stock the name of what it is a piece of
     * @param length mm
     */
    public record Offcut(String id, String stock, double length) {}
}
