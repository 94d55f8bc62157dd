package collarwright.pack;

import collarwright.hub.StrutTip;
import collarwright.kit.Bundle;
import collarwright.kit.Connection;
import collarwright.kit.Kit;
import collarwright.kit.SiteLabels;
import collarwright.kit.SiteWork;
import collarwright.kit.Stripes;
import collarwright.paper.LabelPages;
import collarwright.paper.SitePaper;
import collarwright.plan.PartNames;
import collarwright.plan.Plan;
import java.util.List;

/** The folder of a pack that goes to the site: a book, label sheets, and tables of connections and bundles. */
final class SiteFiles {

    static final String BOOK = "site/site.pdf";
    static final String LABELS = "site/labels.pdf";
    static final String CONNECTIONS = "site/connections.csv";
    static final String BUNDLES = "site/bundles.csv";

    private static final int KG_DECIMALS = 3;

    private final Plan plan;
    private final SiteWork work;
    private final PartNames names;

    SiteFiles(Plan plan, SiteWork work) {
        this.plan = plan;
        this.work = work;
        this.names = PartNames.of(plan);
    }

    /** Takes what is made. */
    @FunctionalInterface
    interface Taker {
        void put(String path, String purpose, byte[] bytes);
    }

    void print(Taker taker) {
        taker.put(
                BOOK,
                "for the crew on site: what is in the kit, map, step cards for raising, taking down, bundles, connections",
                SitePaper.print(plan, work));
        if (LabelPages.printed(work.labels())) {
            taker.put(
                    LABELS,
                    "labels for strut ends, collars and bundles, on sheets of labels; print at 100 %, once for each dome",
                    LabelPages.print(plan, work.labels()));
        }
    }

    /** One row for each strut end, first by strut, then again by hub. */
    Table connections() {
        TableBuilder table = new TableBuilder(
                "listed by",
                "strut end",
                "strut",
                "strut type",
                "end",
                "hub",
                "hole",
                "hub type",
                "pattern",
                "revision",
                "job");
        work.connections().byStrut().forEach(end -> row(table, "strut", end));
        work.connections().byHub().forEach(end -> row(table, "hub", end));
        return table.table();
    }

    private void row(TableBuilder table, String by, Connection end) {
        int strut = plan.hubs().strutTypeOf(end.member());
        int hub = plan.hubs().typeOf(end.node());
        boolean alike = plan.struts().types().get(strut).alike();
        table.text(by)
                .text(SiteLabels.id(names, end))
                .text(names.member(end.member()))
                .text(names.strutType(strut))
                .text(alike ? "either" : end.tip() == StrutTip.A ? "a" : "b")
                .text(names.node(end.node()))
                .whole(end.hole())
                .text(names.hubType(hub))
                .text(names.pattern(hub));
        PackTables.end(table, plan);
    }

    /** One row for each bundle: those of a dome, then those of spares. */
    Table bundles() {
        Kit kit = work.kit();
        TableBuilder table = new TableBuilder(
                "bundle",
                "times",
                "what",
                "part",
                "pieces in one",
                "stripes, a wide one counts five",
                "one piece (kg)",
                "bundle (kg)",
                "revision",
                "job");
        rows(table, kit.perDome(), kit.domes());
        rows(table, kit.spares(), 1);
        return table.table();
    }

    private void rows(TableBuilder table, List<Bundle> bundles, int times) {
        for (Bundle bundle : bundles) {
            table.text(bundle.id())
                    .whole(times)
                    .text(what(bundle.kind()) + (bundle.spare() ? ", spare" : ""))
                    .text(bundle.part())
                    .whole(bundle.pieces());
            stripes(plan, bundle).ifPresentOrElse(s -> table.whole(s.number()), table::empty);
            bundle.pieceKg().ifPresentOrElse(kg -> table.number(kg, KG_DECIMALS), table::empty);
            bundle.kg().ifPresentOrElse(kg -> table.number(kg, KG_DECIMALS), table::empty);
            PackTables.end(table, plan);
        }
    }

    static String what(Bundle.Kind kind) {
        return switch (kind) {
            case STRUTS -> "struts";
            case COLLARS -> "collars";
            case RINGS -> "rings";
            case TIES -> "ties";
            case CAPS -> "caps";
        };
    }

    /** The stripes of a bundle of struts that has any. */
    static java.util.Optional<Stripes> stripes(Plan plan, Bundle bundle) {
        for (int type = 0; type < plan.struts().types().size(); type++) {
            boolean same = bundle.kind() == Bundle.Kind.STRUTS
                    && plan.struts().types().get(type).id().equals(bundle.part());
            if (same && Stripes.of(type).painted()) {
                return java.util.Optional.of(Stripes.of(type));
            }
        }
        return java.util.Optional.empty();
    }
}
