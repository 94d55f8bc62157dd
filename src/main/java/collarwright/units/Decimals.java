package collarwright.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Prints numbers with fixed decimals, the same under every locale: a dot, a digit before it, no exponent, no −0. */
public final class Decimals {

    private Decimals() {}

    /**
     * Prints a number with a fixed count of decimals.
     *
     * @param value a finite number
     * @param decimals digits after the point, 0 or more
     * @return the number rounded half away from zero, such as {@code -0.250}; a value that rounds to zero has no sign
     * @throws IllegalArgumentException if the value is NaN or infinite
     */
    public static String fixed(double value, int decimals) {
        BigDecimal rounded = exact(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.toPlainString();
    }

    /**
     * Prints a number with at most a count of decimals and no trailing zeros.
     *
     * @param value a finite number
     * @param decimals most digits after the point, 0 or more
     * @return the number rounded half away from zero, such as {@code 49.2}
     * @throws IllegalArgumentException if the value is NaN or infinite
     */
    public static String trimmed(double value, int decimals) {
        BigDecimal rounded = exact(value).setScale(decimals, RoundingMode.HALF_UP);
        if (rounded.signum() == 0) {
            return "0";
        }
        BigDecimal bare = rounded.stripTrailingZeros();
        return bare.scale() < 0 ? bare.setScale(0).toPlainString() : bare.toPlainString();
    }

    // The shortest decimal that is this double, so that 0.125 and 2.675 round as a person reads them.
    private static BigDecimal exact(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("not a finite number: " + value);
        }
        return new BigDecimal(Double.toString(value));
    }
}
