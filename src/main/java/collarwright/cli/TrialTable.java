package collarwright.cli;

import collarwright.geometry.Interval;
import collarwright.trial.Estimate;
import collarwright.trial.FitWords;
import collarwright.trial.TrialFit;
import collarwright.trial.TrialRow;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import collarwright.units.InchesFirst;

/** Prints a fit for a person at a terminal. */
final class TrialTable {

    private static final int NAMES = 20;

    private TrialTable() {}

    static String print(TrialFit fit, int blank, boolean inches) {
        String head = head(fit, blank);
        StringBuilder text = new StringBuilder(inches ? InchesFirst.of(head) : head);
        text.append('\n');
        rows(text, fit, inches);
        text.append('\n');
        FitWords.of(fit)
                .forEach(sentence -> text.append(inches ? InchesFirst.of(sentence) : sentence)
                        .append('\n'));
        return text.toString();
    }

    private static String head(TrialFit fit, int blank) {
        StringBuilder text = new StringBuilder();
        long holes = fit.rows().stream().mapToInt(TrialRow::hole).distinct().count();
        line(
                text,
                "readings",
                fit.rows().size() + " in " + holes + (holes == 1 ? " hole" : " holes")
                        + (blank > 0 ? "; " + blank + " lines without one" : ""));
        line(text, "bearing wall", estimate(fit.bearing()));
        line(text, "oversize", shown(fit) ? shown(fit.oversize().value()) : estimate(fit.oversize()));
        if (!fit.almost().isEmpty()) {
            line(text, "correlation", Decimals.fixed(fit.correlation(), 2));
        }
        line(text, "off", degrees(fit.rms()) + " rms; a reading strays by " + degrees(fit.spread()));
        line(
                text,
                "limits",
                "by the scatter of the " + (fit.byHoles() ? "holes, " : "readings, ") + fit.freedom()
                        + (fit.freedom() == 1 ? " degree" : " degrees") + " of freedom");
        if (fit.byHoles()) {
            line(text, "holes", "differ by " + mm(fit.scatter()) + " among themselves, standard deviation");
        }
        return text.toString();
    }

    private static void rows(StringBuilder text, TrialFit fit, boolean inches) {
        int wide = 8;
        for (TrialRow row : fit.rows()) {
            wide = StrictMath.max(wide, row.cutter().length() + 2);
        }
        text.append("hole  ")
                .append(padded("cutter", wide))
                .append(inches ? "    size in   strut in" : "")
                .append("    size mm   strut mm   measured     fitted        off\n");
        for (TrialRow row : fit.rows()) {
            text.append(right(Integer.toString(row.hole()), 4))
                    .append("  ")
                    .append(padded(row.cutter(), wide))
                    .append(inches ? right(inch(row.size()), 11) + right(inch(row.strut()), 11) : "")
                    .append(right(Decimals.fixed(row.size(), 2) + (row.sizeMeasured() ? "*" : " "), 11))
                    .append(right(Decimals.fixed(row.strut(), 2), 11))
                    .append(right(degrees(row.angle()), 11))
                    .append(right(degrees(fit.fitted(row)), 11))
                    .append(right(signed(fit.off(row)), 11))
                    .append('\n');
        }
        if (fit.rows().stream().anyMatch(TrialRow::sizeMeasured)) {
            text.append("* measured: no oversize is added\n");
        }
    }

    private static boolean shown(TrialFit fit) {
        Interval value = fit.oversize().value();
        return fit.oversize().given()
                && fit.rows().stream().allMatch(TrialRow::sizeMeasured)
                && (value.min() < value.max() || value.nominal() != 0);
    }

    private static String shown(Interval value) {
        return mm(value.nominal()) + ", as the holes showed: " + mm(value.min()) + " to " + mm(value.max());
    }

    private static String estimate(Estimate estimate) {
        Interval value = estimate.value();
        if (estimate.given()) {
            return mm(value.nominal()) + ", given";
        }
        String error = estimate.standardError() == Double.POSITIVE_INFINITY
                ? "not to be told from the other"
                : "standard error " + Decimals.fixed(estimate.standardError(), 3) + " mm";
        return mm(value.nominal()) + ", 95 % " + mm(value.min()) + " to " + mm(value.max()) + ", " + error;
    }

    private static void line(StringBuilder text, String name, String value) {
        text.append(padded(name, NAMES)).append(value).append('\n');
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(StrictMath.max(0, width - text.length()));
    }

    private static String right(String text, int width) {
        return " ".repeat(StrictMath.max(0, width - text.length())) + text;
    }

    private static String inch(double length) {
        return Decimals.fixed(length / 25.4, 4);
    }

    private static String mm(double length) {
        return Decimals.fixed(length, 3) + " mm";
    }

    private static String degrees(double angle) {
        return Decimals.fixed(Angles.degrees(angle), 2) + "°";
    }

    private static String signed(double angle) {
        String shown = degrees(angle);
        return (shown.startsWith("-") ? "" : "+") + shown;
    }
}
