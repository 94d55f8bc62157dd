package collarwright.frame;

import com.fasterxml.jackson.core.io.NumberOutput;

/** Writes numbers with the fewest digits that read back exactly, the same on every Java. */
final class Digits {

    private Digits() {}

    static String of(double number) {
        return NumberOutput.toString(number + 0.0, true);
    }
}
