package collarwright.units;

/** Shows lengths in inches as a rule or a caliper has them: in fractions with the error they make, and in decimals. */
public final class InchFractions {

    private InchFractions() {}

    /**
     * A length rounded to a fraction of an inch.
     *
     * @param text such as {@code 1-15/16 in}
     * @param error the rounded length less the true one, mm
     */
    public record Shown(String text, double error) {

        /**
         * Shows the fraction and its error.
         *
         * @return such as {@code 1-15/16 in (+0.01 mm)}; the error always has its sign
         */
        public String withError() {
            String amount = Decimals.fixed(error, 2);
            return text + " (" + (amount.startsWith("-") ? "" : "+") + amount + " mm)";
        }
    }

    /**
     * Rounds a length to a fraction of an inch.
     *
     * @param length mm
     * @param parts parts of an inch, a power of 2 from 2 to 64
     * @return the nearest fraction in lowest terms; halfway goes away from 0
     */
    public static Shown nearest(double length, int parts) {
        if (parts < 2 || parts > 64 || Integer.bitCount(parts) != 1) {
            throw new IllegalArgumentException("not a fraction of an inch: 1/" + parts);
        }
        double exact = StrictMath.abs(length) / 25.4 * parts;
        long count = (long) StrictMath.floor(exact + 0.5);
        long signed = length < 0 ? -count : count;
        return new Shown(text(signed, parts), signed * 25.4 / parts - length);
    }

    /**
     * Shows a length in decimal inches.
     *
     * @param length mm
     * @param decimals digits after the point
     * @return such as {@code 1.938 in}
     */
    public static String decimal(double length, int decimals) {
        return Decimals.fixed(length / 25.4, decimals) + " in";
    }

    /**
     * Writes a count of parts as inches.
     *
     * @param count how many parts
     * @param parts parts of an inch, a power of 2
     * @return such as {@code 1-15/16 in}, {@code 3/4 in}, {@code 2 in}, {@code 0 in}
     */
    static String text(long count, int parts) {
        long size = StrictMath.abs(count);
        long whole = size / parts;
        long above = size % parts;
        String sign = count < 0 ? "-" : "";
        if (above == 0) {
            return sign + whole + " in";
        }
        long shared = Long.lowestOneBit(above);
        String fraction = above / shared + "/" + parts / shared;
        return sign + (whole == 0 ? fraction : whole + "-" + fraction) + " in";
    }
}
