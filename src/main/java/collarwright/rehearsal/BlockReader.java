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
            String code = withoutComments(raw).replace('\r', ' ').strip();
            if (!code.isEmpty() && !code.equals("%")) {
                blocks.add(new Block(line, words(code, line, faults), comments));
                comments.clear();
            } else {
                comment(raw, comments);
            }
        }
        return new BlockReader(blocks, faults);
    }

    private static String withoutComments(String raw) {
        return raw.indexOf('(') < 0 ? raw : COMMENT.matcher(raw).replaceAll(" ");
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
        int at = 0;
        while (at < code.length()) {
            char letter = code.charAt(at);
            if (letter == ' ') {
                at++;
                continue;
            }
            int end = letter >= 'A' && letter <= 'Z' ? number(code, at + 1) : at;
            if (end <= at) {
                faults.add(new Fault(line, "letters with a number each, such as X12.500", code.substring(at)));
                return words;
            }
            String number = code.substring(at + 1, end);
            words.add(new Word(letter, Double.parseDouble(number), number));
            at = end;
        }
        return words;
    }

    /** Where a number ends that begins at a place: a sign or none, digits with a point or none among them; -1 for none. */
    private static int number(String code, int from) {
        boolean signed = from < code.length() && "+-".indexOf(code.charAt(from)) >= 0;
        int start = signed ? from + 1 : from;
        int end = digits(code, start);
        int count = end - start;
        if (end < code.length() && code.charAt(end) == '.') {
            int behind = digits(code, end + 1);
            count += behind - end - 1;
            end = behind;
        }
        return count > 0 ? end : -1;
    }

    /** Where the digits that begin at a place end; the place itself for none. */
    static int digits(String code, int from) {
        int at = from;
        while (at < code.length() && code.charAt(at) >= '0' && code.charAt(at) <= '9') {
            at++;
        }
        return at;
    }
}
