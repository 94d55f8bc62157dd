package collarwright.plan;

import collarwright.cutting.SheetPacker;
import collarwright.job.Job;
import collarwright.job.PlateSettings;
import collarwright.job.PriceList;
import collarwright.job.StripSettings;
import collarwright.plan.BillOfMaterials.Kind;
import collarwright.plan.BillOfMaterials.Row;
import collarwright.stock.Material;
import collarwright.tooling.FlatStrip;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Flat stock to buy: strip or sheets for collars that are rolled, sheets for index plates and saddles. */
final class SheetRows {
    private static final double CUBIC_MM_PER_CUBIC_M = 1e9;

    private final Plan plan;
    private final Job job;
    private final PriceList prices;

    private SheetRows(Plan plan) {
        this.plan = plan;
        this.job = plan.job();
        this.prices = job.cutting().prices();
    }

    /** Rows for collars, then for plates; none where the job has no flat stock. */
    static List<Row> of(Plan plan) {
        SheetRows it = new SheetRows(plan);
        List<Row> rows = new ArrayList<>();
        it.job.shop().strip().ifPresent(s -> rows.addAll(it.collars(s)));
        it.job.sheet().plates().flatMap(it::plates).ifPresent(rows::add);
        return rows;
    }

    // Strips that go on no sheet have a stop of their own.
    private List<Row> collars(StripSettings settings) {
        List<FlatStrip> strips = StripWork.strips(plan, settings);
        Material material = job.hub().collar().material();
        if (strips.isEmpty()) {
            return List.of();
        }
        SheetPacker.Rectangle box = FlatSizes.strip(strips.get(0), settings);
        Optional<SheetPacker.Stock> nest = settings.nest().filter(s -> s.holds(box));
        return nest.isPresent()
                ? List.of(sheets(strips, box, nest.get(), material))
                : StripNeed.of(material.title(), strips).stream()
                        .map(n -> strip(n, material))
                        .toList();
    }

    private Row strip(StripNeed need, Material material) {
        double kg = kg(need.length(), need.width(), need.thickness(), material);
        Optional<Double> cost = prices.byLength("strip", need.length(), kg).map(BillOfMaterials::hundredths);
        String title = "strip " + mm(need.width()) + " x " + mm(need.thickness()) + ", " + need.material();
        String unit = cost.isPresent() ? "length" : "";
        return new Row(Kind.STRIP, "strip", title, need.length(), 1, Optional.of(kg), unit, cost);
    }

    // All strips are of one size, so every sheet takes as many.
    private Row sheets(List<FlatStrip> strips, SheetPacker.Rectangle box, SheetPacker.Stock sheet, Material material) {
        long pieces = strips.stream().mapToLong(FlatStrip::made).sum();
        int onOne = SheetPacker.fill(box, sheet).size();
        int count = StrictMath.toIntExact((pieces + onOne - 1) / onOne);
        double thickness = strips.get(0).body().wall().nominal();
        double kg = count * kg(sheet.length(), sheet.width(), thickness, material);
        String title = "sheet " + mm(sheet.length()) + " x " + mm(sheet.width()) + " x " + mm(thickness) + ", "
                + material.title() + ", for collars";
        Row row = BillOfMaterials.pieces(
                new BillOfMaterials.Pieces(Kind.SHEET, "strip-sheet", title, sheet.length(), count), prices);
        Optional<Double> byWeight = prices.byWeight("strip-sheet", kg).map(BillOfMaterials::hundredths);
        boolean weighed = row.cost().isEmpty() && byWeight.isPresent();
        return new Row(
                row.kind(),
                row.name(),
                title,
                row.size(),
                count,
                Optional.of(kg),
                weighed ? "kg" : row.unit(),
                row.cost().or(() -> byWeight));
    }

    // A job does not say how thick plates are: their weight is not known.
    private Optional<Row> plates(PlateSettings settings) {
        PlateWork work = PlateWork.of(plan);
        if (work.plates().isEmpty()) {
            return Optional.empty();
        }
        SheetPacker.Stock sheet = settings.sheet();
        int count = SheetPacker.pack(work.boxes(settings), sheet).sheets();
        String title = "sheet " + mm(sheet.length()) + " x " + mm(sheet.width()) + ", "
                + settings.material().title() + ", for index plates"
                + (work.saddles().isEmpty() ? "" : " and saddles");
        return Optional.of(BillOfMaterials.pieces(
                new BillOfMaterials.Pieces(Kind.SHEET, "plate-sheet", title, sheet.length(), count), prices));
    }

    private static double kg(double length, double width, double thickness, Material material) {
        return length * width * thickness * material.densityKgPerM3() / CUBIC_MM_PER_CUBIC_M;
    }

    private static String mm(double length) {
        return Decimals.trimmed(length, 2) + " mm";
    }
}
