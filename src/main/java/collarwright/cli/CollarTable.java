package collarwright.cli;

import collarwright.plan.Check.Quantity;
import collarwright.plan.CollarProposal;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.List;
import java.util.Locale;

/** Prints the smallest collars that would do. */
final class CollarTable {

    private CollarTable() {}

    static String print(List<CollarProposal> proposals) {
        if (proposals.isEmpty()) {
            return "no known pipe of the collar's material would do without a warning\n\n";
        }
        StringBuilder text = new StringBuilder("the smallest collars without a warning, nominal, not measured\n");
        row(text, "collar", "width", "centre ring", "width", "slack", "least margin");
        for (CollarProposal p : proposals) {
            boolean length = p.tightest().quantity() == Quantity.LENGTH;
            double margin = p.tightest().margin();
            row(
                    text,
                    p.collar().name(),
                    Decimals.fixed(p.width(), 0) + " mm",
                    p.ring().name(),
                    Decimals.fixed(p.ringWidth(), 0) + " mm",
                    Decimals.fixed(Angles.degrees(p.slack()), 2) + "°",
                    (length ? Decimals.fixed(margin, 1) + " mm" : Decimals.fixed(Angles.degrees(margin), 2) + "°")
                            + ", "
                            + p.tightest()
                                    .code()
                                    .name()
                                    .toLowerCase(Locale.ROOT)
                                    .replace('_', ' '));
        }
        return text.append('\n').toString();
    }

    private static void row(StringBuilder text, String... cells) {
        int[] widths = {28, 10, 28, 10, 9, 0};
        for (int i = 0; i < cells.length; i++) {
            text.append(cells[i])
                    .append(" ".repeat(StrictMath.max(i + 1 < cells.length ? 1 : 0, widths[i] - cells[i].length())));
        }
        text.append('\n');
    }
}
