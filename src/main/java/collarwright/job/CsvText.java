package collarwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A table of separated values, as spreadsheets of all countries write it: cells parted by commas or semicolons, whichever
 * the first line has, in quotation marks where they hold one (RFC 4180), lines ending in CR LF, LF or CR.
 *
 * @param separator comma or semicolon
 * @param lines the cells of each line; empty lines are left out
 * @param open the cell whose quotation mark is never closed
 */
record CsvText(char separator, List<List<Cell>> lines, Optional<Cell> open) {

    CsvText {
        lines = lines.stream().map(List::copyOf).toList();
    }

    /**
     * One cell.
     *
     * @param text without its quotation marks
     * @param line from 1
     * @param column of its first sign, from 1
     */
    record Cell(String text, int line, int column) {}

    static CsvText of(String text) {
        String first = text.lines().filter(l -> !l.isBlank()).findFirst().orElse("");
        char separator = first.indexOf(';') >= 0 ? ';' : ',';
        return new Walk(text, separator).all();
    }

    private static final class Walk {
        private final String text;
        private final char separator;
        private final List<List<Cell>> lines = new ArrayList<>();
        private List<Cell> cells = new ArrayList<>();
        private int at;
        private int line = 1;
        private int lineStart;

        Walk(String text, char separator) {
            this.text = text;
            this.separator = separator;
        }

        CsvText all() {
            while (at < text.length()) {
                int start = at;
                int startLine = line;
                int column = 1 + text.codePointCount(lineStart, start);
                Optional<String> content = text.charAt(at) == '"' ? quoted() : Optional.of(plain());
                Cell cell = new Cell(content.orElse(""), startLine, column);
                if (content.isEmpty()) {
                    return new CsvText(separator, lines, Optional.of(cell));
                }
                cells.add(cell);
                end();
            }
            endLine();
            return new CsvText(separator, lines, Optional.empty());
        }

        private String plain() {
            int start = at;
            while (at < text.length() && text.charAt(at) != separator && !lineEnd(text.charAt(at))) {
                at++;
            }
            return text.substring(start, at);
        }

        private Optional<String> quoted() {
            StringBuilder content = new StringBuilder();
            at++;
            while (at < text.length()) {
                char sign = text.charAt(at);
                if (sign == '"' && at + 1 < text.length() && text.charAt(at + 1) == '"') {
                    content.append('"');
                    at += 2;
                } else if (sign == '"') {
                    at++;
                    // What follows the mark belongs to the cell too, as most spreadsheets have it.
                    return Optional.of(content + plain());
                } else {
                    content.append(sign);
                    at++;
                    if (sign == '\n') {
                        line++;
                        lineStart = at;
                    }
                }
            }
            return Optional.empty();
        }

        private void end() {
            if (at >= text.length()) {
                return;
            }
            char sign = text.charAt(at);
            at++;
            if (sign == separator) {
                if (at == text.length()) {
                    cells.add(new Cell("", line, 1 + text.codePointCount(lineStart, at)));
                }
                return;
            }
            if (sign == '\r' && at < text.length() && text.charAt(at) == '\n') {
                at++;
            }
            endLine();
            line++;
            lineStart = at;
        }

        private void endLine() {
            if (cells.stream().anyMatch(c -> !c.text().isBlank())) {
                lines.add(cells);
            }
            cells = new ArrayList<>();
        }

        private static boolean lineEnd(char sign) {
            return sign == '\n' || sign == '\r';
        }
    }
}
