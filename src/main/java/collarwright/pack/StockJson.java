package collarwright.pack;

import collarwright.cutting.CutPlan;
import collarwright.cutting.SawSettings;
import collarwright.cutting.StickLayout;
import collarwright.cutting.StockLength;
import collarwright.plan.StockNeed;
import collarwright.plan.StockWork;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** Writes what to pull from the store, and which part is cut from which stick. */
final class StockJson {

    private final JsonOut out;

    StockJson(JsonOut out) {
        this.out = out;
    }

    void write(StockWork work) throws IOException {
        List<List<String>> names = work.layoutNames();
        out.objects(
                "stock", work.needs(), need -> need(need, names.get(work.needs().indexOf(need))));
        out.rows("offcuts", work.offcuts(), offcut -> {
            out.text("id", offcut.id());
            out.text("stock", offcut.stock());
            out.number("lengthMm", offcut.length());
        });
    }

    private void need(StockNeed need, List<String> names) throws IOException {
        out.text("role", need.role().name().toLowerCase(Locale.ROOT));
        out.text("stock", need.stock().name());
        out.text("title", need.stock().title());
        out.text("material", need.stock().material().name());
        out.whole("pieces", need.pieces());
        out.number("netLengthMm", need.netLength());
        if (need.kerf().isPresent()) {
            out.number("kerfMm", need.kerf().getAsDouble());
        }
        out.number("lengthMm", need.length());
        out.numbers(
                "soldLengthsMm",
                need.stock().lengths().stream().mapToDouble(d -> d).toArray());
        if (need.plan().isPresent()) {
            CutPlan plan = need.plan().get();
            out.object("cutting", () -> cutting(plan, names));
        }
    }

    private void cutting(CutPlan plan, List<String> names) throws IOException {
        SawSettings saw = plan.task().saw();
        out.row("saw", () -> {
            out.number("kerfMm", saw.kerf());
            out.number("trimFirstMm", saw.trimFirst());
            out.number("trimLastMm", saw.trimLast());
            out.number("gripMm", saw.grip());
        });
        out.row("proof", () -> {
            out.text("costIs", plan.task().priced() ? "price" : "length");
            out.number("cost", plan.proof().cost());
            out.number("costBound", plan.proof().costBound());
            out.whole("sticks", plan.proof().sticks());
            out.whole("sticksBound", plan.proof().sticksBound());
            out.flag("proven", plan.proof().proven());
        });
        out.rows("sticks", plan.task().stocks(), stock -> stick(plan, stock));
        out.whole("stopSettings", plan.stopSettings());
        out.objects(
                "layouts",
                IntStream.range(0, names.size()).boxed().toList(),
                i -> layout(plan, plan.layouts().get(i), names.get(i)));
        List<Integer> uncut = plan.uncut();
        List<Integer> kinds = IntStream.range(0, uncut.size())
                .filter(i -> uncut.get(i) > 0)
                .boxed()
                .toList();
        out.rows("uncut", kinds, i -> {
            out.text("piece", plan.task().pieces().get(i).id());
            out.whole("count", uncut.get(i));
        });
    }

    private void stick(CutPlan plan, StockLength stock) throws IOException {
        out.text("name", stock.id());
        out.number("lengthMm", stock.length());
        out.flag("offcut", stock.offcut());
        if (stock.price().isPresent()) {
            out.number("price", stock.price().get());
        }
        if (stock.atHand().isPresent()) {
            out.whole("atHand", stock.atHand().get());
        }
        out.whole("taken", plan.taken(stock));
    }

    private void layout(CutPlan plan, StickLayout layout, String name) throws IOException {
        StickLayout.Sums sums = layout.sums();
        out.text("id", name);
        out.text("stick", layout.stock().id());
        out.flag("offcut", layout.stock().offcut());
        out.whole("runs", layout.runs());
        out.number("stickLengthMm", sums.length());
        out.number("trimMm", sums.trim());
        out.number("piecesMm", sums.pieces());
        out.whole("cuts", sums.cuts());
        out.number("kerfMm", sums.kerf());
        out.number("remainderMm", sums.remainder());
        out.rows("pieces", layout.portions(), portion -> {
            out.text("piece", plan.task().pieces().get(portion.piece()).id());
            out.whole("count", portion.count());
            out.number("lengthMm", plan.task().pieces().get(portion.piece()).length());
        });
    }
}
