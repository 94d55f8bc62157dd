package collarwright.paper;

import collarwright.assembly.Assembly;
import collarwright.collar.CollarBody;
import collarwright.job.Job;
import collarwright.picture.DomePicture;
import collarwright.picture.Figures;
import collarwright.picture.Lettering;
import collarwright.picture.RingPicture;
import collarwright.picture.RiskPicture;
import collarwright.picture.SectionPicture;
import collarwright.picture.StripPicture;
import collarwright.picture.StrutPicture;
import collarwright.picture.TierPicture;
import collarwright.plan.BearingWords;
import collarwright.plan.BinTable;
import collarwright.plan.FlatEntry;
import collarwright.plan.HubPlay;
import collarwright.plan.OrderTotals;
import collarwright.plan.Plan;
import collarwright.plan.PlateWork;
import collarwright.plan.Production;
import collarwright.plan.StripWork;
import collarwright.plan.UnitWords;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import collarwright.units.Paper;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The traveller: route sheets that go through the shop with the work. A cover with counts, stock, findings and cautions;
 * the dome; tools; for every pattern where to drill, with what, how deep, and what to measure; setup sheets of the
 * machine's programs; the struts.
 */
public final class Traveller {

    private static final double HALF = 88;

    /** How high an unrolled collar may get on paper, so that the press table fits below it. */
    private static final double STRIP_HEIGHT = 28;

    /** On Letter, so that a pattern's table stays on its page. */
    private static final double SHORT_STRIP_HEIGHT = 20;

    private final Paperwork work;
    private final Plan plan;
    private final Job job;
    private final Flow flow;
    private final Paper paper;
    private final Figures figures;

    private Traveller(Paperwork work, Lettering letters) {
        this.work = work;
        this.plan = work.plan();
        this.job = plan.job();
        this.paper = UnitWords.inches(job) ? Paper.LETTER : Paper.A4;
        this.flow = new Flow(letters, paper);
        this.figures = new Figures(job.shop().programUnits());
    }

    /**
     * Prints the traveller.
     *
     * @param work what it is printed from
     * @return a PDF file, A4, in an inch job Letter; the same bytes for the same work
     */
    public static byte[] print(Paperwork work) {
        Lettering letters = Lettering.load();
        Traveller traveller = new Traveller(work, letters);
        List<Page> pages = traveller.pages();
        PdfPages.Form form = new PdfPages.Form("traveller", traveller.paper);
        return new PdfPages(letters, traveller.job.title(), traveller.job.revision(), form).print(pages);
    }

    private List<Page> pages() {
        cover();
        dome();
        risks();
        for (Pattern pattern : plan.book().patterns()) {
            pattern(pattern);
        }
        batch();
        work.setups().forEach(setup -> new SetupPages(flow, job, plan.book().patterns()).print(setup));
        if (!work.strips().strips().isEmpty()) {
            job.shop()
                    .strip()
                    .ifPresent(s -> new StripPages(flow, figures).print(work.strips(), s, StripWork.flat(job)));
        }
        job.sheet().plates().ifPresent(p -> new PlatePages(flow, figures).print(PlateWork.of(plan), p));
        struts();
        if (!work.ends().programs().isEmpty()) {
            Production.bed(job).ifPresent(bed -> new EndPages(flow, figures).print(work.ends(), bed));
        }
        hubs();
        plan.assembly().ifPresent(this::assembly);
        return flow.pages();
    }

    private void cover() {
        flow.page("Traveller");
        flow.title(job.title());
        if (!flow.letters().shows(job.title())) {
            flow.text("□ stands for a letter that this paper's typeface lacks; index.html shows the whole title.");
        }
        flow.text("Revision " + job.revision()
                + ". Every paper and program of this job carries it: throw away any other.");
        BinTable.label(job).ifPresent(label -> flow.heading("For " + label));
        flow.gap(2);
        flow.facts(DomeFacts.of(plan), new DomePicture(plan, HALF));
        flow.heading("What to make");
        flow.bareGrid(new Amounts(plan).toMake());
        flow.heading("Stock to pull");
        flow.grid(StockToPull.grid(plan, work));
        SawTable.grids(work.stock(), UnitWords.inches(job)).forEach(flow::grid);
        BuyTable buy = new BuyTable(plan, work.stock());
        flow.grid(buy.grid());
        flow.points(buy.notes());
        if (!plan.book().patterns().isEmpty()) {
            tools();
        }
        if (!plan.book().patterns().isEmpty()) {
            flow.grid(TimeTable.grid(work.time()));
            flow.text(TimeTable.rule());
        }
        flow.heading("Findings: " + FindingTexts.count(plan.findings()));
        if (!plan.findings().isEmpty()) {
            flow.bareGrid(FindingTexts.grid(job, plan.findings()));
        }
        flow.need(50);
        flow.heading("Cautions");
        flow.points(Cautions.all());
    }

    private void tools() {
        flow.heading("Cutters for the collars");
        CutterTables cutters = new CutterTables(plan);
        flow.bareGrid(cutters.grid());
        flow.points(cutters.sources());
        flow.text(
                "Measure one hole of every cutter in scrap of this stock before the run, and give the size in the job if"
                        + " it differs: " + (UnitWords.inches(job) ? "0.010 in (0.25 mm)" : "a quarter of a millimetre")
                        + " is about a degree.");
        List<String> formulas = SetupPages.formulas(work.setups());
        if (!formulas.isEmpty()) {
            flow.heading("Speeds and feeds of the programs");
            flow.points(formulas);
        }
    }

    private void dome() {
        flow.page("Dome");
        flow.heading("The dome from outside, sizes to the nodes");
        flow.pictures(new DomePicture(plan, Flow.WIDTH));
        if (!TierPicture.readable(plan)) {
            return;
        }
        TierPicture tiers = new TierPicture(plan, Flow.WIDTH - (paper == Paper.A4 ? 4 : 22));
        flow.need(tiers.height() + 30);
        flow.heading("Opened out flat, seen from above");
        flow.text((plan.hubs().dome().hasTiers()
                        ? "Each hub with its pattern. Hubs are named by tier and place: places count clockwise from the +x"
                                + " meridian, which points up here. Uphill is toward the middle."
                        : "Each hub with its pattern and its number, which runs in the order of the frame's file; the"
                                + " file's +x points up here. Uphill is toward the middle.")
                + tiers.doubleRings());
        flow.pictures(tiers);
    }

    private void risks() {
        if (plan.book().patterns().isEmpty()) {
            return;
        }
        flow.page("Holes at risk");
        flow.title("Holes: need and limit");
        RiskPicture picture = new RiskPicture(plan, Flow.WIDTH);
        flow.strong(work.strips().risk().orElseGet(picture::verdict));
        flow.pictures(picture);
        flow.text(picture.legend());
        plan.book().sharing().ifPresent(sharing -> flow.grid(SharingTable.of(plan, sharing)));
    }

    private void pattern(Pattern pattern) {
        int toMake = job.order().made(pattern.count());
        flow.page("Pattern " + pattern.id());
        flow.title("Pattern " + pattern.id() + ": make " + toMake + " (" + pattern.count() + " in one dome)");
        CollarBody body = job.hub().body();
        flow.facts(collarFacts(pattern));
        Hole loosest = pattern.holes().stream()
                .max(Comparator.comparingDouble(Hole::slack))
                .orElseThrow();
        var subject = new SectionPicture.Subject(body, job.strut().stock().od(), loosest);
        flow.pictures(new RingPicture(body, pattern, HALF - 8), new SectionPicture(subject, figures, HALF - 10));
        double whole = 2 * StrictMath.PI * body.outerRadius();
        double stripHeight = paper == Paper.A4 ? STRIP_HEIGHT : SHORT_STRIP_HEIGHT;
        flow.pictures(new StripPicture(
                body, pattern, figures, StrictMath.min(Flow.WIDTH, stripHeight * whole / body.width())));
        PatternTables tables = new PatternTables(plan, pattern);
        if (HoleHeights.off(pattern)) {
            flow.strong(HoleHeights.WARNING);
        }
        if (job.shop().strip().isPresent()) {
            flow.text(
                    "The pictures show the rolled collar. Its holes are made before that, in the flat strip: where each goes"
                            + " and how it is made stands under Flat strips.");
        } else {
            flow.grid(tables.press());
            flow.text(tables.howDeep());
        }
        checks(pattern, tables);
    }

    private List<DomeFacts.Fact> collarFacts(Pattern pattern) {
        CollarBody body = job.hub().body();
        List<DomeFacts.Fact> facts = new ArrayList<>(List.of(
                new DomeFacts.Fact(
                        "collar",
                        (job.shop().strip().isPresent() ? "rolled from strip to the size of " : "")
                                + job.hub().collar().title() + ", cut " + Sizes.both(body.width()) + " wide"),
                new DomeFacts.Fact(
                        "outside", "Ø " + StockToPull.diameter(job.hub().collar())),
                new DomeFacts.Fact("inside", StockToPull.wall(job.hub().collar()))));
        if (body.rims() > 0) {
            facts.add(new DomeFacts.Fact(
                    "rims",
                    "ease both rims of each hole " + figures.size(body.rims()) + " × 45°: the lean counts on it"));
        }
        bin(facts);
        BearingWords.of(job.hub()).ifPresent(words -> facts.add(new DomeFacts.Fact("bears", words)));
        facts.add(new DomeFacts.Fact("fingerprint", pattern.fingerprint() + " (the drilling, the same in every job)"));
        return DomeFacts.worded(job, facts);
    }

    private void bin(List<DomeFacts.Fact> facts) {
        BinTable.label(job).ifPresent(label -> facts.add(new DomeFacts.Fact("mark", label)));
    }

    private void checks(Pattern pattern, PatternTables tables) {
        Inspection inspection = new Inspection(plan, pattern);
        flow.page("Pattern " + pattern.id() + ", checks");
        flow.facts(new SeatTables(plan).facts(pattern));
        flow.grid(tables.why());
        flow.text(PatternTables.whyRule());
        if (tables.shared() || tables.flips()) {
            flow.grid(tables.sharing());
        }
        if (tables.flips()) {
            flow.text(PatternTables.FLIPPED);
        }
        List<String> consequences = HubPlay.consequences(plan, pattern);
        if (!consequences.isEmpty()) {
            flow.points(consequences.stream().map(c -> UnitWords.of(job, c)).toList());
        }
        flow.grid(inspection.firstArticle());
        flow.grid(inspection.caliper());
        flow.grid(inspection.pins());
        flow.text(inspection.pinRule());
    }

    private void batch() {
        if (plan.book().patterns().isEmpty()) {
            return;
        }
        BatchTables tables = new BatchTables(work);
        flow.page("Batch");
        flow.title("Batch: " + OrderTotals.of(plan).collars() + " collars");
        if (!work.setups().isEmpty()) {
            flow.facts(tables.facts());
            flow.grid(tables.sticks());
            tables.otherOrder().ifPresent(flow::text);
        }
        flow.grid(tables.boxes());
    }

    private void struts() {
        flow.page("Struts");
        flow.title("Struts: make " + OrderTotals.of(plan).struts());
        StrutTables tables = new StrutTables(plan);
        List<DomeFacts.Fact> facts = new ArrayList<>(List.of(
                new DomeFacts.Fact("stock", job.strut().stock().title()),
                new DomeFacts.Fact(
                        "outside", "Ø " + StockToPull.diameter(job.strut().stock()))));
        bin(facts);
        flow.facts(DomeFacts.worded(job, facts));
        flow.pictures(new StrutPicture(tables.drilled(), Flow.WIDTH));
        flow.grid(tables.cutting());
        flow.text("Error: the fraction less the true length. Cut by the exact figure where you can.");
        tables.merged().map(t -> UnitWords.of(job, t)).ifPresent(flow::text);
        flow.points(EndWords.of(plan).stream().map(t -> UnitWords.of(job, t)).toList());
        if (FlatEntry.inside(plan)) {
            flow.grid(tables.drilledInside());
            flow.text(tables.insideRule());
        } else if (tables.drilled()) {
            flow.grid(tables.drilling());
            flow.text(tables.drillingRule());
        }
        if (job.strut().bins().isPresent()) {
            flow.grid(BinTables.grid(plan));
            flow.text(BinTable.rule());
        }
        if (tables.ended()) {
            flow.grid(tables.ends());
            flow.text("From node: how far the cut end stands from the node, where the struts' axes meet. Which end goes"
                    + " into which hole stands with the pattern and in struts/members.csv.");
        }
    }

    private void hubs() {
        if (!TierPicture.readable(plan)) {
            return;
        }
        flow.page("Hubs");
        flow.title("Hubs: which way up");
        flow.text(HubTables.rule(plan));
        flow.grid(HubTables.grid(plan));
    }

    private void assembly(Assembly assembly) {
        AssemblyTables tables = new AssemblyTables(plan, assembly);
        flow.page("Putting it together");
        flow.title("Putting it together");
        flow.points(AssemblyTables.rules(plan).stream()
                .map(t -> UnitWords.of(job, t))
                .toList());
        if (tables.printed()) {
            flow.grid(tables.order());
        } else {
            flow.text("The order has too many goes for paper; it stands in plan.json, under assembly.");
        }
        RaisingTable raising = new RaisingTable(plan, assembly);
        if (raising.printed()) {
            flow.text(RaisingTable.rule());
            flow.grid(raising.grid());
        } else {
            flow.text(raising.tooMany());
        }
        flow.grid(tables.travel());
        flow.text(
                "Has to go in: so that the other end is clear of the other collar. Either end may be the one that is pushed;"
                        + " where the room at one end does not do, that at the other may. Leave out first: the struts in these"
                        + " holes wait until this one is in.");
    }
}
