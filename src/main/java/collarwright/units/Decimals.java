package collarwright.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Prints numbers with fixed decimals, the same under every locale: a dot, a digit before it, no exponent, no −0. */
public final class Decimals {

    /** Below it a double and its shortest decimal, scaled by a power of ten, agree within a tenth of {@link #NEAR_TIE}. */
    private static final double PLAIN = 1e12;

    private static final double NEAR_TIE = 2e-3;

    /** With no more decimals the power of ten is exact. */
    private static final int MOST_PLAIN_DECIMALS = 15;

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
        double scaled = StrictMath.abs(value) * powerOfTen(decimals);
        if (decimals <= MOST_PLAIN_DECIMALS && scaled < PLAIN) {
            long whole = (long) scaled;
            double rest = scaled - whole;
            if (StrictMath.abs(rest - 0.5) > NEAR_TIE) {
                return plain(value < 0, rest < 0.5 ? whole : whole + 1, decimals);
            }
        }
        // Large, or so near to a tie that only the exact decimal tells which way it goes.
        return exact(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
    }

    private static double powerOfTen(int decimals) {
        double power = 1;
        for (int i = 0; i < decimals; i++) {
            power *= 10;
        }
        return power;
    }

    private static String plain(boolean negative, long scaled, int decimals) {
        String digits = Long.toString(scaled);
        StringBuilder text = new StringBuilder(digits.length() + decimals + 3);
        if (negative && scaled > 0) {
            text.append('-');
        }
        int wholeDigits = digits.length() - decimals;
        if (wholeDigits <= 0) {
            text.append('0');
        } else {
            text.append(digits, 0, wholeDigits);
        }
        if (decimals > 0) {
            text.append('.');
            for (int i = wholeDigits; i < 0; i++) {
                text.append('0');
            }
            text.append(digits, StrictMath.max(wholeDigits, 0), digits.length());
        }
        return text.toString();
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
        String text = fixed(value, decimals);
        if (decimals == 0) {
            return text;
        }
        int end = text.length();
        while (text.charAt(end - 1) == '0') {
            end--;
        }
        return text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
    }

    // The shortest decimal that is this double, so that 0.125 and 2.675 round as a person reads them.
    private static BigDecimal exact(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("not a finite number: " + value);
        }
        return new BigDecimal(Double.toString(value));
    }
}
