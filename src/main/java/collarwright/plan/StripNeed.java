package collarwright.plan;

import collarwright.tooling.FlatStrip;
import java.util.ArrayList;
import java.util.List;

/**
 * Strip or sheet to pull from the store, of one width and one thickness, for all domes and spares.
 *
 * @param material the material's name for people
 * @param width of the strips, above 0
 * @param thickness nominal, above 0
 * @param pieces strips, 1 or more
 * @param length of all strips together, joints counted, cuts and margins of the sheet not
 */
public record StripNeed(String material, double width, double thickness, int pieces, double length) {

    /**
     * Adds up strips.
     *
     * @param material the material's name for people
     * @param strips one for each pattern
     * @return one for each width and thickness, in the order in which they come first
     */
    static List<StripNeed> of(String material, List<FlatStrip> strips) {
        List<StripNeed> needs = new ArrayList<>();
        for (FlatStrip strip : strips) {
            double width = strip.body().width();
            double thickness = strip.body().wall().nominal();
            StripNeed one = new StripNeed(material, width, thickness, strip.made(), strip.made() * strip.length());
            int at = 0;
            while (at < needs.size() && !needs.get(at).alike(one)) {
                at++;
            }
            if (at == needs.size()) {
                needs.add(one);
            } else {
                StripNeed sum = needs.get(at);
                needs.set(
                        at,
                        new StripNeed(material, width, thickness, sum.pieces + one.pieces, sum.length + one.length));
            }
        }
        return List.copyOf(needs);
    }

    private boolean alike(StripNeed other) {
        return Double.compare(width, other.width) == 0 && Double.compare(thickness, other.thickness) == 0;
    }
}
