package collarwright.units;

/** Names for things that are numbered: letters that cannot be taken for digits, numbers or dates. */
public final class Ids {

    private static final String LETTERS = "ABCDEFGHJKLMNPRTUVWXY";

    private Ids() {}

    /**
     * Names the n-th thing of a kind.
     *
     * @param kind first letter, such as {@code 'H'} for hub types
     * @param index from 0
     * @return {@code HA, HB, … HY, HAA, HAB …}; after the first letter no I, O, Q, S or Z
     */
    public static String letters(char kind, int index) {
        StringBuilder tail = new StringBuilder();
        for (int rest = index; rest >= 0; rest = rest / LETTERS.length() - 1) {
            tail.insert(0, LETTERS.charAt(rest % LETTERS.length()));
        }
        return kind + tail.toString();
    }
}
