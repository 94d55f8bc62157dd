package collarwright.pack;

import collarwright.plan.BillOfMaterials;
import java.io.IOException;
import java.util.Locale;

/** Writes what to buy for {@code plan.json}. */
final class BuyJson {

    private final JsonOut out;

    BuyJson(JsonOut out) {
        this.out = out;
    }

    void write(BillOfMaterials bill) throws IOException {
        out.object("buy", () -> {
            out.rows("rows", bill.rows(), this::row);
            out.number("boughtKg", bill.boughtKg());
            out.number("madeKg", bill.madeKg());
            out.number("longestBoughtMm", bill.longestBought());
            out.number("longestMadeMm", bill.longestMade());
            if (bill.cost().isPresent()) {
                out.number("cost", bill.cost().get());
                out.whole("unpriced", bill.unpriced().size());
                out.text("currency", bill.currency());
            }
        });
    }

    private void row(BillOfMaterials.Row row) throws IOException {
        out.text("kind", row.kind().name().toLowerCase(Locale.ROOT));
        out.flag("bought", row.kind().bought());
        out.text("name", row.name());
        out.whole("count", row.count());
        if (row.size() > 0) {
            out.number("lengthMm", row.size());
        }
        if (row.kg().isPresent()) {
            out.number("kg", row.kg().get());
        }
        if (row.cost().isPresent()) {
            out.text("priceFor", row.unit());
            out.number("cost", row.cost().get());
        }
    }
}
