package collarwright.units;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The units that a length may be written in. */
public enum LengthUnit {
    /** Millimetre. */
    MM("mm", 10, "millimetre millimetres millimeter millimeters"),
    /** Centimetre. */
    CM("cm", 100, "centimetre centimetres centimeter centimeters"),
    /** Metre. */
    M("m", 10_000, "metre metres meter meters"),
    /** Inch, 25.4 mm exactly. */
    IN("in", 254, "\" inch inches"),
    /** Foot, 12 inches. */
    FT("ft", 3048, "' foot feet");

    private final String symbol;
    private final int tenths;
    private final String names;

    /**
     * A unit.
     *
     * @param symbol its short name
     * @param tenths its size in tenths of a millimetre
     * @param names other names, with blanks between
     */
    LengthUnit(String symbol, int tenths, String names) {
        this.symbol = symbol;
        this.tenths = tenths;
        this.names = names;
    }

    /**
     * Returns its short name.
     *
     * @return such as {@code mm}
     */
    public String symbol() {
        return symbol;
    }

    /**
     * Returns its size.
     *
     * @return millimetres in one unit, exactly
     */
    public Ratio millimetres() {
        return Ratio.of(tenths, 10);
    }

    /**
     * Tells whether it is an inch or a foot.
     *
     * @return false for metric units
     */
    public boolean imperial() {
        return this == IN || this == FT;
    }

    /**
     * Finds a unit by what a person writes.
     *
     * @param name symbol or name, capitals or not, a full stop after it or not
     * @return the unit, or empty
     */
    public static Optional<LengthUnit> parse(String name) {
        String plain = name.toLowerCase(Locale.ROOT);
        String bare = plain.endsWith(".") ? plain.substring(0, plain.length() - 1) : plain;
        return Stream.of(values())
                .filter(u -> u.symbol.equals(bare) || u.names().contains(bare))
                .findFirst();
    }

    /**
     * Lists every name that a unit may be written with.
     *
     * @return symbols first, then the long names
     */
    public static List<String> allNames() {
        return Stream.concat(
                        Stream.of(values()).map(LengthUnit::symbol),
                        Stream.of(values()).flatMap(u -> u.names().stream()))
                .toList();
    }

    private List<String> names() {
        return List.of(names.split(" ", -1));
    }
}
