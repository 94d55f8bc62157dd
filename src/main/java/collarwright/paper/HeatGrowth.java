package collarwright.paper;

import collarwright.cutting.CutPiece;
import collarwright.cutting.SawnLength;
import collarwright.plan.Plan;
import collarwright.plan.StockWork;
import collarwright.stock.Material;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/** By how much pieces grow when they are warm, and what a shop does about it. */
final class HeatGrowth {

    /** A warm shop against a cold yard. Our choice, no source. */
    private static final double DEGREES = 10;

    private HeatGrowth() {}

    static List<String> of(Plan plan, StockWork work) {
        List<String> lines = new ArrayList<>();
        List<Material> materials =
                work.needs().stream().map(n -> n.stock().material()).distinct().toList();
        for (Material material : materials) {
            double longest = work.needs().stream()
                    .filter(n -> n.stock().material().equals(material))
                    .flatMap(n -> n.plan().stream())
                    .flatMap(p -> p.task().pieces().stream())
                    .mapToDouble(CutPiece::length)
                    .max()
                    .orElse(0);
            lines.add(material.growth()
                    .map(g -> grown(material, g, longest))
                    .orElse(material.title() + ": how much it grows by heat is not known here; try a piece."));
        }
        lines.add(
                "Cut, measure and compare pieces at one temperature: stock that lay in the sun or came out of the cold"
                        + " first lies in the shop for some hours (common practice, no source). A steel tape grows, too, by 0.12 mm"
                        + " in 1000 mm for 10 °C (12 millionths for 1 °C: EN 1993-1-1, 3.2.6, from memory).");
        if (plan.job().strut().stock().material().name().contains("wood")) {
            lines.add("Wood moves more by moisture than by heat.");
        }
        return lines;
    }

    private static String grown(Material material, Material.Growth growth, double longest) {
        double share = growth.perMillionKelvin() * 1e-6 * DEGREES;
        String piece = longest > 0
                ? ", so the longest piece here, " + Decimals.trimmed(SawnLength.of(longest), 3) + " mm, by "
                        + Decimals.fixed(longest * share, 2) + " mm"
                : "";
        return material.title() + " grows by " + Decimals.trimmed(1000 * share, 3) + " mm in 1000 mm for 10 °C more"
                + piece + ". Source: " + growth.source() + ".";
    }
}
