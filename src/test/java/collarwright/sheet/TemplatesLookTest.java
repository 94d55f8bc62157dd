package collarwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.drawing.ExampleCollars;
import collarwright.drawing.Sheet;
import collarwright.drawing.WrapSettings;
import collarwright.drawing.WrapTemplate;
import collarwright.testing.Checker;
import collarwright.testing.Chromium;
import collarwright.testing.Mutool;
import collarwright.testing.NeedsChecker;
import collarwright.testing.Poppler;
import collarwright.testing.ProjectFolder;
import collarwright.units.Paper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Pictures of wrap templates, to be looked at in {@code target/look/templates}. */
@Tag("look")
class TemplatesLookTest {

    @Test
    @NeedsChecker({Checker.CHROMIUM, Checker.MUTOOL, Checker.POPPLER})
    void templates_areRendered() throws IOException {
        Path folder = Files.createDirectories(ProjectFolder.target().resolve("look/templates"));
        for (WrapSettings settings : ExampleCollars.all()) {
            Sheet sheet = WrapTemplate.of(settings).sheet();
            Path svg = folder.resolve(sheet.name() + ".svg");
            Files.writeString(svg, SvgWriter.print(sheet));
            // The browser takes no picture of a bare drawing, only of a page that shows it.
            Path shown = folder.resolve(sheet.name() + ".html");
            Files.writeString(shown, page(sheet.name()));
            assertThat(Chromium.look(shown, 1960, folder.resolve(sheet.name() + "-svg.png"))
                            .complaints())
                    .isEmpty();
            for (Paper paper : Paper.values()) {
                String name = sheet.name() + "-" + paper.title();
                Path pdf = folder.resolve(name + ".pdf");
                Files.write(pdf, PdfWriter.print(sheet, PdfSettings.of(paper)));
                for (int page = 1; page <= Poppler.pages(pdf).size(); page++) {
                    Mutool.render(pdf, page, 110, folder.resolve(name + "-" + page + ".png"));
                }
            }
        }
        assertThat(folder.resolve("CD-wrap-A4-1.png")).isNotEmptyFile();
    }

    private static String page(String name) {
        return "<!doctype html><meta charset=utf-8><title>" + name + "</title><img width=1900 alt='' src='" + name
                + ".svg'>";
    }
}
