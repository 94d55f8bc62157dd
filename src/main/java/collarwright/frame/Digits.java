package collarwright.frame;

import java.math.BigDecimal;
import java.math.MathContext;

/** Writes numbers with the fewest digits that read back exactly, the same on every Java. */
final class Digits {

    /** So many digits are tried first; idle zeros are left out. */
    private static final int SAFE = 15;

    private Digits() {}

    static String of(double number) {
        if (number == 0) {
            return "0";
        }
        BigDecimal exact = new BigDecimal(number);
        int digits = SAFE;
        while (exact.round(new MathContext(digits)).doubleValue() != number) {
            digits++;
        }
        return exact.round(new MathContext(digits)).stripTrailingZeros().toPlainString();
    }
}
