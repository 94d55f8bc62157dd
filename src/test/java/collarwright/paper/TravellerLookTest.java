package collarwright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.picture.TrialPlans;
import collarwright.testing.ProjectFolder;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;

/** Draws every page of the travellers into target/look, and measures their letters. */
@Tag("look")
class TravellerLookTest {

    private static final double A4_WIDTH = 595.276;
    private static final double A4_HEIGHT = 841.89;

    /** 5 mm, which no printer reaches over. */
    private static final double EDGE = 14.17;

    static Map<String, Paperwork> works() {
        Map<String, Paperwork> works = new LinkedHashMap<>();
        works.put("windbreak", TrialPapers.withSetups(TrialPlans.windbreak()));
        works.put("greenhouse", TrialPapers.of(TrialPlans.greenhouse()));
        works.put(
                "long-title",
                TrialPapers.of(
                        TrialPlans.windbreak(
                                "Nebenan überdachte Fläche für Bienenstöcke und Setzlinge, Hang nach"
                                        + " Osten, zweite Ausführung (mit Tür) — Ветрозащита для пасеки — אוהל הדבורים (2) — 養蜂場の風よけ —"
                                        + " Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunterbeamtengesellschaftsheim")));
        works.put("large", TrialPapers.of(TrialPlans.dome(6, 9)));
        return works;
    }

    @TestFactory
    List<DynamicTest> pages_haveReadableLettersWithRoomAroundThem() {
        return works().entrySet().stream()
                .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> look(e.getKey(), e.getValue())))
                .toList();
    }

    private static void look(String name, Paperwork work) throws IOException {
        byte[] file = Traveller.print(work);
        Path folder = Files.createDirectories(ProjectFolder.target().resolve("look/traveller"));
        Files.write(folder.resolve(name + ".pdf"), file);
        draw(file, folder, name);
        List<List<PdfText.Letter>> pages = PdfText.letters(file);
        for (int i = 0; i < pages.size(); i++) {
            String page = name + " page " + (i + 1);
            assertThat(pages.get(i)).as(page).isNotEmpty().allSatisfy(letter -> {
                assertThat(letter.points()).as("size of %s", letter).isGreaterThanOrEqualTo(11);
                assertThat(letter.x()).as("left of %s", letter).isGreaterThanOrEqualTo(EDGE);
                assertThat(letter.x() + letter.width())
                        .as("right of %s", letter)
                        .isLessThanOrEqualTo(A4_WIDTH - EDGE);
                assertThat(letter.baseline()).as("foot of %s", letter).isBetween(2 * EDGE, A4_HEIGHT - EDGE);
            });
            assertThat(PdfText.clashes(pages.get(i))).as(page).isEmpty();
        }
    }

    private static void draw(byte[] file, Path folder, String name) throws IOException {
        try (PDDocument document = Loader.loadPDF(file)) {
            PDFRenderer renderer = new PDFRenderer(document);
            for (int i = 0; i < Math.min(document.getNumberOfPages(), 24); i++) {
                BufferedImage image = renderer.renderImageWithDPI(i, 110);
                ImageIO.write(
                        image,
                        "png",
                        folder.resolve(name + "-" + (i + 1) + ".png").toFile());
            }
        }
    }
}
