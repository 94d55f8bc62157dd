package collarwright.machining;

import collarwright.units.Decimals;

/** Lengths and speeds as shop people read them, both units side by side. */
final class Sizes {

    private Sizes() {}

    /** Both units, such as {@code 12.50 mm (0.492 in)}. */
    static String both(double length) {
        return Decimals.fixed(length, 2) + " mm (" + Decimals.fixed(length / 25.4, 3) + " in)";
    }

    /** The program's unit only, such as {@code 0.492 in}. */
    static String in(ProgramUnits units, double length) {
        int decimals = units == ProgramUnits.INCH ? 3 : 2;
        return Decimals.fixed(length / units.millimetres(), decimals) + " " + units.symbol();
    }

    /** Whole turns a minute. */
    static String rpm(double rpm) {
        return Decimals.fixed(rpm, 0);
    }

    /** Minutes and seconds, rounded up to whole seconds. */
    static String time(double seconds) {
        long whole = (long) StrictMath.ceil(seconds);
        return whole < 60 ? whole + " s" : whole / 60 + " min " + whole % 60 + " s";
    }
}
