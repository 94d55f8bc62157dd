package collarwright.job;

import collarwright.machining.CuttingData;
import collarwright.tooling.CutterKind;
import collarwright.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads speeds and feeds from a profile file. */
final class CuttingReader {

    private CuttingReader() {}

    /**
     * Reads the cutting data of one material.
     *
     * @param entry its table with name, title and source
     * @return the cutting data, or empty after findings
     */
    static Optional<CuttingData> read(ProfileFile.Entry entry) {
        TableView table = entry.table();
        String caution = table.key("caution").text().orElse("");
        List<CuttingData.Row> rows = new ArrayList<>();
        KeyView list = table.need("rows", "speeds and feeds by cutter and size", "rows = [ { kind = \"twist\", … } ]");
        for (KeyView item : list.items()) {
            item.table().flatMap(row -> row(row, entry.source())).ifPresent(rows::add);
        }
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(new CuttingData(entry.name(), entry.title(), rows, caution));
    }

    private static Optional<CuttingData.Row> row(TableView row, String shared) {
        Optional<CutterKind> kind = row.need("kind", "twist, hole-saw or end-mill", "kind = \"twist\"")
                .word(CutterReader.KINDS);
        Optional<Length> from =
                row.need("from", "the least cutter size", "from = \"0 mm\"").length(Length.Zero.ALLOWED);
        Optional<Double> to =
                row.need("to", "the largest cutter size", "to = \"1/4 in\"").size();
        Optional<Double> speed = row.need(
                        "speed-m-per-min", "speed of the cutting edge in metres a minute", "speed-m-per-min = 24")
                .number(0.1, 2000);
        boolean mill = kind.filter(k -> k == CutterKind.END_MILL).isPresent();
        KeyView feedKey = mill
                ? row.need("feed-per-tooth", "chip thickness of each tooth", "feed-per-tooth = \"0.05 mm\"")
                : row.need("feed-per-turn", "advance for each turn", "feed-per-turn = \"0.1 mm\"");
        Optional<Double> feed = feedKey.size();
        Optional<Double> peck = row.need("peck", "deepest peck in cutter diameters", "peck = 1.0")
                .number(0.01, 100);
        String source = row.key("source").text().orElse(shared);
        if (kind.isEmpty() || from.isEmpty() || to.isEmpty() || speed.isEmpty() || feed.isEmpty() || peck.isEmpty()) {
            return Optional.empty();
        }
        if (to.get() < from.get().mm()) {
            row.stop(
                    collarwright.finding.Code.JOB_CONFLICT,
                    "from at most as large as to",
                    "from " + from.get().text(),
                    "change the two round");
            return Optional.empty();
        }
        return Optional.of(new CuttingData.Row(
                kind.get(), from.get().mm(), to.get(), speed.get(), feed.get(), peck.get(), source));
    }
}
