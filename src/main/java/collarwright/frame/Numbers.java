package collarwright.frame;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Reads numbers as general programs write them. */
final class Numbers {

    private Numbers() {}

    /** A decimal number; NaN and infinity as such, so that they can be refused with their place. */
    static OptionalDouble real(String text) {
        String lower = text.toLowerCase(java.util.Locale.ROOT);
        if (lower.matches("[+-]?(nan|inf|infinity)")) {
            return OptionalDouble.of(Double.NaN);
        }
        if (text.isEmpty() || !text.chars().allMatch(c -> (c >= '0' && c <= '9') || ".+-eE".indexOf(c) >= 0)) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(Double.parseDouble(text));
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }

    static OptionalInt whole(String text) {
        try {
            return OptionalInt.of(Integer.parseInt(text));
        } catch (NumberFormatException e) {
            return OptionalInt.empty();
        }
    }
}
