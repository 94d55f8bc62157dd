package collarwright.cli;

import collarwright.job.Job;
import collarwright.machining.ProgramUnits;
import collarwright.plan.Check;
import collarwright.plan.Check.Quantity;
import collarwright.plan.CollarProposal;
import collarwright.plan.LeastCollars;
import collarwright.plan.Plan;
import collarwright.stock.RoundStock;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import collarwright.units.InchesFirst;
import java.util.List;
import java.util.stream.Collectors;

/** Prints the smallest collars that would do: in an inch job first those of inch pipe. */
final class CollarTable {

    private static final double INCH = 25.4;

    private CollarTable() {}

    static String print(Plan plan, List<RoundStock> stocks) {
        if (!inch(plan.job())) {
            return print("the smallest collars without a warning", LeastCollars.of(plan, stocks), false);
        }
        List<RoundStock> sized = stocks.stream().filter(CollarTable::inch).toList();
        List<RoundStock> others = stocks.stream().filter(s -> !inch(s)).toList();
        return print("the smallest collars of inch pipe without a warning", LeastCollars.of(plan, sized), true)
                + print("the same of other pipe", LeastCollars.of(plan, others), true);
    }

    // A job in inches has inch programs, unless it says otherwise.
    private static boolean inch(Job job) {
        return job.shop().programUnits() == ProgramUnits.INCH || inch(job.hub().collar());
    }

    // Profiles of inch sizes are called by them.
    private static boolean inch(RoundStock stock) {
        return stock.name().matches(".*[0-9]in");
    }

    private static String print(String title, List<CollarProposal> proposals, boolean inch) {
        if (proposals.isEmpty()) {
            return title + ": no known pipe of the collar's material would do, with any known ring of the ring's\n\n";
        }
        StringBuilder text = new StringBuilder(title + ", nominal, not measured\n");
        row(text, "collar", "width", "centre ring", "width", "end gap", "slack", "next cutter");
        for (CollarProposal p : proposals) {
            row(
                    text,
                    p.collar().name(),
                    width(p.width(), inch),
                    p.ring().name(),
                    width(p.ringWidth(), inch),
                    gap(p.endGap(), inch),
                    degrees(p.slack()),
                    "+" + degrees(p.step()));
            text.append("  margins: ").append(margins(p, inch)).append('\n');
        }
        return text.append('\n').toString();
    }

    private static String width(double width, boolean inch) {
        String mm = Decimals.fixed(width, 0) + " mm";
        return inch ? Decimals.fixed(width / INCH, 2) + " in (" + mm + ")" : mm;
    }

    private static String gap(double gap, boolean inch) {
        String mm = Decimals.fixed(gap, 1) + " mm";
        return inch ? InchesFirst.of(mm) : mm;
    }

    private static String margins(CollarProposal proposal, boolean inch) {
        String margins = proposal.margins().stream().map(CollarTable::margin).collect(Collectors.joining(", "));
        return inch ? InchesFirst.of(margins) : margins;
    }

    private static String margin(Check check) {
        double margin = check.margin();
        String value = !Double.isFinite(margin)
                ? "no limit"
                : check.quantity() == Quantity.LENGTH ? Decimals.fixed(margin, 1) + " mm" : degrees(margin);
        return CheckNames.of(check.code()) + " " + value;
    }

    private static String degrees(double angle) {
        return Decimals.fixed(Angles.degrees(angle), 2) + "°";
    }

    private static void row(StringBuilder text, String... cells) {
        int[] widths = {28, 18, 28, 18, 19, 9, 0};
        for (int i = 0; i < cells.length; i++) {
            text.append(cells[i])
                    .append(" ".repeat(StrictMath.max(i + 1 < cells.length ? 1 : 0, widths[i] - cells[i].length())));
        }
        text.append('\n');
    }
}
