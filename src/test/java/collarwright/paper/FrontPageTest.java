package collarwright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.picture.TrialPlans;
import collarwright.plan.HubSeat;
import collarwright.plan.Plan;
import collarwright.plan.RingSeat;
import collarwright.units.Decimals;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The front page is sound, says what the plan says, and reaches for nothing outside the pack. */
class FrontPageTest {

    private static String html(Paperwork work) {
        return new String(FrontPage.print(work), StandardCharsets.UTF_8);
    }

    private static Document parse(String html) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder()
                .parse(new InputSource(new StringReader(html.replace("<!DOCTYPE html>", ""))));
    }

    private static List<Element> all(Document page, String name) {
        NodeList nodes = page.getElementsByTagNameNS("*", name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    @Test
    void page_isWellFormed_withEveryIdOnceAndEveryLinkLeadingSomewhere() throws Exception {
        Document page = parse(html(TrialPapers.windbreak()));
        Set<String> ids = new HashSet<>();
        for (Element element : all(page, "*")) {
            if (element.hasAttribute("id")) {
                assertThat(ids.add(element.getAttribute("id")))
                        .as(element.getAttribute("id"))
                        .isTrue();
            }
        }
        for (Element link : all(page, "a")) {
            String href = link.getAttribute("href");
            assertThat(href.startsWith("#") ? ids.contains(href.substring(1)) : !href.contains(":"))
                    .as(href)
                    .isTrue();
        }
        for (Element use : all(page, "use")) {
            assertThat(ids).contains(use.getAttribute("href").substring(1));
        }
    }

    @Test
    void page_needsNoScriptAndNoNetwork() throws Exception {
        String html = html(TrialPapers.windbreak());
        Document page = parse(html);
        assertThat(all(page, "script")).isEmpty();
        assertThat(all(page, "link")).isEmpty();
        assertThat(all(page, "img")).isEmpty();
        assertThat(all(page, "*")).noneMatch(e -> e.hasAttribute("src") || e.hasAttribute("onclick"));
        // Names of XML vocabularies are no addresses to be opened.
        assertThat(html.replaceAll("xmlns(:\\w+)?=['\"][^'\"]*['\"]", "")).doesNotContain("http");
    }

    @Test
    void headings_skipNoLevel_andTablesAndPicturesAreNamed() throws Exception {
        Document page = parse(html(TrialPapers.windbreak()));
        assertThat(page.getDocumentElement().getAttribute("lang")).isEqualTo("en");
        assertThat(all(page, "h1")).hasSize(1);
        int level = 0;
        for (Element element : all(page, "*")) {
            if (element.getLocalName().matches("h[1-6]")) {
                int next = element.getLocalName().charAt(1) - '0';
                assertThat(next).isBetween(1, level + 1);
                level = next;
            }
        }
        for (Element table : all(page, "table")) {
            assertThat(table.hasAttribute("aria-label")
                            || table.getElementsByTagName("caption").getLength() == 1)
                    .isTrue();
            assertThat(table.getElementsByTagName("th").getLength()).isPositive();
        }
        for (Element picture : all(page, "svg")) {
            boolean named = picture.getElementsByTagName("title").getLength() == 1;
            assertThat(named || picture.getAttribute("aria-hidden").equals("true"))
                    .isTrue();
        }
    }

    @Test
    void tables_sayWhatThePlanSays() throws Exception {
        Plan plan = TrialPlans.windbreak();
        String text = parse(html(TrialPapers.of(plan))).getDocumentElement().getTextContent();
        assertThat(text).contains("61 hubs, 165 struts").contains(plan.job().revision());
        plan.book().patterns().forEach(p -> assertThat(text).contains(p.fingerprint()));
        for (int i = 0; i < plan.hubs().types().size(); i++) {
            RingSeat ring = HubSeat.of(plan, i).ring();
            assertThat(text)
                    .contains(Decimals.fixed(ring.width(), 1) + " mm")
                    .contains(Decimals.fixed(Math.abs(ring.middle()), 1) + " mm above");
        }
        plan.findings()
                .forEach(f -> assertThat(text)
                        .contains(f.where().text())
                        .contains(f.expected())
                        .contains(f.found())
                        .contains(f.hints()));
    }

    @Test
    void everyFile_isListedWithItsPurpose() throws Exception {
        Paperwork work = TrialPapers.windbreak();
        Document page = parse(html(work));
        List<String> links =
                all(page, "a").stream().map(a -> a.getAttribute("href")).toList();
        String text = page.getDocumentElement().getTextContent();
        work.files().forEach(f -> {
            assertThat(links).contains(f.path());
            assertThat(text).contains(f.purpose());
        });
    }

    @Test
    void title_ofAnyScript_isShownWholeAndHarmless() throws Exception {
        String title = "<b>\"Zelt\" & 'Hof'</b> 養蜂場 — אוהל הדבורים — خيمة 🐝";
        Document page = parse(html(TrialPapers.of(TrialPlans.windbreak(title + "\u0000\u0007"))));
        Element heading = all(page, "h1").get(0);
        assertThat(heading.getTextContent()).isEqualTo(title + "??");
        assertThat(heading.getAttribute("dir")).isEqualTo("auto");
    }

    @Test
    void link_toAnOddName_isWritten_asBytes() {
        assertThat(Links.to("site/Größe a.pdf")).isEqualTo("site/Gr%C3%B6%C3%9Fe%20a.pdf");
    }

    @Test
    void sameWork_givesTheSameBytes_inEveryLanguage() {
        byte[] first = FrontPage.print(TrialPapers.windbreak());
        Locale locale = Locale.getDefault();
        try {
            for (String tag : List.of("de-DE", "tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(FrontPage.print(TrialPapers.windbreak())).as(tag).isEqualTo(first);
            }
        } finally {
            Locale.setDefault(locale);
        }
    }

    @Test
    void planThatCannotBeMade_saysSoFirst() throws Exception {
        String text = parse(html(TrialPapers.of(TrialPlans.withoutCutters())))
                .getDocumentElement()
                .getTextContent();
        assertThat(text).contains("Do not make this yet").contains("No pattern could be laid out");
    }

    @Test
    void letters_standOutFromPaper() {
        // Web Content Accessibility Guidelines 2.1, success criterion 1.4.3: 4.5 : 1; the formula is that of its
        // definitions of contrast ratio and relative luminance (from memory).
        for (var ink :
                List.of(collarwright.picture.Ink.INK, collarwright.picture.Ink.DATUM, collarwright.picture.Ink.GREY)) {
            for (var ground : List.of(collarwright.picture.Ink.PAPER, collarwright.picture.Ink.PALE)) {
                double contrast = (luminance(ground.color()) + 0.05) / (luminance(ink.color()) + 0.05);
                assertThat(contrast).as("%s on %s", ink, ground).isGreaterThanOrEqualTo(4.5);
            }
        }
    }

    private static double luminance(java.awt.Color color) {
        return 0.2126 * linear(color.getRed()) + 0.7152 * linear(color.getGreen()) + 0.0722 * linear(color.getBlue());
    }

    private static double linear(int value) {
        double part = value / 255.0;
        return part <= 0.03928 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
    }
}
