package collarwright.picture;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.plan.Plan;
import collarwright.testing.Checker;
import collarwright.testing.Chromium;
import collarwright.testing.NeedsChecker;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

class SvgPictureTest {

    private final Plan plan = TrialPlans.windbreak();
    private final Lettering letters = Lettering.load();

    private List<Picture> pictures() {
        var body = plan.job().hub().body();
        var pattern = plan.book().patterns().get(1);
        Figures figures = new Figures(plan.job().shop().programUnits());
        var subject = new SectionPicture.Subject(
                body, plan.job().strut().stock().od(), pattern.holes().get(0));
        return List.of(
                new DomePicture(plan, 180),
                new TierPicture(plan, 180),
                new HubPicture(plan, 1, 88),
                new RingPicture(body, pattern, 88),
                new StripPicture(body, pattern, figures, 180),
                new SectionPicture(subject, figures, 88),
                new StrutPicture(true, 180));
    }

    // A picture with its letters inside, so that it stands alone.
    private String alone(Picture picture) {
        SvgGlyphs glyphs = new SvgGlyphs(letters);
        String element = SvgPicture.element(picture, "trial", glyphs);
        return element.substring(0, element.lastIndexOf("</svg>")) + glyphs.defs() + "</svg>";
    }

    private List<String> files() {
        return pictures().stream().map(this::alone).toList();
    }

    @Test
    void files_areWellFormed_sayWhatTheyShow_andHavePlainNumbers() throws Exception {
        for (String file : files()) {
            Element top = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(file)))
                    .getDocumentElement();
            assertThat(top.getElementsByTagName("title").item(0).getTextContent())
                    .isNotBlank();
            assertThat(file)
                    .doesNotContain("NaN")
                    .doesNotContainPattern("[0-9]E-?[0-9]")
                    .doesNotContain("Infinity");
        }
    }

    @Test
    void files_areTheSameAgain_inEveryLanguage() {
        List<String> first = files();
        Locale locale = Locale.getDefault();
        try {
            for (String tag : List.of("de-DE", "tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(files()).as(tag).isEqualTo(first);
            }
        } finally {
            Locale.setDefault(locale);
        }
    }

    @Test
    void bindingStrut_touchesBothRims() {
        String section = files().get(5);
        List<double[]> rims = numbers(section, "<ellipse cx='([\\d.]+)' cy='([\\d.]+)' rx='0.9'");
        List<double[]> edges = numbers(
                section, "<line x1='([\\d.]+)' y1='([\\d.]+)' x2='([\\d.]+)' y2='([\\d.]+)' style='stroke-width:0.5;");
        assertThat(rims).hasSize(2);
        assertThat(edges).hasSize(2);
        // Below outside, above inside; paper is drawn to a hundredth of a millimetre.
        assertThat(distance(rims.get(0), edges.get(1))).isLessThan(0.02);
        assertThat(distance(rims.get(1), edges.get(0))).isLessThan(0.02);
    }

    private static List<double[]> numbers(String text, String pattern) {
        List<double[]> found = new ArrayList<>();
        Matcher match = Pattern.compile(pattern).matcher(text);
        while (match.find()) {
            double[] row = new double[match.groupCount()];
            for (int i = 0; i < row.length; i++) {
                row[i] = Double.parseDouble(match.group(i + 1));
            }
            found.add(row);
        }
        return found;
    }

    private static double distance(double[] point, double[] line) {
        double dx = line[2] - line[0];
        double dy = line[3] - line[1];
        return Math.abs(dx * (point[1] - line[1]) - dy * (point[0] - line[0])) / Math.hypot(dx, dy);
    }

    @Test
    @NeedsChecker(Checker.CHROMIUM)
    void files_haveTheirSizeInABrowser(@TempDir Path folder) throws IOException {
        List<Picture> pictures = pictures();
        for (int i = 0; i < pictures.size(); i++) {
            Path file = folder.resolve(i + ".svg");
            Files.writeString(file, alone(pictures.get(i)));
            Chromium.Drawing drawing = Chromium.measure(file);
            assertThat(drawing.pageWidth())
                    .isBetween(pictures.get(i).width() - 0.1, pictures.get(i).width() + 0.1);
            assertThat(drawing.complaints()).isEmpty();
        }
    }
}
