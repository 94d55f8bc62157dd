package collarwright.cli;

import collarwright.pack.CheckReport;
import collarwright.pack.DomeMeasures;
import collarwright.pack.OrderTotals;
import collarwright.plan.Check;
import collarwright.plan.Check.Quantity;
import collarwright.plan.Check.Sense;
import collarwright.plan.Plan;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.List;

/** Prints what a plan comes to and its worst margins. */
final class CheckTable {

    private static final int ROWS = 12;

    private CheckTable() {}

    static String print(Plan plan) {
        StringBuilder text = new StringBuilder();
        text.append(plan.job().title())
                .append("  (revision ")
                .append(plan.job().revision())
                .append(")\n");
        text.append(plan.hubs().dome().nodeCount())
                .append(" hubs of ")
                .append(plan.hubs().types().size())
                .append(" types, ")
                .append(plan.hubs().dome().memberCount())
                .append(" struts of ")
                .append(plan.struts().types().size())
                .append(" types; radius ")
                .append(Decimals.fixed(DomeMeasures.of(plan).radius(), 1))
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

    private static void rows(StringBuilder text, List<Check> checks) {
        text.append("worst margins       value      limit     margin  where\n");
        checks.stream().limit(ROWS).forEach(c -> row(text, c));
        if (checks.size() > ROWS) {
            text.append("and ")
                    .append(checks.size() - ROWS)
                    .append(" more with larger margins (all in plan.json, or with --json)\n");
        }
    }

    private static void row(StringBuilder text, Check check) {
        left(text, check.code().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '), 20);
        right(text, shown(check, check.value()));
        right(text, (check.sense() == Sense.AT_LEAST ? "≥ " : "≤ ") + shown(check, check.limits().warn()));
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
