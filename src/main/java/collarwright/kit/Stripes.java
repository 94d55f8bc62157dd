package collarwright.kit;

/**
 * The stripes that tell a strut type without colour: type 1, the shortest, has one. A wide stripe counts for five, a narrow
 * one for one, the wide ones first. Our choice, no source.
 *
 * @param number place of the strut type in the order of length, from 1
 */
public record Stripes(int number) {

    /** Types beyond this have no stripes: nobody counts so many. Our choice, no source. */
    public static final int MOST = 24;

    /** Checks the number. */
    public Stripes {
        if (number < 1) {
            throw new IllegalArgumentException("stripes count from 1");
        }
    }

    /**
     * Returns the stripes of a strut type.
     *
     * @param strutType index of the type, shortest first, from 0
     * @return its stripes
     */
    public static Stripes of(int strutType) {
        return new Stripes(strutType + 1);
    }

    /**
     * Tells whether the type has stripes.
     *
     * @return false beyond {@link #MOST}
     */
    public boolean painted() {
        return number <= MOST;
    }

    /**
     * Counts wide stripes.
     *
     * @return 0 or more
     */
    public int wide() {
        return painted() ? number / 5 : 0;
    }

    /**
     * Counts narrow stripes.
     *
     * @return 0 to 4
     */
    public int narrow() {
        return painted() ? number % 5 : 0;
    }

    /**
     * Says it.
     *
     * @return such as {@code 2 narrow}, {@code 1 wide} or {@code 1 wide + 2 narrow}
     */
    public String words() {
        if (!painted()) {
            return "none";
        }
        String wide = wide() > 0 ? wide() + " wide" : "";
        String narrow = narrow() > 0 ? narrow() + " narrow" : "";
        return wide.isEmpty() || narrow.isEmpty() ? wide + narrow : wide + " + " + narrow;
    }
}
