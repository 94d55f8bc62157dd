package collarwright.paper;

import collarwright.cutting.SawnLength;
import collarwright.job.Job;
import collarwright.plan.BillOfMaterials;
import collarwright.plan.Plan;
import collarwright.plan.StockWork;
import collarwright.plan.UnitWords;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/** What to buy and what it weighs, for traveller and index page. */
final class BuyTable {

    private final Job job;
    private final BillOfMaterials bill;

    BuyTable(Plan plan, StockWork work) {
        this.job = plan.job();
        this.bill = BillOfMaterials.of(plan, work);
    }

    Grid grid() {
        boolean priced = bill.cost().isPresent();
        List<Column> columns = new ArrayList<>(List.of(
                Column.words("what"), Column.numbers("how many"), Column.numbers("length"), Column.numbers("kg")));
        if (priced) {
            columns.add(Column.numbers("cost" + (bill.currency().isEmpty() ? "" : ", " + bill.currency())));
        }
        List<List<Cell>> rows = new ArrayList<>();
        for (BillOfMaterials.Row row : bill.rows()) {
            if (row.kind().bought() || row.kind() == BillOfMaterials.Kind.OFFCUT) {
                rows.add(row(row, priced));
            }
        }
        List<Cell> all = new ArrayList<>(List.of(
                Cell.strong("all of it; what comes by the piece not weighed"),
                Cell.of(""),
                Cell.of(""),
                kg(bill.boughtKg())));
        if (priced) {
            all.add(Cell.strong(Decimals.fixed(bill.cost().orElseThrow(), 2)));
        }
        rows.add(all);
        return new Grid("What to buy, spares included", columns, rows);
    }

    private List<Cell> row(BillOfMaterials.Row row, boolean priced) {
        boolean sized = row.size() > 0;
        boolean byLength = row.kind() == BillOfMaterials.Kind.LENGTH || row.kind() == BillOfMaterials.Kind.STRIP;
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.strong(UnitWords.of(job, row.title())),
                Cell.of(byLength ? "" : Integer.toString(row.count())),
                Cell.of(sized ? UnitWords.of(job, Decimals.trimmed(SawnLength.of(row.size()), 3) + " mm") : ""),
                row.kg().map(BuyTable::kg).orElse(Cell.of(""))));
        if (priced) {
            String none = row.kind().bought() ? "no price" : "there";
            cells.add(Cell.of(row.cost().map(c -> Decimals.fixed(c, 2)).orElse(none)));
        }
        return cells;
    }

    private static Cell kg(double kg) {
        return Cell.of(Decimals.fixed(kg, kg < 10 ? 2 : 1));
    }

    List<String> notes() {
        List<String> notes = new ArrayList<>();
        String fetched = bill.longestBought() > 0
                ? "Longest stick to fetch: " + Decimals.trimmed(SawnLength.of(bill.longestBought()), 3) + " mm. "
                : "";
        notes.add(UnitWords.of(
                job,
                fetched + "Longest part of a kit: " + Decimals.trimmed(SawnLength.of(bill.longestMade()), 3)
                        + " mm. All that is made weighs " + Decimals.fixed(bill.madeKg(), 1)
                        + " kg, without ties, pins, plugs and caps: sizes times nominal density, no load rating."));
        if (bill.cost().isPresent() && !bill.unpriced().isEmpty()) {
            notes.add("The sum lacks what has no price.");
        }
        if (bill.cost().isEmpty()) {
            notes.add("No prices: name a price file in the job, [shop] prices.");
        }
        return notes;
    }
}
