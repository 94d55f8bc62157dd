package collarwright.rehearsal;

/**
 * A letter with its number.
 *
 * @param letter A to Z
 * @param value its number
 * @param number its number as it is written
 */
record Word(char letter, double value, String number) {

    /** G and M words with their number, such as {@code G81}; of others the letter. */
    String key() {
        return letter == 'G' || letter == 'M' ? letter + number : String.valueOf(letter);
    }

    boolean is(String key) {
        return key().equals(key);
    }

    @Override
    public String toString() {
        return letter + number;
    }
}
