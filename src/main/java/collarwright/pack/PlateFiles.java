package collarwright.pack;

import collarwright.cutting.SheetPacker;
import collarwright.drawing.Box;
import collarwright.drawing.Cut;
import collarwright.drawing.FlatPart;
import collarwright.drawing.Heading;
import collarwright.drawing.NestedSheet;
import collarwright.drawing.PlateDrawing;
import collarwright.drawing.Sheet;
import collarwright.job.Job;
import collarwright.job.PlateSettings;
import collarwright.plan.Plan;
import collarwright.plan.PlateWork;
import collarwright.sheet.DxfFlavour;
import collarwright.sheet.DxfOutlines;
import collarwright.sheet.DxfWriter;
import collarwright.sheet.SvgWriter;
import collarwright.tooling.IndexPlate;
import collarwright.units.Decimals;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Prints index plates, nested on stock sheets, and a table of where each lies. */
final class PlateFiles {
    /** Where the table stands in a pack. */
    static final String TABLE = "laser/plates.csv";

    static final String PURPOSE = "which index plate lies where on which sheet, and how much of the sheets is used";

    private final Plan plan;
    private final Job job;
    private final PlateSettings settings;
    private final PlateWork work;
    private final List<FlatPart> parts;
    private final SheetPacker.Nest nest;

    PlateFiles(Plan plan, PlateWork work) {
        this.plan = plan;
        this.job = plan.job();
        this.settings = plan.job().sheet().plates().orElseThrow();
        this.work = work;
        this.parts = parts(work, job, settings);
        this.nest = SheetPacker.pack(
                parts.stream()
                        .map(FlatPart::bounds)
                        .map(b -> new SheetPacker.Rectangle(b.width(), b.height()))
                        .toList(),
                settings.sheet());
    }

    private static List<FlatPart> parts(PlateWork work, Job job, PlateSettings settings) {
        PlateSettings.Kerf kerf = settings.kerf();
        Cut cut = new Cut(kerf.inside(), kerf.outside(), kerf.leadIn());
        List<FlatPart> parts = new ArrayList<>();
        for (IndexPlate plate : work.plates()) {
            FlatPart part = PlateDrawing.draw(plate, job.revision(), cut);
            for (int i = 0; i < settings.count(); i++) {
                parts.add(part);
            }
        }
        return parts;
    }

    void print(TemplateFiles.Taker taker) {
        for (int sheet = 0; sheet < nest.sheets(); sheet++) {
            sheet(sheet, taker);
        }
    }

    private void sheet(int index, TemplateFiles.Taker taker) {
        List<NestedSheet.Place> places = nest.spots().stream()
                .filter(s -> s.sheet() == index)
                .map(s -> new NestedSheet.Place(parts.get(s.part()), s.x(), s.y(), s.turned()))
                .toList();
        String name = "plates-" + (index + 1) + kerf();
        Heading heading = new Heading(
                "Index plates, sheet " + (index + 1) + " of " + nest.sheets(),
                job.title(),
                job.revision(),
                List.of(),
                List.of());
        Sheet sheet = NestedSheet.draw(
                new Box(0, 0, settings.sheet().length(), settings.sheet().width()),
                places,
                new NestedSheet.Words(name, heading));
        String what = "index plates, sheet " + (index + 1) + " of " + nest.sheets() + ", "
                + settings.material().title() + ", to be cut with a "
                + settings.process().word() + ", "
                + (kerf().isEmpty() ? "nominal lines" : "kerf allowed for") + ", "
                + Decimals.fixed(100 * nest.used(), 1) + " % of the sheets used; by area " + nest.leastSheets()
                + " or more are needed: ";
        String base = "laser/" + name;
        taker.put(
                base + ".svg",
                what + "SVG",
                bytes(SvgWriter.print(sheet, job.sheet().hairline())));
        taker.put(
                base + "-r2000.dxf",
                what + "DXF R2000, closed polylines",
                bytes(DxfWriter.print(sheet, DxfFlavour.R2000, DxfOutlines.POLYLINES)));
        taker.put(base + "-r12.dxf", what + "DXF R12, lines and arcs", bytes(DxfWriter.print(sheet, DxfFlavour.R12)));
    }

    // What was allowed for stands in the file's name, so that nobody allows for it again.
    private String kerf() {
        PlateSettings.Kerf kerf = settings.kerf();
        return kerf.inside() + kerf.outside() > 0
                ? "-kerf-in" + Decimals.trimmed(kerf.inside(), 3) + "-out" + Decimals.trimmed(kerf.outside(), 3)
                : "";
    }

    Table table() {
        TableBuilder table = new TableBuilder(
                "sheet",
                "pattern",
                "from the left (mm)",
                "from the lower edge (mm)",
                "turned by a quarter",
                "sheets",
                "least sheets by area",
                "used (%)",
                "revision",
                "job");
        for (SheetPacker.Spot spot : nest.spots()) {
            IndexPlate plate = work.plates().get(spot.part() / settings.count());
            table.whole(spot.sheet() + 1).text(plate.pattern());
            table.number(spot.x(), 3).number(spot.y(), 3).text(spot.turned() ? "yes" : "no");
            table.whole(nest.sheets()).whole(nest.leastSheets()).number(100 * nest.used(), 1);
            PackTables.end(table, plan);
        }
        return table.table();
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
