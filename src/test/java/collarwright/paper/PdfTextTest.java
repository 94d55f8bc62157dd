package collarwright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.picture.Ink;
import collarwright.picture.Lettering;
import collarwright.picture.Written;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The measuring of letters finds what it is there to find. */
class PdfTextTest {

    private final Lettering letters = Lettering.load();

    private List<PdfText.Letter> read(Written... texts) {
        List<PageItem> items = java.util.Arrays.stream(texts)
                .<PageItem>map(PageItem.Words::new)
                .toList();
        return PdfText.letters(new PdfPages(letters, "Trial", "AAAAAAAA").print(List.of(new Page("Trial", items))))
                .get(0);
    }

    private Written text(String text, double x, double baseline, double size) {
        return new Written(text, x, baseline, letters.width(text, size), size, Ink.INK, false);
    }

    @Test
    void textOverText_isFound() {
        assertThat(PdfText.clashes(read(text("hole 1", 50, 100, 4), text("hole 2", 53, 101, 4))))
                .isNotEmpty();
    }

    @Test
    void textBelowText_isNot() {
        assertThat(PdfText.clashes(read(text("hole 1", 50, 100, 4), text("hole 2", 50, 105, 4))))
                .isEmpty();
    }

    @Test
    void letters_standWhereTheyWerePut() {
        PdfText.Letter first = read(text("H", 50, 100, 4)).stream()
                .filter(l -> l.text().equals("H"))
                .findFirst()
                .orElseThrow();
        assertThat(first.x() * 25.4 / 72).isBetween(49.99, 50.01);
        assertThat(first.baseline() * 25.4 / 72).isBetween(99.99, 100.01);
        assertThat(first.points() * 25.4 / 72).isBetween(3.99, 4.01);
    }
}
