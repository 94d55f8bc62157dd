package collarwright.paper;

import collarwright.collar.CollarBody;
import collarwright.job.Job;
import collarwright.machining.HoleDepth;
import collarwright.machining.Workpiece;
import collarwright.picture.Figures;
import collarwright.picture.Lettering;
import collarwright.picture.RingPicture;
import collarwright.picture.StripPicture;
import collarwright.plan.TrialLayout;
import collarwright.tooling.Hole;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/** The record sheet of a trial piece: what to drill, how to measure, and a table to write the readings in. */
public final class TrialSheet {

    private static final double RING = 80;
    private static final double STRIP_HEIGHT = 28;

    private final TrialLayout layout;
    private final Job job;
    private final Figures figures;
    private final Flow flow;

    private TrialSheet(TrialLayout layout, Lettering letters) {
        this.layout = layout;
        this.job = layout.job();
        this.figures = new Figures(job.shop().programUnits());
        this.flow = new Flow(letters);
    }

    /**
     * Prints the record sheet.
     *
     * @param layout the trial piece
     * @return a PDF file, A4; the same bytes for the same trial piece
     */
    public static byte[] print(TrialLayout layout) {
        Lettering letters = Lettering.load();
        List<Page> pages = new TrialSheet(layout, letters).pages();
        return new PdfPages(letters, layout.job().title(), layout.job().revision()).print(pages);
    }

    private List<Page> pages() {
        drill();
        measure();
        layout.rotary().setups().forEach(setup -> new SetupPages(flow, job, List.of(layout.pattern())).print(setup));
        return flow.pages();
    }

    private void drill() {
        CollarBody body = job.hub().body();
        flow.page("Trial piece");
        flow.title("Trial piece: how much of the wall bears");
        flow.text(
                "A strut binds on the two rims of its hole. Edges give a little, so less than the full wall bears, and a"
                        + " cutter drills wider than its stamp. Both change the angle of every hole by degrees. This collar measures"
                        + " them for this pipe, these cutters and the way you ease the rims.");
        flow.facts(facts(body), new RingPicture(body, layout.pattern(), RING));
        double whole = 2 * StrictMath.PI * body.outerRadius();
        double wide = StrictMath.min(Flow.WIDTH, STRIP_HEIGHT * whole / body.width());
        flow.pictures(new StripPicture(body, layout.pattern(), figures, wide));
        flow.grid(holes());
        flow.text("Depth: touch the crown with the cutter's lowest point, set zero, go down so far. "
                + Cautions.atTheDrill());
    }

    private List<DomeFacts.Fact> facts(CollarBody body) {
        List<DomeFacts.Fact> facts = new ArrayList<>(List.of(
                new DomeFacts.Fact("make", "one collar, marked " + TrialLayout.ID),
                new DomeFacts.Fact(
                        "collar", job.hub().collar().title() + ", cut " + Sizes.both(body.width()) + " wide"),
                new DomeFacts.Fact(
                        "outside", "Ø " + StockToPull.diameter(job.hub().collar())),
                new DomeFacts.Fact("inside", StockToPull.wall(job.hub().collar())),
                new DomeFacts.Fact(
                        "strut",
                        job.strut().stock().title() + ", Ø "
                                + StockToPull.diameter(job.strut().stock()))));
        if (body.rims() > 0) {
            facts.add(new DomeFacts.Fact(
                    "rims", "ease both rims of each hole " + figures.size(body.rims()) + " × 45°, as in the job"));
        } else {
            facts.add(new DomeFacts.Fact("rims", "ease them as you will on the real collars, no more and no less"));
        }
        return facts;
    }

    private Grid holes() {
        List<List<Cell>> rows = new ArrayList<>();
        for (Hole hole : layout.pattern().holes()) {
            rows.add(List.of(
                    Cell.strong(Integer.toString(hole.number())),
                    Cell.of(Decimals.fixed(Angles.degrees(hole.azimuth()), 2) + "°"),
                    Cell.of(figures.size(hole.azimuth() * job.hub().body().outerRadius())),
                    Cell.strong(
                            hole.cutter().marked() + " " + hole.cutter().kind().title()),
                    Cell.of(figures.size(hole.diameter())),
                    Cell.of(figures.length(depth(hole))),
                    Cell.of(Figures.degrees(layout.ladder().fullWall(hole.cutter()))),
                    Cell.of(Figures.degrees(layout.ladder().singleEdge(hole.cutter()))),
                    Cell.tick()));
        }
        return new Grid(
                "What to drill, on the collar's middle line; it should bind between the two leans, or beyond the second"
                        + " where the hole is wider than stamped",
                List.of(
                        Column.numbers("hole"),
                        Column.numbers("azimuth"),
                        Column.numbers("on the outside"),
                        Column.words("cutter"),
                        Column.numbers("drills"),
                        Column.numbers("depth"),
                        Column.numbers("full wall"),
                        Column.numbers("an edge"),
                        Column.marks("done")),
                rows);
    }

    private double depth(Hole hole) {
        CollarBody body = job.hub().body();
        Workpiece work = Workpiece.of(job.hub().collar(), body);
        return body.outerRadius()
                - HoleDepth.of(work, hole.cutter(), job.limits().overtravel()).bottom();
    }

    private void measure() {
        flow.page("Readings");
        flow.title("Readings");
        flow.points(List.of(
                "Let the collar cool and brush off the chips. Measure its outside diameter and its wall, and put them into the"
                        + " job.",
                "Take a straight strut, at least three times as long as the collar is wide across, and measure its diameter"
                        + " where it will bear.",
                "Clamp the collar flat with TOP up. Set a digital level to zero on its upper edge, or hold a protractor to it:"
                        + " the hub's plane is 0°.",
                "Put the strut through a hole, toward the middle of the collar. Lean its outer end toward TOP until it binds on"
                        + " both rims. Hold it there with two fingers, no force: a strut that is pushed bends the reading.",
                "Read the angle between the strut and the hub's plane. Take the strut out, turn it a little, and read again:"
                        + " three readings for each hole. Leave a hole blank that the strut does not pass.",
                "If you have pins or a good caliper, measure each hole as well, across TOP and bottom: then the wall that bears"
                        + " comes out much better."));
        flow.grid(readings());
        flow.text(
                "Copy the readings into rows.csv: measured-deg for every reading, as-drilled-mm only for holes that you have"
                        + " measured, strut-mm if the strut is another. A line without measured-deg is left out. Then run:");
        flow.text("collarwright trial JOB --rows rows.csv --write profiles/my-trial.toml");
        flow.text("It says what the readings tell and what they do not, and writes a profile that a job calls with"
                + " trial-piece = \"my-trial\" in [hub].");
        flow.heading("Cautions");
        flow.points(Cautions.all());
    }

    private Grid readings() {
        List<List<Cell>> rows = new ArrayList<>();
        for (Hole hole : layout.pattern().holes()) {
            rows.add(List.of(
                    Cell.strong(Integer.toString(hole.number())),
                    Cell.of(hole.cutter().id()),
                    Cell.blank(),
                    Cell.blank(),
                    Cell.blank(),
                    Cell.blank(),
                    Cell.blank()));
        }
        return new Grid(
                "Where the strut binds, in degrees from the hub's plane",
                List.of(
                        Column.numbers("hole"),
                        Column.words("cutter"),
                        Column.marks("hole, mm"),
                        Column.marks("strut, mm"),
                        Column.marks("first"),
                        Column.marks("second"),
                        Column.marks("third")),
                rows);
    }
}
