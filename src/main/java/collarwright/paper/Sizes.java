package collarwright.paper;

import collarwright.units.Decimals;
import collarwright.units.InchFractions;

/** Lengths as they stand in tables. */
final class Sizes {

    private Sizes() {}

    static String mm(double length) {
        return Decimals.fixed(length, 1) + " mm";
    }

    /** As exact as it is known. */
    static String exact(double length) {
        return Decimals.trimmed(length, 2) + " mm";
    }

    static String inches(double length) {
        return InchFractions.decimal(length, 3);
    }

    /** Both units, such as {@code 160.1 mm (6.303 in)}. */
    static String both(double length) {
        return exact(length) + " (" + inches(length) + ")";
    }
}
