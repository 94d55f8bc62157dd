package collarwright.pack;

import collarwright.plan.BinTable;
import collarwright.plan.Plan;
import collarwright.tooling.HoleSize;
import java.io.IOException;
import java.util.List;

/** Writes the table of bins of {@code plan.json}; nothing where struts are not sorted. */
final class BinsJson {

    private final JsonOut out;

    BinsJson(JsonOut out) {
        this.out = out;
    }

    void write(Plan plan) throws IOException {
        List<BinTable.Row> rows = BinTable.of(plan).rows();
        if (!rows.isEmpty()) {
            out.rows("bins", rows, this::row);
        }
    }

    private void row(BinTable.Row row) throws IOException {
        out.whole("bin", row.bin());
        out.flag("chosen", row.chosen());
        out.number("odMinMm", row.od().min());
        out.number("odMaxMm", row.od().max());
        out.text("strutEnd", row.strutEnd());
        out.degrees("neededLeanDeg", row.own().need().lean());
        size("own", row.own());
        size("whole", row.whole());
    }

    private void size(String key, HoleSize size) throws IOException {
        out.row(key, () -> {
            out.numberIfFinite("requiredMm", size.required());
            if (size.cutter().isPresent()) {
                out.text("cutter", size.cutter().get().id());
                out.number("asDrilledMm", size.cutter().get().asDrilled().nominal());
                out.degrees(
                        "tiltLimitDeg",
                        HoleSize.limit(size.need(), size.cutter().get()));
                out.degrees("slackDeg", BinTable.Row.slack(size).orElseThrow());
            }
        });
    }
}
