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
        if (key.isEmpty() || key.charAt(0) != letter) {
            return false;
        }
        boolean numbered = letter == 'G' || letter == 'M';
        return numbered ? key.length() == number.length() + 1 && key.startsWith(number, 1) : key.length() == 1;
    }

    @Override
    public String toString() {
        return letter + number;
    }
}
