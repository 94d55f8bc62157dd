package collarwright.pack;

import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.plan.Check;
import collarwright.plan.Check.Quantity;
import collarwright.plan.Check.Sense;
import collarwright.plan.Plan;
import collarwright.units.Angles;
import java.io.IOException;
import java.util.Comparator;
import java.util.List;

/** Writes what was checked, the worst first, and what was found. */
final class ChecksJson {

    // Stops before warnings before passes; then the least margin, as the number that is shown.
    private static final Comparator<Check> WORST_FIRST = Comparator.comparingInt(ChecksJson::rank)
            .thenComparingDouble(c -> shown(c, c.margin()))
            .thenComparing(Check::code);

    private final JsonOut out;

    ChecksJson(JsonOut out) {
        this.out = out;
    }

    void write(Plan plan) throws IOException {
        out.rows("checks", worstFirst(plan.checks()), this::check);
        findings(plan.findings());
    }

    void findings(List<Finding> findings) throws IOException {
        out.objects("findings", findings, this::finding);
    }

    static List<Check> worstFirst(List<Check> checks) {
        return checks.stream().sorted(WORST_FIRST).toList();
    }

    private static int rank(Check check) {
        return check.verdict().map(Enum::ordinal).orElse(Level.values().length);
    }

    private static double shown(Check check, double value) {
        return check.quantity() == Quantity.LENGTH ? value : Angles.degrees(value);
    }

    private void check(Check check) throws IOException {
        out.text("code", check.code().name());
        out.text("where", check.where().text());
        out.text("quantity", check.quantity() == Quantity.LENGTH ? "length" : "angle");
        out.text("sense", check.sense() == Sense.AT_LEAST ? "at-least" : "at-most");
        out.numberIfFinite("value", shown(check, check.value()));
        out.text("unit", check.quantity() == Quantity.LENGTH ? "mm" : "deg");
        if (check.limits().stop().isPresent()) {
            out.number("stop", shown(check, check.limits().stop().getAsDouble()));
        }
        out.number("warn", shown(check, check.limits().warn()));
        out.numberIfFinite("margin", shown(check, check.margin()));
        out.text("verdict", check.verdict().map(ChecksJson::word).orElse("pass"));
        out.text("source", check.limits().source());
    }

    private void finding(Finding finding) throws IOException {
        out.text("level", word(finding.level()));
        out.text("code", finding.code().name());
        out.text("where", finding.where().text());
        out.text("expected", finding.expected());
        out.text("found", finding.found());
        out.texts("hints", finding.hints());
    }

    private static String word(Level level) {
        return switch (level) {
            case STOP -> "stop";
            case WARN -> "warn";
            case NOTE -> "note";
        };
    }
}
