package collarwright.job;

import collarwright.cutting.SheetPacker;
import collarwright.finding.Code;
import collarwright.machining.CutMeans;
import collarwright.stock.Material;
import collarwright.units.Decimals;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads the job's table {@code [plates]}: index plates and the sheets that they are cut from. */
final class PlateReader {
    private static final double MOST_KERF = 10;
    private static final double MOST_LEAD_IN = 50;
    /** Diameter of the hole that tells a plate's face. */
    private static final double FLAG_HOLE = 3;

    private static final int MOST_COUNT = 100;
    private static final int MOST_SADDLES = 20;

    private final TableView table;
    private final Profiles profiles;

    private PlateReader(TableView table, Profiles profiles) {
        this.table = table;
        this.profiles = profiles;
    }

    /**
     * Whether plates are made.
     *
     * @param plates how; empty for none
     */
    record Found(Optional<PlateSettings> plates) {}

    /**
     * Reads the table.
     *
     * @param table {@code [plates]}; empty if it is not there
     * @param profiles know materials
     * @return whether and how plates are made; empty after findings
     */
    static Optional<Found> read(Optional<TableView> table, Profiles profiles) {
        return table.isEmpty()
                ? Optional.of(new Found(Optional.empty()))
                : new PlateReader(table.get(), profiles).read().map(p -> new Found(Optional.of(p)));
    }

    private Optional<PlateSettings> read() {
        Optional<Double> bore =
                table.need("bore", "the mandrel's diameter", "bore = \"20 mm\"").size();
        Optional<Double> pin =
                table.need("pin", "the index pin's diameter", "pin = \"6 mm\"").size();
        KeyView diameterKey = table.key("diameter");
        Optional<Double> diameter = diameterKey.present() ? diameterKey.size() : Optional.empty();
        boolean good = !diameterKey.present() || diameter.isPresent();
        Map<String, Material> materials = new TreeMap<>();
        for (String name : profiles.names(Profiles.Kind.MATERIAL)) {
            profiles.material(name).ifPresent(m -> materials.put(name, m.material()));
        }
        Optional<Material> material = table.need("material", "what plates are cut from", "material = \"wood\"")
                .word(materials);
        Map<String, CutMeans> means = new LinkedHashMap<>();
        for (CutMeans each : CutMeans.FLAT) {
            means.put(each.word(), each);
        }
        Given<CutMeans> process = new Given<>(table.key("cut"), k -> k.word(means), CutMeans.ROUTER);
        if (process.good() && material.isPresent() && burnt(process.value(), material.get())) {
            good = false;
        }
        Optional<PlateSettings.Kerf> kerf = kerf();
        Given<Integer> count = new Given<>(table.key("count"), k -> k.wholeNumber(1, MOST_COUNT), 1);
        Given<Integer> saddles = new Given<>(table.key("saddles"), k -> k.wholeNumber(0, MOST_SADDLES), 0);
        Optional<SheetPacker.Stock> sheet =
                NestReader.read(table, kerf.map(PlateSettings.Kerf::outside).orElse(0.0));
        if (kerf.isPresent() && tooWide(kerf.get(), pin, bore)) {
            good = false;
        }
        good &= bore.isPresent() && pin.isPresent() && material.isPresent() && process.good();
        if (!good || kerf.isEmpty() || !count.good() || !saddles.good() || sheet.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new PlateSettings(
                new PlateSettings.Sizes(bore.get(), pin.get(), diameter),
                material.get(),
                process.value(),
                kerf.get(),
                new PlateSettings.Counts(count.value(), saddles.value()),
                sheet.get()));
    }

    /** The least hole is the one that tells the face. */
    private boolean tooWide(PlateSettings.Kerf kerf, Optional<Double> pin, Optional<Double> bore) {
        double hole = StrictMath.min(bore.orElse(FLAG_HOLE), FLAG_HOLE);
        boolean edges = pin.filter(p -> kerf.outside() >= p).isPresent();
        if (edges) {
            conflict("kerf-outside", "a kerf narrower than the pin", mm(kerf.outside()));
        }
        if (kerf.inside() >= hole) {
            conflict("kerf-inside", "a kerf narrower than the least hole, " + mm(hole), mm(kerf.inside()));
        }
        return edges || kerf.inside() >= hole;
    }

    private void conflict(String key, String expected, String found) {
        table.key(key).stop(Code.JOB_CONFLICT, expected, found, "check kerf and its unit");
    }

    private boolean burnt(CutMeans process, Material material) {
        boolean refused = process.burns() && material.chlorinated();
        if (refused) {
            table.key("cut")
                    .stop(
                            Code.LASER_PVC,
                            "a material that a laser or a plasma torch may cut",
                            material.title() + ", whose fumes are toxic and corrosive",
                            "cut it with a router: cut = \"router\"",
                            "or take another material");
        }
        return refused;
    }

    private Optional<PlateSettings.Kerf> kerf() {
        Given<Double> inside = new Given<>(table.key("kerf-inside"), k -> NestReader.upTo(k, MOST_KERF), 0.0);
        Given<Double> outside = new Given<>(table.key("kerf-outside"), k -> NestReader.upTo(k, MOST_KERF), 0.0);
        Given<Double> leadIn = new Given<>(table.key("lead-in"), k -> NestReader.upTo(k, MOST_LEAD_IN), 0.0);
        return inside.good() && outside.good() && leadIn.good()
                ? Optional.of(new PlateSettings.Kerf(inside.value(), outside.value(), leadIn.value()))
                : Optional.empty();
    }

    private static String mm(double length) {
        return Decimals.trimmed(length, 2) + " mm";
    }
}
