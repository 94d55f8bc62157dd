package collarwright.paper;

import collarwright.assembly.RaisingStep;
import collarwright.dome.Dome;
import collarwright.job.LabelSheet;
import collarwright.kit.Connection;
import collarwright.kit.Kit;
import collarwright.kit.SiteWork;
import collarwright.kit.StepCard;
import collarwright.picture.DomePicture;
import collarwright.picture.HubStarPicture;
import collarwright.picture.Lettering;
import collarwright.picture.Picture;
import collarwright.picture.StepPicture;
import collarwright.picture.StripesKeyPicture;
import collarwright.picture.TierPicture;
import collarwright.picture.TierStripPicture;
import collarwright.plan.FlatEntry;
import collarwright.plan.Plan;
import collarwright.plan.UnitWords;
import collarwright.strut.EndWork;
import collarwright.units.Decimals;
import collarwright.units.Paper;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * The site book: what is in the kit, the map, step cards, taking down, bundles, and connections, in the order in which a
 * crew needs them.
 */
public final class SitePaper {

    /** More struts than this are mapped hub by hub and listed in tables for spreadsheets only. Our choice, no source. */
    private static final int MOST = 1200;

    private static final int STARS = 3;
    private static final double HALF = 88;

    private final Plan plan;
    private final SiteWork work;
    private final Flow flow;
    private final SiteTables tables;
    private final Paper paper;

    private SitePaper(Plan plan, SiteWork work, Lettering letters) {
        this.plan = plan;
        this.work = work;
        this.paper = UnitWords.inches(plan.job()) ? Paper.LETTER : Paper.A4;
        this.flow = new Flow(letters, paper);
        this.tables = new SiteTables(plan, work);
    }

    /**
     * Prints the book.
     *
     * @param plan the plan
     * @param work what it is printed from
     * @return a PDF file, A4, or Letter for a job in inches; the same bytes for the same plan
     */
    public static byte[] print(Plan plan, SiteWork work) {
        Lettering letters = Lettering.load();
        SitePaper book = new SitePaper(plan, work, letters);
        PdfPages.Form form = new PdfPages.Form("site", book.paper);
        return new PdfPages(letters, plan.job().title(), plan.job().revision(), form).print(book.pages());
    }

    private List<Page> pages() {
        cover();
        map();
        raising();
        takingDown();
        bundles();
        connections();
        return flow.pages();
    }

    private boolean small() {
        return plan.hubs().dome().memberCount() <= MOST;
    }

    private void cover() {
        flow.page("Site");
        flow.title(plan.job().title());
        if (!flow.letters().shows(plan.job().title())) {
            flow.text("□ stands for a letter that this paper's typeface lacks; index.html shows the whole title.");
        }
        flow.text("Revision " + plan.job().revision()
                + ". Every paper and label of this job carries it: throw away any other.");
        flow.gap(2);
        flow.facts(kitFacts(), new DomePicture(plan, HALF));
        flow.grid(tables.totals());
        flow.need(50);
        flow.heading("Cautions");
        flow.points(cautions(work.cards()));
    }

    private List<DomeFacts.Fact> kitFacts() {
        Kit kit = work.kit();
        Dome dome = plan.hubs().dome();
        LabelSheet sheet = LabelPages.sheet(plan);
        List<DomeFacts.Fact> facts = new ArrayList<>();
        facts.add(new DomeFacts.Fact("domes", Integer.toString(kit.domes())));
        facts.add(new DomeFacts.Fact("one dome", dome.nodeCount() + " hubs, " + dome.memberCount() + " struts"));
        facts.add(new DomeFacts.Fact(
                "bundles",
                kit.perDome().size() + " for each dome, " + kit.spares().size() + " of spares"));
        facts.add(new DomeFacts.Fact(
                "weight", tables.weight(OptionalDouble.of(Kit.kg(kit.perDome())), 0) + " each dome, " + unweighed()));
        facts.add(new DomeFacts.Fact("cards", work.cards().size() + " step cards"));
        facts.add(new DomeFacts.Fact("labels", labels(sheet)));
        return facts;
    }

    private String labels(LabelSheet sheet) {
        int each = work.labels().perDome().size();
        if (!LabelPages.printed(work.labels())) {
            return each + " for each dome, too many to print";
        }
        int sheets = LabelPages.sheets(sheet, each);
        int spares = LabelPages.sheets(sheet, work.labels().spares().size());
        return each + " for each dome: print sheets 1 to " + sheets + " of labels.pdf once for each dome"
                + (spares > 0 ? ", the last " + spares + " once" : "");
    }

    private static List<String> cautions(List<StepCard> cards) {
        return List.of(
                "Geometry only: no load rating. Do not climb on the frame or hang anything from it.",
                "Local codes, permits, anchoring and wind rules apply: ask the authority or a licensed engineer.",
                "Stop in wind." + (held(cards) ? " Hold up what a card says to hold up." : "")
                        + " Wear eye protection and gloves; a helmet below others' work.",
                "Nothing bears before every ring is in and every end is tied or pinned.",
                "A strut that does not go in is in the wrong hole or turned round: look at its label. Never force it.");
    }

    private static boolean held(List<StepCard> cards) {
        return cards.stream().flatMap(card -> card.steps().stream()).anyMatch(RaisingStep::held);
    }

    private void map() {
        flow.page("Map");
        flow.heading("Stripes");
        StripesKeyPicture key = new StripesKeyPicture(plan);
        if (key.readable()) {
            flow.need(key.height() + 20);
            flow.text("Paint them round both ends of every strut, or go by the labels. A wide stripe counts for five."
                    + " The shortest type has one.");
            flow.pictures(key);
        } else {
            flow.text("There are more strut types than anybody counts stripes: go by the labels.");
        }
        if (TierPicture.readable(plan)) {
            flow.heading("From above, opened out flat");
            TierPicture tiers = new TierPicture(plan, Flow.WIDTH - (paper == Paper.A4 ? 4 : 22));
            flow.need(tiers.height() + 16);
            flow.text((plan.hubs().dome().hasTiers()
                            ? "Each hub with its pattern. Places count clockwise from the first one, which is named."
                            : "Each hub with its pattern and number.")
                    + tiers.doubleRings());
            flow.pictures(tiers);
        }
        if (!small()) {
            flow.text(
                    "The dome has too many struts to be mapped hub by hub on paper: site/connections.csv has them all.");
            return;
        }
        hubMaps();
    }

    private void hubMaps() {
        Map<Integer, List<Connection>> ends =
                work.connections().byHub().stream().collect(Collectors.groupingBy(Connection::node));
        flow.page("Map, hub by hub");
        flow.heading("Hub by hub, seen from outside");
        flow.text(
                "UP is up. In the box: hub, its type, its collar's pattern; the arrow's head on it is UP. On each strut:"
                        + " number of the hole, type and stripes."
                        + (plan.book().flips() ? " A double edge: the collar goes on upside down, TOP inside." : ""));
        Dome dome = plan.hubs().dome();
        List<Picture> stars = new ArrayList<>();
        double pitch = TierStripPicture.pitch(plan, flow.letters());
        for (int tier = 0; tier < (dome.hasTiers() ? dome.tierCount() : 0); tier++) {
            int count = dome.firstOfTier(tier + 1) - dome.firstOfTier(tier);
            List<TierStripPicture> strips = TierStripPicture.windows(tier, count, pitch).stream()
                    .map(window -> new TierStripPicture(plan, window, pitch, ends))
                    .toList();
            if (count == 1 || !strips.stream().allMatch(strip -> strip.clear(flow.letters()))) {
                for (int node = dome.firstOfTier(tier); node < dome.firstOfTier(tier + 1); node++) {
                    stars.add(star(node, ends));
                }
                continue;
            }
            stars(stars);
            strips.forEach(flow::pictures);
        }
        for (int node = 0; node < (dome.hasTiers() ? 0 : dome.nodeCount()); node++) {
            stars.add(star(node, ends));
        }
        stars(stars);
    }

    private Picture star(int node, Map<Integer, List<Connection>> ends) {
        return new HubStarPicture(plan, node, ends.getOrDefault(node, List.of()));
    }

    private void stars(List<Picture> stars) {
        for (int from = 0; from < stars.size(); from += STARS) {
            List<Picture> row = stars.subList(from, StrictMath.min(stars.size(), from + STARS));
            flow.pictures(row.toArray(Picture[]::new));
        }
        stars.clear();
    }

    private void raising() {
        flow.page("Raising");
        flow.title("Raising: " + work.cards().size() + " cards");
        flow.text(
                "Dark goes in now, grey stands. Struts of a card go in by their order numbers, of which the card tells the"
                        + " first and the last (under Connections and in struts/raising.csv they stand for all struts). Push an end deep into one collar, then"
                        + " back into the other.");
        if (FlatEntry.inside(plan)) {
            flow.points(List.of(AssemblyTables.INSIDE, UnitWords.of(plan.job(), AssemblyTables.insideRule(plan))));
        }
        BitSet standing = new BitSet();
        List<Picture> row = new ArrayList<>();
        for (StepCard card : work.cards()) {
            row.add(new StepPicture(plan, card, standing));
            card.steps().forEach(step -> standing.set(step.member()));
            if (row.size() == 2) {
                flow.pictures(row.toArray(Picture[]::new));
                row.clear();
            }
        }
        if (!row.isEmpty()) {
            flow.pictures(row.toArray(Picture[]::new));
        }
    }

    private void takingDown() {
        flow.page("Taking down");
        flow.title("Taking down and packing up");
        if (FlatEntry.inside(plan)) {
            flow.points(List.of(
                    "An end that was flattened inside its collar does not come out of its hole again: this frame is not taken"
                            + " down strut by strut, and the cards do not serve backwards.",
                    "To take it down for good, ask who answers for the structure in which order struts may be cut beside"
                            + " the collars; prop what would hang free first. Those struts do not go up again."));
            return;
        }
        List<String> rules = new ArrayList<>(List.of(
                "The cards backwards, from the last to the first; on each card the order numbers backwards too.",
                "Put what comes off into bundles at once. A bundle that is full is tied, labelled and carried off.",
                "Load in the order in which bundles become full: what is raised first is loaded last, and lies on top.",
                "Count every bundle; what is broken is replaced from the spares, and written on the spares' label."));
        if (held(work.cards())) {
            rules.add(1, "Hold up what the card says to hold up.");
        }
        flow.points(rules);
        flow.grid(tables.takingDown());
    }

    private void bundles() {
        Kit kit = work.kit();
        flow.page("Bundles");
        flow.title("Bundles");
        flow.text("At most " + tables.weight(OptionalDouble.of(plan.job().site().bundleKg()), 0)
                + " each, unless one piece weighs more. " + density());
        flow.grid(tables.bundles(
                kit.domes() == 1 ? "The dome" : "Each of the " + kit.domes() + " domes, all alike", kit.perDome()));
        flow.text("Together " + tables.weight(OptionalDouble.of(Kit.kg(kit.perDome())), 1) + ", " + unweighed() + ".");
        if (!kit.spares().isEmpty()) {
            flow.grid(tables.bundles("Spares, once for the whole order", kit.spares()));
            flow.text(
                    "Together " + tables.weight(OptionalDouble.of(Kit.kg(kit.spares())), 1) + ", " + unweighed() + ".");
        }
    }

    private String unweighed() {
        EndWork ends = plan.job().strut().endWork();
        boolean plugs = ends.plugs().isPresent();
        return "ties"
                + (plugs && ends.caps() ? ", plugs and caps" : plugs ? " and plugs" : ends.caps() ? " and caps" : "")
                + " not counted";
    }

    private String density() {
        String materials = List.of(
                        plan.job().strut().stock().material(),
                        plan.job().hub().collar().material(),
                        plan.job().hub().ring().material())
                .stream()
                .distinct()
                .map(m -> m.title() + " " + Decimals.trimmed(m.densityKgPerM3(), 1) + " kg/m³")
                .collect(Collectors.joining(", "));
        return "Weights are worked out from sizes and nominal density (" + materials
                + "; sources in profiles), holes not taken off: weigh one before you rely on it."
                + (plan.job().strut().endWork().plugs().isPresent()
                        ? " Struts are weighed without the plugs in their ends, whose material is not known."
                        : "");
    }

    private void connections() {
        flow.page("Connections");
        flow.title("Connections, both ways");
        flow.text(SiteTables.proof(work.connections()) + " site/connections.csv has the same tables.");
        if (!small()) {
            flow.text("There are too many for paper.");
            return;
        }
        flow.grid(tables.byStrut());
        flow.page("Connections, by hub");
        flow.grid(tables.byHub());
    }
}
