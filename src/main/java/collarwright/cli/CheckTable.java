package collarwright.cli;

import collarwright.finding.Code;
import collarwright.pack.CheckReport;
import collarwright.plan.Check;
import collarwright.plan.Check.Quantity;
import collarwright.plan.Check.Sense;
import collarwright.plan.DomeMeasures;
import collarwright.plan.OrderTotals;
import collarwright.plan.Plan;
import collarwright.plan.UnitWords;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import collarwright.units.InchesFirst;
import java.util.HashSet;
import java.util.List;
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
                .append(UnitWords.of(plan.job(), size(plan) + " mm"))
                .append('\n');
        OrderTotals made = OrderTotals.of(plan);
        text.append("to make, with spares: ")
                .append(made.collars())
                .append(" collars, ")
                .append(made.struts())
                .append(" struts\n\n");
        new Rows(text, UnitWords.inches(plan.job())).print(CheckReport.worstFirst(plan));
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

    /** The rows, in mm or in inches with mm behind. */
    private record Rows(StringBuilder text, boolean inches) {

        // One row of each kind, the worst of it: forty rows that all pass tell a person nothing.
        void print(List<Check> checks) {
            left("worst of each check", 20);
            right("value");
            right("limit");
            right("margin");
            text.append("  where\n");
            Set<Code> told = new HashSet<>();
            checks.stream().filter(c -> told.add(c.code())).forEach(this::row);
            text.append(checks.size()).append(" checks in all; every one is in plan.json, or printed with --json\n\n");
        }

        private void row(Check check) {
            left(CheckNames.of(check.code()), 20);
            right(shown(check, check.value()));
            right((check.sense() == Sense.AT_LEAST ? "≥ " : "≤ ")
                    + shown(check, check.limits().warn()));
            right(shown(check, check.margin()));
            text.append("  ").append(check.where().text()).append('\n');
        }

        private String shown(Check check, double value) {
            if (!Double.isFinite(value)) {
                return "none";
            }
            if (check.quantity() != Quantity.LENGTH) {
                return Decimals.fixed(Angles.degrees(value), 2) + "°";
            }
            String millimetres = Decimals.fixed(value, 2) + " mm";
            return inches ? InchesFirst.of(millimetres) : millimetres;
        }

        private void left(String word, int width) {
            text.append(word).append(" ".repeat(StrictMath.max(1, width - word.length())));
        }

        private void right(String word) {
            text.append(" ".repeat(StrictMath.max(1, (inches ? 24 : 11) - word.length())))
                    .append(word);
        }
    }
}
