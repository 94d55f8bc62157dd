package collarwright.machining;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Puts any text in the plain letters that a machine's control can show.
 *
 * <p>Latin letters lose their accents, Greek and Cyrillic letters are written with Latin ones, signs that a control may
 * take for commands give way to harmless ones, and what has no plain letter becomes {@code _}.
 */
public final class PlainText {

    private static final Map<Integer, String> LETTERS = letters();

    private PlainText() {}

    /**
     * Writes a text with printable ASCII characters only.
     *
     * @param text any text
     * @return the text in ASCII 32 to 126, blanks run together, ends trimmed
     */
    public static String ascii(String text) {
        StringBuilder out = new StringBuilder();
        String composed = Normalizer.normalize(text, Normalizer.Form.NFC);
        composed.codePoints().forEach(c -> out.append(plain(c)));
        return out.toString().replaceAll(" +", " ").strip();
    }

    /**
     * Writes a text so that it can stand in a program's comment: no brackets, and none of the signs that controls act
     * on even there ({@code % ; ! ? ~ $} and the like).
     *
     * @param text any text
     * @return plain letters, digits and harmless signs
     */
    public static String comment(String text) {
        StringBuilder out = new StringBuilder();
        for (char c : ascii(text).toCharArray()) {
            out.append(harmless(c));
        }
        return out.toString();
    }

    /**
     * Breaks a comment into lines at blanks; a word longer than a line is cut.
     *
     * @param text any text
     * @param width most characters on a line, 10 or more
     * @return one line or more; lines after the first start with {@code ..}, so that no control takes their first word
     *     for a command
     */
    public static List<String> lines(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : comment(text).split(" ", -1)) {
            String rest = word;
            if (!line.isEmpty() && line.length() + 1 + rest.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
                line.append("..");
            }
            line.append(line.isEmpty() ? "" : " ");
            while (line.length() + rest.length() > width) {
                int cut = width - line.length();
                lines.add(line + rest.substring(0, cut));
                rest = rest.substring(cut);
                line.setLength(0);
                line.append(".. ");
            }
            line.append(rest);
        }
        lines.add(line.toString());
        return lines;
    }

    private static char harmless(char c) {
        return switch (c) {
            case '(', ')', '[', ']', '{', '}' -> '/';
            case '%' -> '/';
            case ';' -> ',';
            case '!', '?' -> '.';
            case '~', '$', '#', '@', '^', '`', '\\', '|', '<', '>', '"', '&', '*', '_' -> '-';
            default -> c;
        };
    }

    private static String plain(int codePoint) {
        if (codePoint >= 32 && codePoint < 127) {
            return Character.toString(codePoint);
        }
        if (Character.isWhitespace(codePoint) || Character.isSpaceChar(codePoint)) {
            return " ";
        }
        String known = LETTERS.get(codePoint);
        if (known != null) {
            return known;
        }
        StringBuilder bare = new StringBuilder();
        Normalizer.normalize(Character.toString(codePoint), Normalizer.Form.NFKD)
                .codePoints()
                .filter(c -> Character.getType(c) != Character.NON_SPACING_MARK)
                .forEach(c -> bare.append(c >= 32 && c < 127 ? Character.toString(c) : LETTERS.getOrDefault(c, "_")));
        return Character.getType(codePoint) == Character.NON_SPACING_MARK ? "" : bare.toString();
    }

    /** Greek and Cyrillic after ISO 843 and ISO 9 in their simplest form; from memory. */
    private static Map<Integer, String> letters() {
        Map<Integer, String> map = new HashMap<>();
        put(map, "ß æ œ ø ł đ ð þ ħ ı ŋ", "ss ae oe o l d d th h i n");
        put(map, "Æ Œ Ø Ł Đ Ð Þ Ħ ẞ Ŋ", "AE OE O L D D TH H SS N");
        put(map, "α β γ δ ε ζ η θ ι κ λ μ", "a v g d e z i th i k l m");
        put(map, "ν ξ ο π ρ σ ς τ υ φ χ ψ ω", "n x o p r s s t y f ch ps o");
        put(map, "Α Β Γ Δ Ε Ζ Η Θ Ι Κ Λ Μ", "A V G D E Z I TH I K L M");
        put(map, "Ν Ξ Ο Π Ρ Σ Τ Υ Φ Χ Ψ Ω", "N X O P R S T Y F CH PS O");
        put(map, "а б в г д е ё ж з и й к л м н о", "a b v g d e e zh z i i k l m n o");
        put(map, "п р с т у ф х ц ч ш щ ы э ю я і", "p r s t u f kh ts ch sh shch y e yu ya i");
        put(map, "А Б В Г Д Е Ё Ж З И Й К Л М Н О", "A B V G D E E ZH Z I I K L M N O");
        put(map, "П Р С Т У Ф Х Ц Ч Ш Щ Ы Э Ю Я І", "P R S T U F KH TS CH SH SHCH Y E YU YA I");
        put(map, "– — − ’ ‘ “ ” „ × ÷ · … √ µ", "- - - ' ' ' ' ' x / . ... sqrt u");
        map.put((int) 'ь', "");
        map.put((int) 'ъ', "");
        map.put((int) 'Ь', "");
        map.put((int) 'Ъ', "");
        map.put((int) '°', " deg");
        map.put((int) '≤', "<=");
        map.put((int) '≥', ">=");
        return Map.copyOf(map);
    }

    private static void put(Map<Integer, String> map, String from, String to) {
        String[] signs = from.split(" ", -1);
        String[] plain = to.split(" ", -1);
        if (signs.length != plain.length) {
            throw new IllegalStateException(from);
        }
        for (int i = 0; i < signs.length; i++) {
            map.put(signs[i].codePointAt(0), plain[i]);
        }
    }
}
