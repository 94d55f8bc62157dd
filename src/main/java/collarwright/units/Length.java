package collarwright.units;

import java.math.BigDecimal;

/**
 * A length as a person gave it, exactly: 1-15/16 in is 49.2125 mm, not the nearest of anything.
 *
 * @param millimetres its exact size; below 0 only for a position
 * @param unit the unit it was written in; for feet and inches the foot
 */
public record Length(Ratio millimetres, LengthUnit unit) {

    /** Whether a length of nothing may be written. */
    public enum Zero {
        /** The length is above 0. */
        REFUSED,
        /** The length may be 0. */
        ALLOWED,
        /** The length is a position: it may be 0 or lie below 0. */
        EITHER_SIDE
    }

    /** The longest length that is taken: a kilometre. Our choice: nothing in a hub shop is longer. */
    private static final Ratio LONGEST = Ratio.of(1_000_000, 1);
    /** The shortest length above 0 that is taken: a nanometre. */
    private static final Ratio SHORTEST = Ratio.of(1, 1_000_000);

    private static final BigDecimal SIXTY_FOUR = new BigDecimal(64);

    /**
     * Reads a length.
     *
     * @param text such as {@code 38 mm}, {@code 1-1/2 in}, {@code 1 15/16"}, {@code 2' 6"} or {@code 2.6 m}
     * @param bare the unit of a number without one
     * @param zero whether 0 may stand there
     * @return the length, or why it was refused
     */
    public static Reading<Length> parse(String text, LengthUnit bare, Zero zero) {
        return LengthText.parse(text, bare, zero).then(length -> length.inRange(zero, text));
    }

    /**
     * Takes a bare number as a length.
     *
     * @param number any double
     * @param unit its unit
     * @param zero whether 0 may stand there
     * @return the length, or why it was refused
     */
    public static Reading<Length> from(double number, LengthUnit unit, Zero zero) {
        if (!Double.isFinite(number)) {
            return Reading.refused(
                    Refusal.Fault.NOT_A_NUMBER, LengthText.expected(zero), Quoted.number(number), "write the number in digits");
        }
        // The shortest decimal that is this double: what the person wrote, up to 15 digits.
        BigDecimal written = new BigDecimal(Double.toString(number));
        Length length = new Length(Ratio.from(written).times(unit.millimetres()), unit);
        return length.inRange(zero, shortest(number, written) + " " + unit.symbol());
    }

    private static String shortest(double number, BigDecimal written) {
        boolean plain = number == 0 || (StrictMath.abs(number) < 1e15 && StrictMath.abs(number) >= 1e-9);
        return plain ? written.stripTrailingZeros().toPlainString() : Double.toString(number);
    }

    private Reading<Length> inRange(Zero zero, String text) {
        String expected = LengthText.expected(zero);
        Ratio size = millimetres.signum() < 0 ? millimetres.times(Ratio.of(-1, 1)) : millimetres;
        if (millimetres.signum() < 0 && zero != Zero.EITHER_SIDE) {
            return Reading.refused(
                    Refusal.Fault.OUT_OF_RANGE, expected, Quoted.bare(text) + ", below 0", "write it without the minus");
        }
        if (millimetres.signum() == 0) {
            return zero != Zero.REFUSED
                    ? Reading.of(this)
                    : Reading.refused(
                            Refusal.Fault.OUT_OF_RANGE, expected, Quoted.bare(text), "write the length that it has");
        }
        if (size.compareTo(LONGEST) > 0) {
            return Reading.refused(
                    Refusal.Fault.OUT_OF_RANGE,
                    expected + ", at most 1000 m",
                    Quoted.bare(text),
                    "check the unit and the number of zeros");
        }
        if (size.compareTo(SHORTEST) < 0) {
            return Reading.refused(
                    Refusal.Fault.OUT_OF_RANGE,
                    expected + ", at least 0.000001 mm",
                    Quoted.bare(text),
                    "check the unit and the number of zeros");
        }
        return Reading.of(this);
    }

    /**
     * Returns the length to count with.
     *
     * @return mm, rounded once
     */
    public double mm() {
        return millimetres.value();
    }

    /**
     * Shows the length in both systems, the metric first.
     *
     * @return such as {@code 49.2125 mm (1-15/16 in)}; inches in 64ths where that is exact, else with four decimals
     */
    public String text() {
        return Decimals.trimmed(mm(), 4) + " mm (" + inches() + ")";
    }

    /**
     * Shows the length in the system it was written in, as it would be stamped on a tool.
     *
     * @return such as {@code 44 mm} or {@code 1-3/4 in}
     */
    public String stamped() {
        return unit.imperial() ? inches() : Decimals.trimmed(mm(), 4) + " mm";
    }

    private String inches() {
        Ratio inches = millimetres.over(LengthUnit.IN.millimetres());
        boolean even = SIXTY_FOUR.toBigInteger().mod(inches.denominator()).signum() == 0;
        return even
                ? InchFractions.text(inches.times(Ratio.of(64, 1)).numerator().longValueExact(), 64)
                : Decimals.trimmed(inches.value(), 4) + " in";
    }
}
