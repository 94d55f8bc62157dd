package collarwright.pack;

import collarwright.drawing.Box;
import collarwright.drawing.Heading;
import collarwright.drawing.NestedSheet;
import collarwright.drawing.Sheet;
import collarwright.plan.Plan;
import collarwright.sheet.SoundSheet;
import collarwright.units.Decimals;
import java.util.List;

/**
 * Prints nested sheets and a table of what lies where.
 *
 * @param plan the plan
 * @param nesting the sheets
 * @param words what they are called
 */
record NestFiles(Plan plan, Nesting nesting, Words words) {

    /**
     * What sheets are called.
     *
     * @param base path of the files, without number and ending, such as {@code laser/plates}
     * @param kerf added to their names: what was allowed for, so that nobody allows for it again; empty for nominal lines
     * @param title what lies on them, such as {@code Index plates}
     * @param means what they are of and what cuts them
     */
    record Words(String base, String kerf, String title, String means) {}

    /** One set of files for each layout. */
    void print(TemplateFiles.Taker taker) {
        for (int i = 0; i < nesting.layouts().size(); i++) {
            sheet(i, taker);
        }
    }

    private void sheet(int index, TemplateFiles.Taker taker) {
        Nesting.Layout layout = nesting.layouts().get(index);
        String base = words.base() + "-" + (index + 1) + words.kerf();
        String which = "layout " + (index + 1) + " of " + nesting.layouts().size();
        Heading heading = new Heading(
                words.title() + ", " + which, plan.job().title(), plan.job().revision(), List.of(), List.of());
        Box size = new Box(0, 0, nesting.stock().length(), nesting.stock().width());
        Sheet sheet = NestedSheet.draw(
                size, layout.places(), new NestedSheet.Words(base.substring(base.lastIndexOf('/') + 1), heading));
        String what = words.title() + ", " + which + ", "
                + (layout.sheets() == 1 ? "one sheet" : layout.sheets() + " sheets alike") + ", " + words.means() + ", "
                + (words.kerf().isEmpty() ? "nominal lines" : "kerf allowed for") + "; " + used() + ": ";
        CutFiles.of(plan.job().sheet()).print(SoundSheet.of(sheet), base, CutFiles.Purpose.of(what), taker);
    }

    /** How much of the sheets is used, beside the least possible. */
    private String used() {
        long sheets = nesting.sheets();
        return sheets + (sheets == 1 ? " sheet" : " sheets") + " in all, " + Decimals.fixed(100 * nesting.used(), 1)
                + " % used; by area " + nesting.leastSheets() + " or more are needed";
    }

    Table table() {
        TableBuilder table = new TableBuilder(
                "layout",
                "sheets alike",
                "part",
                "from the left (mm)",
                "from the lower edge (mm)",
                "turned by a quarter",
                "sheets in all",
                "least sheets by area",
                "used (%)",
                "revision",
                "job");
        int number = 0;
        for (Nesting.Layout layout : nesting.layouts()) {
            number++;
            for (NestedSheet.Place place : layout.places()) {
                table.whole(number).whole(layout.sheets()).text(place.part().name());
                table.number(place.x(), 3).number(place.y(), 3).text(place.turned() ? "yes" : "no");
                table.whole(nesting.sheets()).whole(nesting.leastSheets()).number(100 * nesting.used(), 1);
                PackTables.end(table, plan);
            }
        }
        return table.table();
    }
}
