package collarwright.rehearsal;

import collarwright.machining.Machine;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A program as somebody's editor left it, put into the form in which our own programs are read.
 *
 * <p>What every control takes alike is no fault and is evened out: LF or CR LF, small letters for large ones outside
 * comments, more or fewer blanks between words, N numbers of up to five digits in front or none, blank lines. All else
 * stays as it is and is judged by the rules.
 *
 * <p>Source: Kramer, Proctor, Messina, The NIST RS274NGC Interpreter - Version 3, NISTIR 6556, 2000, section 3.3 (blanks,
 * small letters, blank lines and line numbers mean nothing).
 *
 * @param text the program in our form
 * @param numbers for each of its lines the line in the file, from 1
 * @param original the lines of the file, without their ends
 * @param faults what no control takes alike: a CR alone
 */
record EditedText(String text, List<Integer> numbers, List<String> original, List<Fault> faults) {

    private static final Pattern END = Pattern.compile("\\r\\n|\\n|\\r");
    private static final Pattern NUMBER = Pattern.compile("N\\d{1,5}(?![\\d.]) *");
    private static final Pattern WORD = Pattern.compile(" *([A-Z])");

    EditedText {
        numbers = List.copyOf(numbers);
        original = List.copyOf(original);
        faults = List.copyOf(faults);
    }

    static EditedText of(String raw, Machine.Post post) {
        List<String> original = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        Matcher end = END.matcher(raw);
        int at = 0;
        while (end.find()) {
            original.add(raw.substring(at, end.start()));
            if (end.group().equals("\r")) {
                faults.add(new Fault(original.size(), "LF or CR LF at the end of a line", "CR alone"));
            }
            at = end.end();
        }
        boolean open = at < raw.length();
        if (open) {
            original.add(raw.substring(at));
        }
        return of(original, open, faults, post.layout());
    }

    private static EditedText of(List<String> original, boolean open, List<Fault> faults, Machine.Layout layout) {
        StringBuilder text = new StringBuilder();
        List<Integer> numbers = new ArrayList<>();
        String end = layout.crlf() ? "\r\n" : "\n";
        int number = 0;
        for (int i = 0; i < original.size(); i++) {
            String line = evened(original.get(i));
            if (line.isEmpty()) {
                continue;
            }
            if (layout.numberStep() > 0 && "(%ON".indexOf(line.charAt(0)) < 0) {
                number += layout.numberStep();
                line = "N" + number + " " + line;
            }
            numbers.add(i + 1);
            text.append(line).append(open && i == original.size() - 1 ? "" : end);
        }
        if (numbers.isEmpty()) {
            numbers.add(1);
        }
        return new EditedText(text.toString(), numbers, original, faults);
    }

    /** One line with its words apart by one blank; comments stay letter by letter. */
    private static String evened(String line) {
        String bare = line.strip();
        int open = bare.indexOf('(');
        int close = bare.indexOf(')', open);
        if (open < 0) {
            return words(bare);
        }
        if (close < 0) {
            return bare;
        }
        String front = words(bare.substring(0, open));
        String back = evened(bare.substring(close + 1));
        return (front + " " + bare.substring(open, close + 1) + " " + back).strip();
    }

    private static String words(String code) {
        String large = code.strip().toUpperCase(Locale.ROOT);
        Matcher number = NUMBER.matcher(large);
        String bare = number.lookingAt() ? large.substring(number.end()) : large;
        return WORD.matcher(bare).replaceAll(" $1").strip();
    }

    /** The line of the file that a line of the text stands for. */
    int lineInFile(int line) {
        return numbers.get(StrictMath.min(line, numbers.size()) - 1);
    }

    /** The column of a word that begins with a letter, outside comments; 1 if the line has none. */
    int column(int lineInFile, String letters) {
        if (lineInFile > original.size() || letters.isEmpty()) {
            return 1;
        }
        String line = original.get(lineInFile - 1).toUpperCase(Locale.ROOT);
        int depth = 0;
        for (int i = 0; i < line.length(); i++) {
            depth += line.charAt(i) == '(' ? 1 : line.charAt(i) == ')' ? -1 : 0;
            if (depth == 0 && line.startsWith(letters, i)) {
                return line.codePointCount(0, i) + 1;
            }
        }
        return 1;
    }
}
