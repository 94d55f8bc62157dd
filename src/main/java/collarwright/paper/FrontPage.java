package collarwright.paper;

import collarwright.collar.CollarBody;
import collarwright.finding.Level;
import collarwright.job.Job;
import collarwright.picture.DomePicture;
import collarwright.picture.Figures;
import collarwright.picture.HubPicture;
import collarwright.picture.Lettering;
import collarwright.picture.Picture;
import collarwright.picture.RiskPicture;
import collarwright.picture.SectionPicture;
import collarwright.picture.StripPicture;
import collarwright.picture.SvgGlyphs;
import collarwright.picture.SvgPicture;
import collarwright.picture.TierPicture;
import collarwright.plan.BinTable;
import collarwright.plan.Plan;
import collarwright.plan.UnitWords;
import collarwright.sheet.XmlText;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The pack's front page: what is made, what was found, pictures, tables, and every file with what it is for. One file that
 * opens without a network or a script, on a phone, a desk and A4 paper; well-formed as XML too.
 */
public final class FrontPage {

    /** Width that a phone of 390 pixels shows whole. */
    private static final double NARROW = 88;

    private static final double WIDE = 180;

    private static final String HOW_LONG = "How long it takes";

    /** More patterns than this are pictured in the traveller only. */
    private static final int MOST_PICTURED = 24;

    private final Paperwork work;
    private final Plan plan;
    private final Job job;
    private final SvgGlyphs glyphs = new SvgGlyphs(Lettering.load());
    private final StringBuilder html = new StringBuilder();
    /** Where the list of files goes in. */
    private int filesAt;

    private FrontPage(Paperwork work) {
        this.work = work;
        this.plan = work.plan();
        this.job = plan.job();
    }

    /**
     * Prints the page.
     *
     * @param work what it is printed from
     * @return HTML, UTF-8; the same bytes for the same work
     */
    public static byte[] print(Paperwork work) {
        return of(work).bytes(work.files());
    }

    /**
     * Makes the page but for the list of the pack's files, which may not be made yet.
     *
     * @param work what it is printed from; its files are not looked at
     * @return the page
     */
    public static FrontPage of(Paperwork work) {
        FrontPage page = new FrontPage(work);
        page.draw();
        return page;
    }

    /**
     * Prints it with the list.
     *
     * @param files every file of the pack, in the order in which they are listed
     * @return HTML, UTF-8; the same bytes for the same files
     */
    public byte[] bytes(List<PackFile> files) {
        return new StringBuilder(html)
                .insert(filesAt, FileListing.html(files))
                .toString()
                .getBytes(StandardCharsets.UTF_8);
    }

    private void draw() {
        String title = XmlText.escaped(job.title());
        html.append(
                        "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\" xml:lang=\"en\">\n<head>\n")
                .append("<meta charset=\"utf-8\"/>\n")
                .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<title>")
                .append(title)
                .append(", revision ")
                .append(XmlText.escaped(job.revision()))
                .append("</title>\n<style>\n")
                .append(PageStyle.css())
                .append("</style>\n</head>\n<body>\n<header>\n<h1 dir=\"auto\">")
                .append(title)
                .append("</h1>\n")
                .append(BinTable.label(job)
                        .map(label -> "<p><strong>For " + XmlText.escaped(label) + "</strong></p>\n")
                        .orElse(""))
                .append("<p>Revision <strong>")
                .append(XmlText.escaped(job.revision()))
                .append(
                        "</strong>. Every paper and program of this job carries it: throw away any other.</p>\n<p><a href=\"#findings\">Findings: ")
                .append(XmlText.escaped(FindingTexts.count(plan.findings())))
                .append("</a></p>\n</header>\n");
        contents();
        html.append("<main>\n");
        making();
        dome();
        findings();
        patterns();
        struts();
        cutters();
        batch();
        time();
        stock();
        files();
        cautions();
        html.append("</main>\n<svg width=\"0\" height=\"0\" class=\"shapes\" aria-hidden=\"true\">")
                .append(glyphs.defs())
                .append("</svg>\n</body>\n</html>\n");
    }

    private void contents() {
        List<String> names = new ArrayList<>(List.of(
                "What to make",
                "The dome",
                "Findings",
                "Collar patterns",
                "Struts",
                "Cutters",
                "Batch",
                HOW_LONG,
                "Stock to pull",
                "Files",
                "Cautions"));
        if (plan.book().patterns().isEmpty()) {
            names.remove(HOW_LONG);
        }
        html.append("<nav aria-label=\"On this page\">\n<ul>\n");
        for (String name : names) {
            html.append("<li><a href=\"#")
                    .append(id(name))
                    .append("\">")
                    .append(name)
                    .append("</a></li>\n");
        }
        html.append("</ul>\n</nav>\n");
    }

    private static String id(String name) {
        return name.toLowerCase(java.util.Locale.ROOT).replace(' ', '-');
    }

    private void open(String name) {
        html.append("<section id=\"")
                .append(id(name))
                .append("\">\n<h2>")
                .append(name)
                .append("</h2>\n");
    }

    private void close() {
        html.append("</section>\n");
    }

    private void paragraph(String text) {
        html.append("<p>").append(XmlText.escaped(text)).append("</p>\n");
    }

    private void points(List<String> points) {
        html.append("<ul>\n");
        points.forEach(p -> html.append("<li>").append(XmlText.escaped(p)).append("</li>\n"));
        html.append("</ul>\n");
    }

    private void making() {
        open("What to make");
        facts(DomeFacts.of(plan));
        html.append(HtmlGrid.bare(new Amounts(plan).toMake()));
        close();
    }

    private void facts(List<DomeFacts.Fact> facts) {
        html.append("<dl>\n");
        for (DomeFacts.Fact fact : facts) {
            html.append("<div><dt>")
                    .append(XmlText.escaped(fact.name()))
                    .append("</dt><dd>")
                    .append(XmlText.escaped(fact.value()))
                    .append("</dd></div>\n");
        }
        html.append("</dl>\n");
    }

    private void findings() {
        open("Findings");
        boolean stop = plan.findings().stream().anyMatch(f -> f.level() == Level.STOP);
        html.append(stop ? "<p class=\"stop\"><strong>Do not make this yet: " : "<p><strong>")
                .append(XmlText.escaped(FindingTexts.count(plan.findings())))
                .append(".</strong></p>\n");
        if (!plan.findings().isEmpty()) {
            html.append(HtmlGrid.bare(FindingTexts.grid(job, plan.findings())));
        }
        close();
    }

    private void dome() {
        open("The dome");
        String outside = "From outside; sizes to the nodes.";
        if (!TierPicture.readable(plan)) {
            figure(new DomePicture(plan, WIDE), "dome", "single", outside);
            close();
            return;
        }
        figure(new DomePicture(plan, WIDE), "dome", "wide", outside);
        figure(new DomePicture(plan, NARROW), "dome-narrow", "narrow", outside);
        String map = plan.hubs().dome().hasTiers()
                ? "Opened out flat, seen from above, each hub with its pattern. Hubs are named by tier and place: places"
                        + " count clockwise from the meridian that points up here."
                : "Opened out flat, seen from above, each hub with its pattern and its number, which runs in the order of"
                        + " the frame's file; the file's +x points up here.";
        TierPicture wide = new TierPicture(plan, WIDE);
        figure(wide, "tiers", "wide", map + wide.doubleRings());
        figure(new TierPicture(plan, NARROW), "tiers-narrow", "narrow", map + wide.doubleRings());
        close();
    }

    private void figure(Picture picture, String id, String kind, String caption) {
        html.append("<figure class=\"")
                .append(kind)
                .append("\">")
                .append(SvgPicture.element(picture, id, glyphs))
                .append("<figcaption>")
                .append(XmlText.escaped(caption))
                .append("</figcaption></figure>\n");
    }

    private void patterns() {
        open("Collar patterns");
        List<Pattern> patterns = plan.book().patterns();
        if (patterns.isEmpty()) {
            paragraph("No pattern could be laid out: see the findings.");
        } else {
            html.append(HtmlGrid.bare(PatternOverview.of(plan)));
            paragraph(
                    "Slack is how much further than needed a strut can lean. The fingerprint stands for the drilling, the"
                            + " same in every job.");
            plan.book().sharing().ifPresent(sharing -> html.append(HtmlGrid.of(SharingTable.of(plan, sharing))));
            RiskPicture risks = new RiskPicture(plan, WIDE);
            paragraph(work.strips().risk().orElseGet(risks::verdict));
            figure(risks, "risks", "wide", risks.legend());
            SeatTables seats = new SeatTables(plan);
            html.append(HtmlGrid.of(seats.grid()));
            paragraph(SeatTables.note());
        }
        for (int i = 0; i < StrictMath.min(patterns.size(), MOST_PICTURED); i++) {
            pattern(i, patterns.get(i));
        }
        if (patterns.size() > MOST_PICTURED) {
            paragraph("The other patterns are pictured in traveller.pdf.");
        }
        close();
    }

    private void pattern(int index, Pattern pattern) {
        CollarBody body = job.hub().body();
        Figures figures = new Figures(job.shop().programUnits());
        Hole loosest = pattern.holes().stream()
                .max(Comparator.comparingDouble(Hole::slack))
                .orElseThrow();
        html.append("<section class=\"pattern\">\n<h3>Pattern ")
                .append(pattern.id())
                .append(": make ")
                .append(job.order().made(pattern.count()))
                .append("</h3>\n<div class=\"pair\">\n");
        String id = pattern.id().toLowerCase(java.util.Locale.ROOT);
        int hub = fullest(index);
        figure(
                new HubPicture(plan, hub, NARROW),
                id + "-hub",
                "single",
                "Seen from above" + (plan.placement(hub).flipped() ? ", upside down (TOP inside)" : "")
                        + ": hole numbers, strut types, degrees "
                        + (plan.placement(hub).flipped() ? "counterclockwise" : "clockwise") + " from the 0° line.");
        var subject = new SectionPicture.Subject(body, job.strut().stock().od(), loosest);
        figure(
                new SectionPicture(subject, figures, NARROW),
                id + "-section",
                "single",
                "Cut through hole " + loosest.number() + ", the one with the most slack.");
        html.append("</div>\n");
        figure(
                new StripPicture(body, pattern, figures, WIDE),
                id + "-strip",
                "wide",
                "Opened out, outer face toward you.");
        figure(
                new StripPicture(body, pattern, figures, NARROW),
                id + "-strip-narrow",
                "narrow",
                "Opened out, outer face toward you.");
        if (HoleHeights.off(pattern)) {
            paragraph(HoleHeights.WARNING);
            html.append(HtmlGrid.of(new HoleHeights(job).grid(pattern)));
        }
        html.append("</section>\n");
    }

    // Of the hub types that a pattern serves, the first with a strut in every hole; one that is not upside down if it
    // can
    // be.
    private int fullest(int pattern) {
        return plan.served(pattern).stream()
                .max(Comparator.comparingInt(
                                (Integer type) -> plan.placement(type).holes().size())
                        .thenComparing((Integer type) -> !plan.placement(type).flipped())
                        .thenComparing(Comparator.<Integer>naturalOrder().reversed()))
                .orElseThrow();
    }

    private void struts() {
        open("Struts");
        html.append(HtmlGrid.bare(new StrutTables(plan).overview()));
        paragraph("Error: the fraction less the true length. Cut by the exact figure where you can.");
        close();
    }

    private void cutters() {
        open("Cutters");
        CutterTables cutters = new CutterTables(plan);
        if (plan.book().patterns().isEmpty()) {
            paragraph("No cutter was chosen: see the findings.");
        } else {
            html.append(HtmlGrid.bare(cutters.grid()));
            points(cutters.sources());
        }
        close();
    }

    private void time() {
        if (plan.book().patterns().isEmpty()) {
            return;
        }
        open(HOW_LONG);
        html.append(HtmlGrid.bare(TimeTable.grid(work.time())));
        paragraph(TimeTable.rule());
        close();
    }

    private void batch() {
        open("Batch");
        if (plan.book().patterns().isEmpty()) {
            paragraph("No collar can be made: see the findings.");
        } else {
            BatchTables tables = new BatchTables(work);
            if (!work.setups().isEmpty()) {
                facts(tables.facts());
                html.append(HtmlGrid.of(tables.sticks()));
            }
            html.append(HtmlGrid.of(tables.boxes()));
        }
        close();
    }

    private void stock() {
        open("Stock to pull");
        html.append(HtmlGrid.of(StockToPull.grid(plan, work)));
        SawTable.grids(work.stock(), UnitWords.inches(plan.job())).forEach(grid -> html.append(HtmlGrid.of(grid)));
        BuyTable buy = new BuyTable(plan, work.stock());
        html.append(HtmlGrid.of(buy.grid()));
        points(buy.notes());
        close();
    }

    private void files() {
        open("Files");
        filesAt = html.length();
        close();
    }

    private void cautions() {
        open("Cautions");
        points(Cautions.all());
        close();
    }
}
