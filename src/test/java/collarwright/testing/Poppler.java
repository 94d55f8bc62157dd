package collarwright.testing;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Page sizes, fonts and text of a PDF file by poppler's programs. */
public final class Poppler {
    private static final double MM_PER_POINT = 25.4 / 72;
    private static final Pattern PAGE_SIZE =
            Pattern.compile("^Page\\s+\\d+ size:\\s+([\\d.]+) x ([\\d.]+) pts", Pattern.MULTILINE);

    private Poppler() {}

    /**
     * A page.
     *
     * @param width mm
     * @param height mm
     */
    public record PageSize(double width, double height) {}

    /**
     * A font.
     *
     * @param name as in the file
     * @param embedded whether the file carries it
     */
    public record Font(String name, boolean embedded) {}

    /** The size of every page. */
    public static List<PageSize> pages(Path file) {
        String told = Run.of(List.of("pdfinfo", "-f", "1", "-l", "99999", file.toString()))
                .orFail()
                .out();
        return PAGE_SIZE.matcher(told).results().map(Poppler::page).toList();
    }

    private static PageSize page(MatchResult match) {
        return new PageSize(
                Double.parseDouble(match.group(1)) * MM_PER_POINT, Double.parseDouble(match.group(2)) * MM_PER_POINT);
    }

    /** The text of all pages, laid out as on paper; pages end with a form feed. */
    public static String text(Path file) {
        return Run.of(List.of("pdftotext", "-layout", "-enc", "UTF-8", file.toString(), "-"))
                .orFail()
                .out();
    }

    /** Every font that the file uses. */
    public static List<Font> fonts(Path file) {
        // Columns from the right: ID (two numbers), uni, sub, emb.
        return Run.of(List.of("pdffonts", file.toString()))
                .orFail()
                .out()
                .lines()
                .skip(2)
                .map(line -> line.strip().split("\\s+"))
                .map(words -> new Font(words[0], words[words.length - 5].equals("yes")))
                .toList();
    }
}
