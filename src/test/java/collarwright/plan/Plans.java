package collarwright.plan;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.geometry.Interval;
import collarwright.stock.RoundStock;
import collarwright.testing.Jobs;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Plans of test jobs, and what was found in them. */
final class Plans {
    private static final Interval WALL = Interval.between(7.7, 8.1);

    private Plans() {}

    static Plan plan(Jobs jobs) {
        return Planner.plan(jobs.job(), List.of());
    }

    static RoundStock collar(double od) {
        return Jobs.pipe("pvc " + od, Interval.of(od), WALL);
    }

    static List<Finding> found(Plan plan, Code code) {
        return plan.findings().stream().filter(f -> f.code() == code).toList();
    }

    static Level worst(Plan plan, Code code) {
        return found(plan, code).stream()
                .map(Finding::level)
                .sorted()
                .findFirst()
                .orElse(null);
    }

    static double least(Plan plan, Code code) {
        return plan.checks().stream()
                .filter(c -> c.code() == code)
                .mapToDouble(Check::value)
                .min()
                .orElseThrow();
    }

    // The number after some words of the first hint that has them.
    static double hinted(Finding finding, String before) {
        Pattern number = Pattern.compile(Pattern.quote(before) + "(\\d+(?:\\.\\d+)?)");
        return finding.hints().stream()
                .map(number::matcher)
                .filter(Matcher::find)
                .mapToDouble(m -> Double.parseDouble(m.group(1)))
                .findFirst()
                .orElseThrow();
    }
}
