package collarwright.paper;

import collarwright.cutting.CutPlan;
import collarwright.cutting.SawSettings;
import collarwright.cutting.SawnLength;
import collarwright.cutting.StickLayout;
import collarwright.picture.CutStickPicture;
import collarwright.picture.Lettering;
import collarwright.plan.Plan;
import collarwright.plan.StockNeed;
import collarwright.plan.StockWork;
import collarwright.plan.UnitWords;
import collarwright.units.Decimals;
import collarwright.units.Paper;
import java.util.List;
import java.util.Optional;

/**
 * The papers of the saw: stops for struts, collars and centre rings, a check of the first pieces, and every stick with its
 * picture and its sum.
 */
public final class SawPaper {

    private static final double WIDTH = 176;

    /** Room for each cut below which a layout is called tight, mm: how much wider a blade may cut. Our choice, no source. */
    private static final double TIGHT = 0.1;

    private final Plan plan;
    private final StockWork work;
    private final Flow flow;
    private final boolean inches;

    private SawPaper(Plan plan, StockWork work, Lettering letters, Paper paper) {
        this.plan = plan;
        this.work = work;
        this.inches = UnitWords.inches(plan.job());
        this.flow = new Flow(letters, paper);
    }

    /**
     * Prints the papers.
     *
     * @param plan the plan
     * @param work which part is cut from which stick
     * @return a PDF file, A4, or Letter for a job in inches; the same bytes for the same plan; empty where nothing is cut
     *     from sticks by a plan
     */
    public static Optional<byte[]> print(Plan plan, StockWork work) {
        if (work.layoutNames().stream().allMatch(List::isEmpty)) {
            return Optional.empty();
        }
        Lettering letters = Lettering.load();
        Paper paper = UnitWords.inches(plan.job()) ? Paper.LETTER : Paper.A4;
        SawPaper saw = new SawPaper(plan, work, letters, paper);
        PdfPages.Form form = new PdfPages.Form("saw", paper);
        return Optional.of(new PdfPages(letters, plan.job().title(), plan.job().revision(), form).print(saw.pages()));
    }

    private List<Page> pages() {
        flow.page("Saw: stops");
        flow.title("Sawing");
        flow.points(rules());
        parts((need, cut, names) -> {
            StopBlocks stops = new StopBlocks(cut, names, inches);
            flow.grid(stops.settings(what(need)));
        });
        flow.heading("Gang check");
        flow.text(
                "Lay the pieces of one stop side by side, one end against a board: the other ends are level. Then lay as"
                        + " many as the table says end to end, without gaps, and measure them together: what the stop is off"
                        + " counts once for each. Compare a piece with one of the next stop, too.");
        parts((need, cut, names) ->
                new StopBlocks(cut, names, inches).gang(what(need)).ifPresent(flow::grid));
        flow.heading("Warm and cold");
        flow.points(HeatGrowth.of(plan, work).stream()
                .map(t -> UnitWords.of(plan.job(), t))
                .toList());
        parts(this::sticks);
        bevels();
        return flow.pages();
    }

    /** What is done for each kind of part that is cut by a plan. */
    @FunctionalInterface
    private interface Part {
        void print(StockNeed need, CutPlan cut, List<String> names);
    }

    private void parts(Part part) {
        List<List<String>> names = work.layoutNames();
        for (int i = 0; i < names.size(); i++) {
            StockNeed need = work.needs().get(i);
            List<String> layouts = names.get(i);
            if (need.plan().isPresent() && !layouts.isEmpty()) {
                part.print(need, need.plan().get(), layouts);
            }
        }
    }

    private static String what(StockNeed need) {
        return switch (need.role()) {
            case STRUT -> "struts";
            case COLLAR -> need.forMachine() ? "machine sticks" : "collars";
            case RING -> "centre rings";
        };
    }

    private List<String> rules() {
        SawSettings saw = StockWork.saw(plan.job());
        String first = saw.trimFirst() > 0
                ? mm(saw.trimFirst()) + " off the first end (its cut included)"
                : "nothing off the first end";
        String held = saw.grip() > 0 ? ", the saw holds " + mm(saw.grip()) + " that stay uncut" : "";
        String last = saw.trimLast() > 0 ? ", " + mm(saw.trimLast()) + " at the far end are not used" : "";
        return List.of(
                UnitWords.of(
                        plan.job(),
                        "Counted with a cut of " + mm(SawnLength.of(saw.kerf())) + ", " + first + last + held
                                + ". Measure one cut of this blade in this stock; if it is wider, give it in the job:"
                                + " [saw] kerf."),
                "Set the stop once for each length, longest first, and pass all sticks that the row names; then move it to"
                        + " the next row. The stop lets go of the piece before the blade comes up.",
                "Pieces are rounded up to 0.001 mm. Inches are rounded from millimetres, which add up exactly. An error is the fraction less the true length: + is too long.",
                "Mark every piece with its type before the next stick. Clamp the stick, wear eye and ear protection, let"
                        + " the blade stop before you reach in.");
    }

    private void sticks(StockNeed need, CutPlan cut, List<String> names) {
        flow.page("Saw: " + what(need));
        flow.title(need.forMachine() ? "Machine sticks from stock" : "Sticks for " + what(need));
        flow.text(need.stock().title()
                + ". Cuts are to scale; hatched is not used. One box for each stick, to tick when" + " it is cut.");
        for (int i = 0; i < names.size(); i++) {
            stick(cut, cut.layouts().get(i), names.get(i));
        }
    }

    private void stick(CutPlan cut, StickLayout layout, String name) {
        CutStickPicture picture = new CutStickPicture(cut.task(), layout, WIDTH, inches);
        double rows = 4 + layout.portions().size() + (layout.sums().trim() > 0 ? 1 : 0);
        flow.heading("Layout " + name + ": " + UnitWords.of(plan.job(), sticks(layout)));
        flow.need(StrictMath.min(200, picture.height() + 12 + 8 * rows));
        if (picture.sticksPerBox() > 1) {
            flow.text("One box for every " + picture.sticksPerBox() + " sticks.");
        }
        flow.pictures(picture);
        flow.bareGrid(StickSums.grid(cut.task(), layout, inches));
        tight(layout).map(t -> UnitWords.of(plan.job(), t)).ifPresent(flow::strong);
    }

    /** What a plan that leaves next to nothing counts on: sticks are sold a little long, but a worn blade cuts wider. */
    static Optional<String> tight(StickLayout layout) {
        double spare = layout.sums().remainder() + layout.sums().lastCut();
        int cuts = layout.wholeCuts();
        if (cuts == 0 || spare >= TIGHT * cuts) {
            return Optional.empty();
        }
        return Optional.of(
                "Tight: " + mm(SawnLength.of(spare)) + " to spare over " + cuts + (cuts == 1 ? " cut" : " cuts")
                        + ". A stick that is shorter by more, or a blade that cuts " + Decimals.fixed(spare / cuts, 2)
                        + " mm wider, loses the last piece. Measure the stick and one cut first; more kerf or a trim in [saw] leaves"
                        + " room.");
    }

    private void bevels() {
        boolean flat = plan.job().strut().endWork().flat().isPresent();
        if (flat || plan.struts().types().stream().anyMatch(t -> !(t.cut() > 0))) {
            return;
        }
        SawBevels bevels = new SawBevels(plan, inches);
        flow.page("Saw: ends that are not square");
        flow.title("Ends that are not square");
        flow.points(bevels.notes());
        flow.grid(bevels.grid());
    }

    private static String sticks(StickLayout layout) {
        String length = mm(layout.sums().length());
        return layout.stock().offcut()
                ? "offcut " + layout.stock().id() + ", " + length
                : layout.runs() + (layout.runs() == 1 ? " stick of " : " sticks of ") + length;
    }

    private static String mm(double length) {
        return Decimals.trimmed(length, 3) + " mm";
    }
}
