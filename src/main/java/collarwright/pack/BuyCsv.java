package collarwright.pack;

import collarwright.cutting.SawnLength;
import collarwright.plan.BillOfMaterials;
import collarwright.plan.Plan;
import java.util.Locale;

/** What to buy and what is made of it, for spreadsheets. */
final class BuyCsv {

    /** Where it stands in a pack. */
    static final String FILE = "buy.csv";

    static final String PURPOSE = "what to buy for the whole order, and what is made of it, with weights and prices";

    private BuyCsv() {}

    static Table print(Plan plan, BillOfMaterials bill) {
        TableBuilder table = new TableBuilder(
                "kind",
                "bought",
                "name",
                "what",
                "how many",
                "length of one (mm)",
                "weight of all (kg)",
                "price for",
                "cost of all",
                "currency",
                "revision",
                "job");
        for (BillOfMaterials.Row row : bill.rows()) {
            table.text(row.kind().name().toLowerCase(Locale.ROOT))
                    .text(row.kind().bought() ? "yes" : "no")
                    .text(row.name())
                    .text(row.title())
                    .whole(row.count());
            number(table, row.size() > 0, SawnLength.of(row.size()), 3);
            number(table, row.kg().isPresent(), row.kg().orElse(0.0), 3);
            table.text(row.unit());
            number(table, row.cost().isPresent(), row.cost().orElse(0.0), 2);
            table.text(row.cost().isPresent() ? bill.currency() : "");
            PackTables.end(table, plan);
        }
        return table.table();
    }

    private static void number(TableBuilder table, boolean known, double value, int decimals) {
        if (known) {
            table.number(value, decimals);
        } else {
            table.empty();
        }
    }
}
