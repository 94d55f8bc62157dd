package collarwright.rehearsal;

import collarwright.machining.Machine;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Holds the letters of a program against what controls can read: line by line, before any meaning. */
final class TextRules {

    private static final Pattern ONE_COMMENT = Pattern.compile("[^()]*(?:\\([^()]*\\))?[^()]*");
    private static final Pattern COMMENT = Pattern.compile("\\(([^()]*)\\)");
    private static final Pattern PROGRAM = Pattern.compile("O\\d{4}");
    /** Some controls act on comments that begin like this. */
    private static final Pattern ACTIVE =
            Pattern.compile("(?i)\\s*(MSG|DEBUG|PRINT|LOG|LOGOPEN|LOGCLOSE|PROBE\\w*)\\b.*");

    private final Machine.Post post;
    private final List<Fault> faults = new ArrayList<>();
    private int lastNumber;

    private TextRules(Machine.Post post) {
        this.post = post;
    }

    static List<Fault> check(String text, Machine.Post post) {
        TextRules rules = new TextRules(post);
        rules.lines(text);
        return List.copyOf(rules.faults);
    }

    private void lines(String text) {
        String[] lines = text.split("\n", -1);
        if (!lines[lines.length - 1].isEmpty()) {
            fault(lines.length, "a line end after the last line", "none");
        }
        int count = lines[lines.length - 1].isEmpty() ? lines.length - 1 : lines.length;
        int program = post.layout().percent() ? 1 : 0;
        if (post.layout().habits().programNumber() > 0 && !(program < count && lines[program].startsWith("O"))) {
            fault(program + 1, "an O number of four digits on the first line of words", "none");
        }
        for (int i = 0; i < count; i++) {
            boolean edge = i == 0 || i == count - 1;
            line(i + 1, withoutReturn(i + 1, lines[i]), edge);
        }
    }

    private String withoutReturn(int number, String line) {
        boolean crlf = line.endsWith("\r");
        if (crlf != post.layout().crlf()) {
            fault(number, post.layout().crlf() ? "CR LF at the end" : "LF at the end", crlf ? "CR LF" : "LF");
        }
        return crlf ? line.substring(0, line.length() - 1) : line;
    }

    private void line(int number, String line, boolean edge) {
        if (line.isBlank()) {
            fault(number, "no blank line", "a blank line");
            return;
        }
        if (line.length() > post.lineLength()) {
            fault(number, post.lineLength() + " characters at most", line.length() + " characters");
        }
        if (!plain(line)) {
            fault(number, "plain letters, digits and signs (ASCII)", "another character");
        }
        boolean percent = line.equals("%");
        if (percent != (edge && post.layout().percent())) {
            fault(number, post.layout().percent() ? "% on the first and the last line only" : "no % sign", line);
        }
        if (percent) {
            return;
        }
        if (line.indexOf('(') < 0 && line.indexOf(')') < 0) {
            code(number, line.strip());
            return;
        }
        if (!ONE_COMMENT.matcher(line).matches()) {
            fault(number, "one comment a line at most, no brackets in it", line);
            return;
        }
        Matcher comment = COMMENT.matcher(line);
        if (comment.find()) {
            comment(number, comment.group(1));
        }
        code(number, comment.replaceAll("").strip());
    }

    private static boolean plain(String line) {
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c < 32 || c >= 127) {
                return false;
            }
        }
        return true;
    }

    private void comment(int number, String comment) {
        if (comment.chars().anyMatch(c -> "[]{}%;!?~$#@^`\\|<>\"&*".indexOf(c) >= 0)) {
            fault(number, "no sign in a comment that a control could act on", comment);
        }
        if (ACTIVE.matcher(comment).matches()) {
            fault(number, "no comment that a control acts on", comment);
        }
    }

    private void code(int number, String code) {
        if (code.isEmpty()) {
            return;
        }
        String[] words = code.split(" ", -1);
        for (String word : words) {
            if (!oneWord(word)) {
                fault(number, "capital letters with their numbers, one blank between words", code);
                return;
            }
        }
        for (int i = 0; i < words.length; i++) {
            number(number, words[i].charAt(0), words[i].substring(1), i == 0);
        }
        int step = post.layout().numberStep();
        boolean program = code.charAt(0) == 'O';
        if (program
                        != (number == (post.layout().percent() ? 2 : 1)
                                && post.layout().habits().programNumber() > 0)
                || (program && !PROGRAM.matcher(code).matches())) {
            fault(
                    number,
                    "an O number of four digits alone on the first line of words, where the profile has one",
                    code);
        }
        if (step > 0 && code.charAt(0) != 'N' && !program) {
            fault(number, "an N number at the front", code);
        }
    }

    /** A capital letter, and no other in what follows. */
    private static boolean oneWord(String word) {
        for (int i = 0; i < word.length(); i++) {
            char c = word.charAt(i);
            if ((c >= 'A' && c <= 'Z') != (i == 0)) {
                return false;
            }
        }
        return !word.isEmpty();
    }

    /** Digits, a point, digits; a minus may stand in front. */
    private static boolean real(String number) {
        int from = number.startsWith("-") ? 1 : 0;
        int point = BlockReader.digits(number, from);
        return point > from
                && point < number.length() - 1
                && number.charAt(point) == '.'
                && BlockReader.digits(number, point + 1) == number.length();
    }

    private static boolean whole(String number) {
        return !number.isEmpty() && BlockReader.digits(number, 0) == number.length();
    }

    private static boolean minusZero(String real) {
        return real.startsWith("-") && real.chars().allMatch(c -> "-0.".indexOf(c) >= 0);
    }

    private void number(int line, char letter, String number, boolean first) {
        // Where P counts milliseconds, controls take a whole number only: common practice, no source.
        boolean whole = letter == 'P' && post.layout().dwellMilliseconds();
        if (!whole && "XYZAFPRQIJ".indexOf(letter) >= 0) {
            if (!real(number)) {
                fault(line, letter + " with a digit before and after a point", letter + number);
            } else if (minusZero(number)) {
                fault(line, letter + " without minus zero", letter + number);
            }
        } else if (!whole(number) || number.length() > mostDigits(letter)) {
            fault(line, letter + " with a whole number, " + mostDigits(letter) + " digits at most", letter + number);
        } else if (letter == 'N') {
            sequence(line, Integer.parseInt(number), first);
        }
    }

    /** Line numbers end at N99999. Source: NISTIR 6556, section 3.3.1 (from memory); the rest our choice, no source. */
    private static int mostDigits(char letter) {
        return letter == 'N' ? 5 : 6;
    }

    private void sequence(int line, int number, boolean first) {
        if (!first || post.layout().numberStep() == 0 || number <= lastNumber) {
            fault(line, "N numbers only where the profile has them, in front and rising", "N" + number);
        }
        lastNumber = number;
    }

    private void fault(int line, String expected, String found) {
        faults.add(new Fault(line, expected, found));
    }
}
