package collarwright.units;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntPredicate;
import org.jspecify.annotations.Nullable;

/**
 * Says a text with the characters that are at hand: letters without their accents, Greek and Cyrillic in Latin letters,
 * and a visible {@code ?} for what cannot be said.
 *
 * <p>Cyrillic and Greek follow common practice for names on papers (no source); it is meant to be recognised, not to be
 * turned back.
 */
public final class PlainText {
    private static final int FRACTION_SLASH = 0x2044;
    private static final String CYRILLIC = "абвгдежзийклмнопрстуфхцчшщъыьэюяёєіїґў";
    private static final List<String> CYRILLIC_LATIN = List.of(
            "a", "b", "v", "g", "d", "e", "zh", "z", "i", "y", "k", "l", "m", "n", "o", "p", "r", "s", "t", "u", "f",
            "kh", "ts", "ch", "sh", "shch", "", "y", "", "e", "yu", "ya", "yo", "ye", "i", "yi", "g", "u");
    private static final String GREEK = "αβγδεζηθικλμνξοπρσςτυφχψω";
    private static final List<String> GREEK_LATIN = List.of(
            "a", "v", "g", "d", "e", "z", "i", "th", "i", "k", "l", "m", "n", "x", "o", "p", "r", "s", "s", "t", "y",
            "f", "ch", "ps", "o");
    private static final Map<Integer, String> OTHER = Map.ofEntries(
            Map.entry((int) 'ß', "ss"),
            Map.entry((int) 'æ', "ae"),
            Map.entry((int) 'œ', "oe"),
            Map.entry((int) 'ø', "o"),
            Map.entry((int) 'đ', "d"),
            Map.entry((int) 'ð', "d"),
            Map.entry((int) 'þ', "th"),
            Map.entry((int) 'ł', "l"),
            Map.entry((int) 'ı', "i"),
            Map.entry((int) 'ħ', "h"),
            Map.entry((int) 'ŋ', "n"),
            Map.entry((int) '÷', "/"),
            Map.entry((int) '√', "sqrt"),
            Map.entry((int) '≤', "<="),
            Map.entry((int) '≥', ">="),
            Map.entry((int) '‘', "'"),
            Map.entry((int) '’', "'"),
            Map.entry((int) '‚', "'"),
            Map.entry((int) '“', "\""),
            Map.entry((int) '”', "\""),
            Map.entry((int) '„', "\""),
            Map.entry((int) '«', "\""),
            Map.entry((int) '»', "\""),
            Map.entry((int) '–', "-"),
            Map.entry((int) '—', "-"),
            Map.entry((int) '−', "-"),
            Map.entry((int) '×', "x"),
            Map.entry((int) '·', "."),
            Map.entry((int) '°', " deg"),
            Map.entry((int) '′', "'"),
            Map.entry((int) '″', "\""));

    private PlainText() {}

    /**
     * Says a text in printable ASCII.
     *
     * @param text any text
     * @return one line of the characters 32 to 126, trimmed
     */
    public static String ascii(String text) {
        return of(text, c -> c >= 32 && c < 127);
    }

    /**
     * Says a text with the characters that are at hand.
     *
     * @param text any text; line breaks and tabs count as spaces
     * @param covered tells which characters are at hand; {@code ?} and the space are taken to be
     * @return one line, trimmed, of such characters only
     */
    public static String of(String text, IntPredicate covered) {
        StringBuilder out = new StringBuilder();
        Normalizer.normalize(text, Normalizer.Form.NFC).codePoints().forEach(c -> out.append(say(c, covered)));
        return out.toString().strip().replaceAll(" +", " ");
    }

    private static String say(int c, IntPredicate covered) {
        if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
            return " ";
        }
        if (Character.isISOControl(c) || Character.getType(c) == Character.FORMAT) {
            return "";
        }
        if (covered.test(c)) {
            return Character.toString(c);
        }
        String latin = latin(c);
        if (latin.codePoints().allMatch(covered)) {
            return latin;
        }
        return Character.getType(c) == Character.NON_SPACING_MARK ? "" : "?";
    }

    private static String latin(int c) {
        int lower = Character.toLowerCase(c);
        String said = OTHER.get(lower);
        if (said == null) {
            said = ofAlphabet(lower);
        }
        if (said == null) {
            return bare(c);
        }
        boolean capital = lower != c && !said.isEmpty();
        return capital ? said.substring(0, 1).toUpperCase(Locale.ROOT) + said.substring(1) : said;
    }

    private static @Nullable String ofAlphabet(int lower) {
        int cyrillic = CYRILLIC.indexOf(lower);
        if (cyrillic >= 0) {
            return CYRILLIC_LATIN.get(cyrillic);
        }
        int base = bare(lower).codePointAt(0);
        int greek = GREEK.indexOf(base);
        return greek >= 0 ? GREEK_LATIN.get(greek) : null;
    }

    // The letter without accents, a full-width or other special form as the plain one.
    private static String bare(int c) {
        String apart = Normalizer.normalize(Character.toString(c), Normalizer.Form.NFKD);
        StringBuilder kept = new StringBuilder();
        apart.codePoints()
                .filter(p -> Character.getType(p) != Character.NON_SPACING_MARK)
                .forEach(p -> kept.appendCodePoint(p == FRACTION_SLASH ? '/' : p));
        return kept.length() == 0 ? Character.toString(c) : kept.toString();
    }
}
