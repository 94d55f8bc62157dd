package collarwright.paper;

import collarwright.picture.Lettering;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Breaks text into lines: at blanks but not between a number and its unit, else after a hyphen or a slash, else anywhere. */
final class Wrapping {

    private static final Pattern BLANK =
            Pattern.compile("\\s+(?!(?:mm|in|m|ft|rpm|s|min|mm/min|in/min|%|×)(?![\\p{L}\\p{N}]))");

    private static final Pattern PIECES = Pattern.compile("(?<=[-/_])");

    private final Lettering letters;
    private final double size;

    Wrapping(Lettering letters, double size) {
        this.letters = letters;
        this.size = size;
    }

    double width(String text) {
        return letters.width(letters.visible(text), size);
    }

    /** The widest part that is not broken unless it has to be. */
    double widestWord(String text) {
        double widest = 0;
        for (String word : BLANK.split(text, -1)) {
            for (String piece : PIECES.split(word, -1)) {
                widest = StrictMath.max(widest, width(piece));
            }
        }
        return widest;
    }

    double widestLine(String text) {
        return text.lines().mapToDouble(this::width).max().orElse(0);
    }

    /** Lines in reading order, none wider than the room unless it is a single letter. */
    List<String> lines(String text, double room) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : text.split("\\R", -1)) {
            wrap(paragraph.strip(), room, lines);
        }
        return lines;
    }

    private void wrap(String paragraph, double room, List<String> lines) {
        StringBuilder line = new StringBuilder();
        for (String word : BLANK.split(paragraph, -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer) <= room + 1e-9) {
                line.setLength(0);
                line.append(longer);
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(broken(word, room, lines));
        }
        lines.add(line.toString());
    }

    /** Adds all of a word but its last piece, and returns that. */
    private String broken(String word, double room, List<String> lines) {
        String rest = word;
        while (width(rest) > room + 1e-9 && rest.codePointCount(0, rest.length()) > 1) {
            int cut = cut(rest, room);
            lines.add(rest.substring(0, cut));
            rest = rest.substring(cut);
        }
        return rest;
    }

    private int cut(String word, double room) {
        int most = word.offsetByCodePoints(0, 1);
        int kind = -1;
        for (int end = most; end < word.length(); end = word.offsetByCodePoints(end, 1)) {
            if (width(word.substring(0, end)) > room + 1e-9) {
                break;
            }
            most = end;
            if ("-/_,;".indexOf(word.charAt(end - 1)) >= 0) {
                kind = end;
            }
        }
        return kind > 0 ? kind : most;
    }

    /** One line, its end left out where there is no room for it. */
    String shortened(String text, double room) {
        String line = text.replaceAll("\\s+", " ").strip();
        if (width(line) <= room) {
            return line;
        }
        while (!line.isEmpty() && width(line + "…") > room) {
            line = line.substring(0, line.offsetByCodePoints(line.length(), -1));
        }
        return line.strip() + "…";
    }
}
