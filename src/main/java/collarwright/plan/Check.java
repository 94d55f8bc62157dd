package collarwright.plan;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One thing that was checked, with its value and its limits, whether it passed or not.
 *
 * @param code what was checked
 * @param where the part it was checked on
 * @param quantity whether the value is a length or an angle
 * @param sense whether the value has to be at least or at most its limits
 * @param value what came out
 * @param limits what it is held to
 * @param hints what to do where it fails, the best first
 */
public record Check(
        Code code, Where where, Quantity quantity, Sense sense, double value, Limits limits, List<String> hints) {

    /** Keeps the hints. */
    public Check {
        hints = List.copyOf(hints);
    }

    /** What kind of value is checked. */
    public enum Quantity {
        /** A length in mm. */
        LENGTH,
        /** An angle in rad, shown in degrees. */
        ANGLE
    }

    /** Which side of its limits a value has to be on. */
    public enum Sense {
        /** At least the limit. */
        AT_LEAST,
        /** At most the limit. */
        AT_MOST
    }

    /**
     * The limits of a check.
     *
     * @param stop beyond it the work stops; empty if nothing stops
     * @param warn beyond it the plan warns
     * @param source where the limits come from
     */
    public record Limits(OptionalDouble stop, double warn, String source) {}

    /**
     * Returns how far the value is on the right side of its warning limit.
     *
     * @return negative where it warns or stops
     */
    public double margin() {
        return sense == Sense.AT_LEAST ? value - limits.warn() : limits.warn() - value;
    }

    /**
     * Returns what comes of the check.
     *
     * @return STOP or WARN; empty where it passed
     */
    public Optional<Level> verdict() {
        if (limits.stop().isPresent() && beyond(limits.stop().getAsDouble())) {
            return Optional.of(Level.STOP);
        }
        return beyond(limits.warn()) ? Optional.of(Level.WARN) : Optional.empty();
    }

    // A value that misses its limit by less than a nanometre is on it.
    private boolean beyond(double limit) {
        return sense == Sense.AT_LEAST ? value < limit - 1e-9 : value > limit + 1e-9;
    }

    /**
     * Returns what a person has to know of it.
     *
     * @return the finding; empty where the check passed
     */
    public Optional<Finding> finding() {
        return verdict().map(level -> {
            double limit = level == Level.STOP ? limits.stop().orElseThrow() : limits.warn();
            String expected = (sense == Sense.AT_LEAST ? "at least " : "at most ") + print(limit);
            return new Finding(level, code, where, expected, print(value), hints);
        });
    }

    private String print(double number) {
        if (!Double.isFinite(number)) {
            return number > 0 ? "no limit" : "nothing left";
        }
        return quantity == Quantity.LENGTH
                ? Decimals.fixed(number, 2) + " mm"
                : Decimals.fixed(Angles.degrees(number), 2) + "°";
    }
}
