package collarwright.rehearsal;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Takes a program's text apart into blocks of words.
 *
 * <p>A word is a letter with a decimal number; anything else that is not a comment in parentheses is a fault: controls
 * read {@code X--1} and the like each in their own way.
 *
 * @param blocks lines with words, in order
 * @param faults what could not be read
 */
record BlockReader(List<Block> blocks, List<Fault> faults) {

    private static final Pattern WORD = Pattern.compile("([A-Z])([+-]?(?:\\d+\\.?\\d*|\\.\\d+))");

    private static final Pattern COMMENT = Pattern.compile("\\(([^()]*)\\)");

    BlockReader {
        blocks = List.copyOf(blocks);
        faults = List.copyOf(faults);
    }

    static BlockReader read(String text) {
        List<Block> blocks = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        List<String> comments = new ArrayList<>();
        int line = 0;
        for (String raw : text.split("\n", -1)) {
            line++;
            String code = raw.replaceAll("\\([^()]*\\)", " ").replace('\r', ' ').strip();
            if (!code.isEmpty() && !code.equals("%")) {
                blocks.add(new Block(line, words(code, line, faults), comments));
                comments.clear();
            } else {
                comment(raw, comments);
            }
        }
        return new BlockReader(blocks, faults);
    }

    /** A line that begins with two dots goes on with the comment before it. */
    private static void comment(String raw, List<String> comments) {
        Matcher matcher = COMMENT.matcher(raw.strip());
        if (!matcher.matches()) {
            return;
        }
        String text = matcher.group(1);
        if (text.startsWith(".. ") && !comments.isEmpty()) {
            comments.add(comments.remove(comments.size() - 1) + text.substring(2));
        } else {
            comments.add(text);
        }
    }

    private static List<Word> words(String code, int line, List<Fault> faults) {
        List<Word> words = new ArrayList<>();
        Matcher matcher = WORD.matcher(code);
        int at = 0;
        while (at < code.length()) {
            if (code.charAt(at) == ' ') {
                at++;
            } else if (matcher.find(at) && matcher.start() == at) {
                String number = matcher.group(2);
                words.add(new Word(matcher.group(1).charAt(0), Double.parseDouble(number), number));
                at = matcher.end();
            } else {
                faults.add(new Fault(line, "letters with a number each, such as X12.500", code.substring(at)));
                return words;
            }
        }
        return words;
    }
}
