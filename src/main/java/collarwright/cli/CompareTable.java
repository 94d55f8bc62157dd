package collarwright.cli;

import collarwright.pack.ComparisonReport.Named;
import collarwright.plan.BillOfMaterials;
import collarwright.plan.Variant;
import collarwright.plan.WorkTime;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Several jobs side by side, for a person: one column for each. */
final class CompareTable {

    private static final int NAMES = 26;
    private static final int MOST_TITLE = 22;
    private static final int GAP = 2;

    private final List<Named> jobs;
    private final List<List<String>> rows = new ArrayList<>();

    private CompareTable(List<Named> jobs) {
        this.jobs = jobs;
    }

    static String print(List<Named> jobs) {
        CompareTable table = new CompareTable(jobs);
        table.fill();
        return table.text();
    }

    private void fill() {
        List<String> files = new ArrayList<>(List.of("file"));
        jobs.forEach(job -> files.add(end(job.file())));
        rows.add(files);
        row("job", v -> shortened(v.title()));
        row("revision", Variant::revision);
        row("frequency", CompareTable::frequency);
        row("strut types", v -> Integer.toString(v.types().struts()));
        row("hub types", v -> Integer.toString(v.types().hubs()));
        row("patterns", v -> Integer.toString(v.types().patterns()));
        row("struts to make", v -> Integer.toString(v.made().struts()));
        row("collars to make", v -> Integer.toString(v.made().collars()));
        row("holes in collars", v -> Long.toString(v.stock().holes()));
        row("ties or pins", v -> Integer.toString(v.made().ties()));
        row("new sticks", v -> planned(v, Integer.toString(v.stock().sticks())));
        row("offcuts used", v -> Integer.toString(v.stock().offcuts()));
        row("cuts of the saw", v -> planned(v, Long.toString(v.stock().cuts())));
        row(
                "waste of sticks",
                v -> v.stock().waste().isPresent()
                        ? planned(v, Decimals.fixed(100 * v.stock().waste().getAsDouble(), 1) + " %")
                        : "-");
        row("longest stick, mm", v -> length(v.bill().longestBought()));
        row("longest part, mm", v -> length(v.bill().longestMade()));
        row("weight bought, kg", v -> Decimals.fixed(v.bill().boughtKg(), 1));
        row("weight made, kg", v -> Decimals.fixed(v.bill().madeKg(), 1));
        row("time in the shop, h:min", v -> clock(v.time().minutes(WorkTime.Place.SHOP)));
        row("time on site, h:min", v -> clock(v.time().minutes(WorkTime.Place.SITE)));
        row("work costs", v -> v.time().money().given() ? money(v, work(v)) : "-");
        row("stock costs", CompareTable::bought);
        row("stops, warnings", v -> v.stops() + ", " + v.warnings());
    }

    private void row(String name, Function<Variant, String> value) {
        List<String> row = new ArrayList<>(List.of(name));
        jobs.forEach(job -> row.add(value.apply(job.variant())));
        rows.add(row);
    }

    private static String frequency(Variant v) {
        if (v.breakdown().isEmpty()) {
            return "frame";
        }
        int c = v.breakdown().get(1);
        return c == 0 ? v.breakdown().get(0) + "v" : "(" + v.breakdown().get(0) + ", " + c + ")";
    }

    private static String planned(Variant v, String value) {
        return v.stock().planned() ? value : value + " *";
    }

    private static double work(Variant v) {
        return v.time().cost(WorkTime.Place.SHOP) + v.time().cost(WorkTime.Place.SITE);
    }

    private static String bought(Variant v) {
        BillOfMaterials bill = v.bill();
        return bill.cost()
                .map(c -> money(v, c) + (bill.unpriced().isEmpty() ? "" : " +"))
                .orElse("-");
    }

    private static String money(Variant v, double cost) {
        String currency = v.bill().currency();
        return Decimals.fixed(cost, 2) + (currency.isEmpty() ? "" : " " + currency);
    }

    private static String length(double length) {
        return length > 0 ? Decimals.trimmed(length, 1) : "-";
    }

    private static String clock(long minutes) {
        return minutes / 60 + ":" + (minutes % 60 < 10 ? "0" : "") + minutes % 60;
    }

    // Of a long path its end tells more.
    private static String end(String file) {
        int length = file.codePointCount(0, file.length());
        return length <= MOST_TITLE ? file : "…" + file.substring(file.offsetByCodePoints(0, length - MOST_TITLE + 1));
    }

    private static String shortened(String title) {
        int length = title.codePointCount(0, title.length());
        return length <= MOST_TITLE ? title : title.substring(0, title.offsetByCodePoints(0, MOST_TITLE - 1)) + "…";
    }

    private String text() {
        int[] widths = new int[jobs.size()];
        for (List<String> row : rows) {
            for (int i = 0; i < widths.length; i++) {
                String cell = row.get(i + 1);
                widths[i] = StrictMath.max(widths[i], cell.codePointCount(0, cell.length()) + GAP);
            }
        }
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows) {
            text.append(row.get(0))
                    .append(" ".repeat(StrictMath.max(1, NAMES - row.get(0).length())));
            for (int i = 0; i < widths.length; i++) {
                String cell = row.get(i + 1);
                text.append(" ".repeat(widths[i] - cell.codePointCount(0, cell.length())))
                        .append(cell);
            }
            text.append('\n');
        }
        if (jobs.stream().anyMatch(j -> !j.variant().stock().planned())) {
            text.append("* some stock is not planned on sticks here, and not counted\n");
        }
        if (rows.get(rows.size() - 2).stream().anyMatch(c -> c.endsWith("+"))) {
            text.append("+ and what has no price\n");
        }
        return text.toString();
    }
}
