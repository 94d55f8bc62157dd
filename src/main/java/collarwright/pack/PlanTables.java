package collarwright.pack;

import collarwright.dome.Dome;
import collarwright.finding.Finding;
import collarwright.hub.HubStrut;
import collarwright.hub.HubType;
import collarwright.hub.StrutTip;
import collarwright.plan.Check;
import collarwright.plan.DomeMeasures;
import collarwright.plan.OrderTotals;
import collarwright.plan.PartNames;
import collarwright.plan.Plan;
import collarwright.plan.StockNeed;
import collarwright.plan.StockWork;
import collarwright.tooling.Pattern;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The tables of {@code plan.json} that have no file of their own: they stand in the workbook only. */
final class PlanTables {

    private static final int MM_DECIMALS = 3;
    private static final int DEGREE_DECIMALS = 4;

    private PlanTables() {}

    /** What the job is, what one dome has and what is made. */
    static Table job(Plan plan) {
        TableBuilder table = new TableBuilder("what", "value", "unit");
        table.text("job").text(plan.job().title()).empty().endRow();
        table.text("revision").text(plan.job().revision()).empty().endRow();
        DomeMeasures measures = DomeMeasures.of(plan);
        measures.radius().ifPresent(mm -> length(table, "radius", mm));
        measures.floorDiameter().ifPresent(mm -> length(table, "floor diameter", mm));
        length(table, "height", measures.height());
        Dome dome = plan.hubs().dome();
        count(table, "hubs of one dome", dome.nodeCount());
        count(table, "struts of one dome", dome.memberCount());
        count(table, "strut ends of one dome", 2L * dome.memberCount());
        count(table, "feet of one dome", dome.feet().size());
        count(table, "domes", plan.job().order().domes());
        table.text("spares")
                .number(plan.job().order().sparesPercent(), 1)
                .text("%")
                .endRow();
        OrderTotals made = OrderTotals.of(plan);
        count(table, "collars to make", made.collars());
        count(table, "struts to make", made.struts());
        count(table, "centre rings to make", made.rings());
        count(table, "ties or pins", made.ties());
        return table.table();
    }

    private static void length(TableBuilder table, String what, double mm) {
        table.text(what).number(mm, MM_DECIMALS).text("mm").endRow();
    }

    private static void count(TableBuilder table, String what, long number) {
        table.text(what).whole(number).empty().endRow();
    }

    /** One row for each finding. */
    static Table findings(Plan plan) {
        TableBuilder table = new TableBuilder("level", "code", "where", "expected", "found", "what to do");
        for (Finding finding : plan.findings()) {
            table.text(word(finding.level()))
                    .text(finding.code().name())
                    .text(finding.where().text())
                    .text(finding.expected())
                    .text(finding.found())
                    .text(String.join("; or ", finding.hints()))
                    .endRow();
        }
        return table.table();
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    /** One row for each pattern. */
    static Table patterns(Plan plan) {
        PartNames names = PartNames.of(plan);
        TableBuilder table = new TableBuilder(
                "pattern", "collars per dome", "collars to make", "holes", "hub types that take it", "fingerprint");
        for (Pattern pattern : plan.book().patterns()) {
            List<String> types = new ArrayList<>();
            for (int type = 0; type < plan.hubs().types().size(); type++) {
                if (names.pattern(type).equals(pattern.id())) {
                    types.add(names.hubType(type));
                }
            }
            table.text(pattern.id())
                    .whole(pattern.count())
                    .whole(plan.job().order().made(pattern.count()))
                    .whole(pattern.holes().size())
                    .text(String.join(" ", types))
                    .text(pattern.fingerprint())
                    .endRow();
        }
        return table.table();
    }

    /** One row for each strut of each hub type. */
    static Table hubTypes(Plan plan) {
        PartNames names = PartNames.of(plan);
        TableBuilder table = new TableBuilder(
                "hub type",
                "per dome",
                "pattern",
                "collar on the pattern",
                "hole",
                "strut type",
                "strut end",
                "azimuth of the strut (deg)",
                "axial angle (deg)");
        for (int i = 0; i < plan.hubs().types().size(); i++) {
            HubType type = plan.hubs().types().get(i);
            for (int s = 0; s < type.struts().size(); s++) {
                HubStrut strut = type.struts().get(s);
                table.text(names.hubType(i))
                        .whole(type.count())
                        .text(names.pattern(i))
                        .text(plan.placement(i).flipped() ? "TOP inside" : "TOP outside")
                        .whole(plan.placement(i).holes().get(s) + 1L)
                        .text(names.strutType(strut.strutType()))
                        .text(strut.tip() == StrutTip.A ? "a" : "b")
                        .number(Angles.degrees(strut.azimuth()), DEGREE_DECIMALS)
                        .number(Angles.degrees(strut.axialAngle()), DEGREE_DECIMALS)
                        .endRow();
            }
        }
        return table.table();
    }

    /** One row for each kind of part. */
    static Table stock(StockWork work) {
        TableBuilder table = new TableBuilder(
                "for",
                "stock",
                "title",
                "material",
                "pieces",
                "net length (mm)",
                "cut (mm)",
                "length with cuts (mm)",
                "sold in (mm)");
        for (StockNeed need : work.needs()) {
            table.text(word(need.role()))
                    .text(need.stock().name())
                    .text(need.stock().title())
                    .text(need.stock().material().name())
                    .whole(need.pieces())
                    .number(need.netLength(), MM_DECIMALS);
            need.kerf().ifPresentOrElse(mm -> table.number(mm, MM_DECIMALS), table::empty);
            table.number(need.length(), MM_DECIMALS)
                    .text(need.stock().lengths().stream()
                            .map(mm -> Decimals.trimmed(mm, 1))
                            .collect(Collectors.joining(" ")))
                    .endRow();
        }
        return table.table();
    }

    /** One row for each program. */
    static Table programs(List<ProgramEntry> programs) {
        TableBuilder table =
                new TableBuilder("file", "machine", "time of one run (s)", "cutters", "stick", "times to run");
        for (ProgramEntry program : programs) {
            table.text(program.file())
                    .text(program.machine())
                    .number(program.seconds(), 1)
                    .text(String.join(", ", program.tools()));
            program.stick().ifPresentOrElse(table::text, table::empty);
            program.runs().ifPresentOrElse(table::whole, table::empty);
            table.endRow();
        }
        return table.table();
    }

    /** One row for each check, the worst first. */
    static Table checks(Plan plan) {
        TableBuilder table = new TableBuilder(
                "verdict", "code", "where", "value", "has to be", "warns from", "stops from", "unit", "source");
        for (Check check : ChecksJson.worstFirst(plan.checks())) {
            boolean angle = check.quantity() == Check.Quantity.ANGLE;
            table.text(check.verdict().map(PlanTables::word).orElse("pass"))
                    .text(check.code().name())
                    .text(check.where().text());
            value(table, angle, check.value());
            table.text(check.sense() == Check.Sense.AT_LEAST ? "at least" : "at most");
            value(table, angle, check.limits().warn());
            check.limits().stop().ifPresentOrElse(stop -> value(table, angle, stop), table::empty);
            table.text(angle ? "°" : "mm").text(check.limits().source()).endRow();
        }
        return table.table();
    }

    private static void value(TableBuilder table, boolean angle, double value) {
        if (Double.isFinite(value)) {
            table.number(angle ? Angles.degrees(value) : value, MM_DECIMALS);
        } else {
            table.empty();
        }
    }
}
