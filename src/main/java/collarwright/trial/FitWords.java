package collarwright.trial;

import collarwright.geometry.Interval;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/** Says in plain words what the rows of a trial piece can tell and what they cannot. */
public final class FitWords {

    /** From here on two unknowns count as one. Our choice, no source. */
    static final double TOGETHER = 0.9;

    /** A bearing wall whose limits are wider than this share of the wall is badly known. Our choice, no source. */
    static final double WIDE = 0.3;

    /** From here on the holes differ among themselves. Our choice, no source: chance alone comes to it about once in 50. */
    static final double UNEVEN = 4;

    private FitWords() {}

    /**
     * Says what a fit is worth.
     *
     * @param fit a fit
     * @return whole sentences, at least one
     */
    public static List<String> of(TrialFit fit) {
        List<String> words = new ArrayList<>();
        bearing(fit, words);
        if (!fit.oversize().given()) {
            words.add("Oversize: " + limits(fit.oversize())
                    + (holdsZero(fit.oversize().value()) ? "; none at all is within the limits." : "."));
        } else if (fit.rows().stream().allMatch(TrialRow::sizeMeasured)) {
            words.add(measured(fit.oversize().value()));
        }
        if (!fit.almost().isEmpty()) {
            together(fit, words);
        }
        if (!fit.byHoles()) {
            words.add(
                    "The limits hold only if all holes come out alike: there are too few holes, or each was read but once."
                            + " Read " + (fit.unknowns() + 2)
                            + " holes or more, three times each, and they count on holes that"
                            + " differ.");
        }
        if (fit.byHoles()) {
            words.add(
                    "The limits allow for holes that differ among themselves: three readings in each cannot tell that they do"
                            + " not, so where they come out all alike the limits hold more often, 97 to 98 % of the time.");
        }
        if (fit.unevenness().orElse(0) > UNEVEN) {
            words.add("The holes differ more than the readings in one hole do (mean squares "
                    + Decimals.fixed(fit.unevenness().orElseThrow(), 1)
                    + " to 1), so "
                    + (fit.byHoles() ? "the limits are as wide as that asks" : "the limits are too narrow")
                    + ": measure the holes and give as-drilled-mm, and look for a hole that is out of round.");
        }
        return words;
    }

    private static String measured(Interval shown) {
        String told = "Oversize: every hole was measured, so the angles say nothing about it";
        return shown.min() < shown.max() || shown.nominal() != 0
                ? told + "; the holes came out " + mm(shown.nominal()) + " wider than their cutters, between "
                        + mm(shown.min()) + " and " + mm(shown.max())
                        + ": that is the oversize, with what the holes showed as its limits."
                : told
                        + ", and no row tells which size was given for its cutter: give the measured sizes as as-drilled in"
                        + " [drilling].";
    }

    private static void bearing(TrialFit fit, List<String> words) {
        Estimate bearing = fit.bearing();
        if (bearing.given()) {
            return;
        }
        words.add("Bearing wall: " + limits(bearing) + " of the "
                + mm(fit.collar().wall()) + " wall.");
        if (bearing.atBound()) {
            words.add(
                    bearing.value().nominal() > 0
                            ? "It stands at its most, the full wall."
                            : "It stands at its least, 0, as a single edge would: a thinner one cannot be, so the limit lies on one"
                                    + " side only.");
        }
        Interval value = bearing.value();
        if (value.max() - value.min() > WIDE * fit.collar().wall()) {
            words.add("That is wide, "
                    + percent((value.max() - value.min()) / fit.collar().wall())
                    + " of the wall: read more holes and more angles before you rely on it.");
        }
    }

    private static void together(TrialFit fit, List<String> words) {
        String correlation = "correlation " + Decimals.fixed(fit.correlation(), 2);
        boolean alike = StrictMath.abs(fit.correlation()) > TOGETHER
                || fit.bearing().standardError() == Double.POSITIVE_INFINITY;
        if (!alike) {
            words.add("These rows tell bearing wall and oversize apart (" + correlation + ").");
            return;
        }
        words.add("These rows fix bearing wall and oversize together, not each of them (" + correlation + ").");
        List<String> others = fit.almost().stream()
                .filter(o -> StrictMath.abs(o.bearing() - fit.bearing().value().nominal()) > 0.005)
                .map(o -> "a bearing wall of " + mm(o.bearing()) + " with an oversize of " + mm(o.oversize()) + " (rms "
                        + degrees(o.rms()) + ")")
                .toList();
        if (!others.isEmpty()) {
            words.add("Almost as good as the best (rms " + degrees(fit.rms()) + "): " + String.join(", and ", others)
                    + ".");
        }
        words.add("To tell them apart, measure the holes themselves with a caliper or pins and give as-drilled-mm.");
    }

    private static boolean holdsZero(Interval value) {
        return value.min() <= 0 && value.max() >= 0;
    }

    private static String limits(Estimate estimate) {
        Interval value = estimate.value();
        return mm(value.nominal()) + ", with 95 % between " + mm(value.min()) + " and " + mm(value.max());
    }

    private static String percent(double share) {
        return Decimals.fixed(100 * share, 0) + " %";
    }

    private static String mm(double length) {
        return Decimals.fixed(length, 2) + " mm";
    }

    private static String degrees(double angle) {
        return Decimals.fixed(Angles.degrees(angle), 2) + "°";
    }
}
