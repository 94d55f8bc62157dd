package collarwright.cli;

import collarwright.finding.Code;
import collarwright.pack.CheckReport;
import collarwright.plan.Check;
import collarwright.plan.Check.Quantity;
import collarwright.plan.Check.Sense;
import collarwright.plan.DomeMeasures;
import collarwright.plan.OrderTotals;
import collarwright.plan.Plan;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Prints what a plan comes to and its worst margins. */
final class CheckTable {

    private CheckTable() {}

    static String print(Plan plan) {
        StringBuilder text = new StringBuilder();
        text.append(plan.job().title())
                .append("  (revision ")
                .append(plan.job().revision())
                .append(")\n");
        text.append(plan.hubs().dome().nodeCount())
                .append(" hubs of ")
                .append(types(plan.hubs().types().size()))
                .append(", ")
                .append(plan.hubs().dome().memberCount())
                .append(" struts of ")
                .append(types(plan.struts().types().size()))
                .append("; ")
                .append(size(plan))
                .append(" mm\n");
        OrderTotals made = OrderTotals.of(plan);
        text.append("to make, with spares: ")
                .append(made.collars())
                .append(" collars, ")
                .append(made.struts())
                .append(" struts\n\n");
        rows(text, CheckReport.worstFirst(plan));
        return text.toString();
    }

    private static String types(int count) {
        return count + (count == 1 ? " type" : " types");
    }

    private static String size(Plan plan) {
        DomeMeasures sizes = DomeMeasures.of(plan);
        return sizes.radius().isPresent()
                ? "radius " + Decimals.fixed(sizes.radius().getAsDouble(), 1)
                : "height " + Decimals.fixed(sizes.height(), 1);
    }

    // One row of each kind, the worst of it: forty rows that all pass tell a person nothing.
    private static void rows(StringBuilder text, List<Check> checks) {
        text.append("worst of each check      value      limit     margin  where\n");
        Set<Code> told = new HashSet<>();
        checks.stream().filter(c -> told.add(c.code())).forEach(c -> row(text, c));
        text.append(checks.size()).append(" checks in all; every one is in plan.json, or printed with --json\n\n");
    }

    private static void row(StringBuilder text, Check check) {
        left(text, check.code().name().toLowerCase(Locale.ROOT).replace('_', ' '), 20);
        right(text, shown(check, check.value()));
        right(
                text,
                (check.sense() == Sense.AT_LEAST ? "≥ " : "≤ ")
                        + shown(check, check.limits().warn()));
        right(text, shown(check, check.margin()));
        text.append("  ").append(check.where().text()).append('\n');
    }

    private static String shown(Check check, double value) {
        if (!Double.isFinite(value)) {
            return "none";
        }
        return check.quantity() == Quantity.LENGTH
                ? Decimals.fixed(value, 2) + " mm"
                : Decimals.fixed(Angles.degrees(value), 2) + "°";
    }

    private static void left(StringBuilder text, String word, int width) {
        text.append(word).append(" ".repeat(StrictMath.max(1, width - word.length())));
    }

    private static void right(StringBuilder text, String word) {
        text.append(" ".repeat(StrictMath.max(1, 11 - word.length()))).append(word);
    }
}
