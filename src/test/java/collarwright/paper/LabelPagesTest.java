package collarwright.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.job.Job;
import collarwright.job.LabelSheet;
import collarwright.job.SiteSettings;
import collarwright.kit.SiteLabel;
import collarwright.kit.SiteLabels;
import collarwright.kit.SiteWork;
import collarwright.picture.Lettering;
import collarwright.picture.Written;
import collarwright.plan.Plan;
import collarwright.plan.Planner;
import collarwright.testing.Checker;
import collarwright.testing.DomeJobs;
import collarwright.testing.NeedsChecker;
import collarwright.testing.Poppler;
import collarwright.testing.ProjectFolder;
import collarwright.testing.Run;
import collarwright.units.Paper;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.Image;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Labels measured on paper by poppler, and their codes read by a decoder from the drawn page. */
class LabelPagesTest {

    private static final double MM_PER_POINT = 25.4 / 72;
    private static final int DPI = 600;

    /** 3 × 7 labels of 60 × 34 mm, 62 and 38 mm apart, printed 1.5 mm to the left and 0.7 mm down. */
    private static final LabelSheet OWN = new LabelSheet(Paper.A4, 3, 7, 60, 34, 11, 16, 62, 38, -1.5, 0.7);

    @TempDir
    private Path folder;

    private static Plan plan(Optional<LabelSheet> sheet) {
        try {
            Job j = DomeJobs.read(ProjectFolder.top().resolve("output-samples/orchard-net/job.toml"));
            Job job = new Job(
                    j.title(),
                    j.revision(),
                    j.order(),
                    j.dome(),
                    j.size(),
                    j.strut(),
                    j.hub(),
                    j.drilling(),
                    j.limits(),
                    j.shop(),
                    j.sheet(),
                    j.cutting(),
                    new SiteSettings(15, sheet));
            return Planner.plan(job, List.of());
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static SiteLabels labels(Plan plan) {
        return SiteWork.of(plan).orElseThrow().labels();
    }

    private static BufferedImage drawn(Path pdf, int page) throws IOException {
        Path picture = pdf.resolveSibling("page-" + page);
        Run.of(List.of(
                        "pdftoppm",
                        "-gray",
                        "-png",
                        "-singlefile",
                        "-r",
                        Integer.toString(DPI),
                        "-f",
                        Integer.toString(page),
                        "-l",
                        Integer.toString(page),
                        pdf.toString(),
                        picture.toString()))
                .orFail();
        return ImageIO.read(picture.resolveSibling("page-" + page + ".png").toFile());
    }

    /** As a hand holds a reader: where it stumbles over a code from near by, it is held further off. */
    private static String decoded(BufferedImage image) throws Exception {
        try {
            return decodedAt(image);
        } catch (ReaderException e) {
            int width = image.getWidth() / 4;
            int height = image.getHeight() / 4;
            BufferedImage far = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
            far.getGraphics().drawImage(image.getScaledInstance(width, height, Image.SCALE_AREA_AVERAGING), 0, 0, null);
            return decodedAt(far);
        }
    }

    private static String decodedAt(BufferedImage image) throws Exception {
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        RGBLuminanceSource source = new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels);
        return new QRCodeReader()
                .decode(new BinaryBitmap(new HybridBinarizer(source)), Map.of(DecodeHintType.TRY_HARDER, true))
                .getText();
    }

    private static int pixels(double mm) {
        return (int) StrictMath.rint(mm * DPI / 25.4);
    }

    // The first dark column and row of a part of a page, mm from the page's corner.
    private static double[] darkFrom(BufferedImage page, double x, double y, double side) {
        int left = Integer.MAX_VALUE;
        int top = Integer.MAX_VALUE;
        for (int j = pixels(y); j < pixels(y + side); j++) {
            for (int i = pixels(x); i < pixels(x + side); i++) {
                if ((page.getRGB(i, j) & 0xFF) < 128) {
                    left = Math.min(left, i);
                    top = Math.min(top, j);
                }
            }
        }
        return new double[] {left * 25.4 / DPI, top * 25.4 / DPI};
    }

    @Test
    @NeedsChecker(Checker.POPPLER)
    void labels_onASheetOfOnesOwn_lieInPlaceAndDecode() throws Exception {
        Plan plan = plan(Optional.of(OWN));
        SiteLabels labels = labels(plan);
        Path pdf = Files.write(folder.resolve("labels.pdf"), LabelPages.print(plan, labels));
        // 38 % of 60 mm for the code with its quiet zone; version 2 has 25 modules, 33 with the quiet zone.
        double square = 22.8;
        double module = square / 33;
        int sheets = Poppler.pages(pdf).size();
        assertThat(sheets)
                .isEqualTo(
                        (labels.perDome().size() + 20) / 21 + (labels.spares().size() + 20) / 21);
        for (int number : List.of(1, 9)) {
            BufferedImage page = drawn(pdf, number);
            List<double[]> words = firstWords(pdf, number);
            for (int i = 0; i < 21; i++) {
                double x = 11 - 1.5 + i % 3 * 62;
                double y = 16 + 0.7 + i / 3 * 38;
                SiteLabel label = labels.perDome().get((number - 1) * 21 + i);
                BufferedImage part = page.getSubimage(pixels(x), pixels(y), pixels(square + 1), pixels(34));
                assertThat(decoded(part)).isEqualTo(label.code());
                double[] dark = darkFrom(page, x, y, square);
                assertThat(dark[0]).isCloseTo(x + 1 + 4 * module, within(0.1));
                assertThat(dark[1]).isCloseTo(y + (34 - square) / 2 + 4 * module, within(0.1));
                double left = x + 1 + square + 0.5;
                assertThat(words).anySatisfy(word -> {
                    assertThat(word[0]).isCloseTo(left, within(0.1));
                    assertThat(word[1]).isBetween(y, y + 34);
                });
            }
        }
    }

    // Left edge and top of every word that poppler finds.
    private static List<double[]> firstWords(Path pdf, int page) {
        String number = Integer.toString(page);
        String told = Run.of(List.of("pdftotext", "-bbox", "-f", number, "-l", number, pdf.toString(), "-"))
                .orFail()
                .out();
        Matcher word =
                Pattern.compile("<word xMin=\"([\\d.]+)\" yMin=\"([\\d.]+)\"").matcher(told);
        List<double[]> words = new ArrayList<>();
        while (word.find()) {
            words.add(new double[] {
                Double.parseDouble(word.group(1)) * MM_PER_POINT, Double.parseDouble(word.group(2)) * MM_PER_POINT
            });
        }
        return words;
    }

    @Test
    void words_ofTheLongestIds_standOnTheSmallestLabel() {
        LabelSheet small = new LabelSheet(
                Paper.A4,
                1,
                1,
                LabelSheet.LEAST_WIDTH,
                LabelSheet.LEAST_HEIGHT,
                0,
                0,
                LabelSheet.LEAST_WIDTH,
                LabelSheet.LEAST_HEIGHT,
                0,
                0);
        LabelLayout layout = new LabelLayout(Lettering.load(), small);
        List<SiteLabel> longest = List.of(
                new SiteLabel(
                        SiteLabel.Kind.STRUT_END,
                        "WWWWWWWW M1000000-a",
                        "T474-0790 hole 12",
                        List.of("strut SWWWW, either end")),
                new SiteLabel(
                        SiteLabel.Kind.COLLAR,
                        "WWWWWWWW T474-0790",
                        "T474-0790",
                        List.of("collar CWWW, hub HWWW", "UP between hole 12 and 10, TOP inside")),
                new SiteLabel(
                        SiteLabel.Kind.BUNDLE,
                        "WWWWWWWW BWWWW",
                        "BWWWW",
                        List.of("100000 × strut SWWW, stripes: 4 wide + 4 narrow", "1000.0 kg", "dome ____ of 10000")));
        for (SiteLabel label : longest) {
            List<Written> words = layout.words(label);
            assertThat(words).allSatisfy(word -> {
                assertThat(word.size()).isGreaterThanOrEqualTo(LabelLayout.LEAST);
                assertThat(word.x() + word.width()).isLessThanOrEqualTo(LabelSheet.LEAST_WIDTH - LabelSheet.PAD + 1e-6);
                assertThat(word.baseline()).isBetween(1.5, LabelSheet.LEAST_HEIGHT - 1.5);
            });
            String shown = String.join(" ", words.stream().map(Written::text).toList());
            assertThat(shown.replace(" ", "")).contains(label.code().replace(" ", ""));
        }
    }

    @Test
    void labels_usual_haveLettersOfElevenPoints() {
        Plan plan = plan(Optional.empty());
        for (Paper stock : Paper.values()) {
            LabelLayout layout = new LabelLayout(Lettering.load(), LabelSheet.usual(stock));
            labels(plan)
                    .perDome()
                    .forEach(label -> assertThat(layout.words(label))
                            .allSatisfy(word ->
                                    assertThat(word.size() / MM_PER_POINT).isGreaterThanOrEqualTo(11)));
        }
    }

    @Test
    void labels_upToThePapersEdge_arePrintedFiveMillimetresOffIt() {
        LabelSheet low = new LabelSheet(Paper.A4, 2, 10, 105, 25.4, 0, 10, 105, 25.4, 0, 0);
        for (LabelSheet sheet : List.of(LabelSheet.usual(Paper.A4), low)) {
            offTheEdge(sheet);
        }
    }

    private static void offTheEdge(LabelSheet sheet) {
        assertThat(sheet.left()).isZero();
        LabelLayout layout = new LabelLayout(Lettering.load(), sheet);
        for (SiteLabel label : labels(plan(Optional.empty())).perDome()) {
            double module = layout.square() / (QrCode.of(label.code()).modules() + 2 * QrCode.QUIET);
            assertThat(layout.squareLeft() + QrCode.QUIET * module).isGreaterThanOrEqualTo(4.9);
            assertThat(layout.words(label))
                    .allSatisfy(
                            word -> assertThat(word.x() + word.width()).isLessThanOrEqualTo(sheet.width() - 5 + 1e-6));
        }
    }

    @Test
    void labels_twoThousand_areTheSameBytesTwice() {
        Plan plan = plan(Optional.empty());
        List<SiteLabel> many = new ArrayList<>();
        while (many.size() < 2000) {
            many.addAll(labels(plan).perDome());
        }
        SiteLabels labels = new SiteLabels(many.subList(0, 2000), List.of());
        byte[] first = LabelPages.print(plan, labels);
        assertThat(LabelPages.print(plan, labels)).isEqualTo(first);
        assertThat(PdfText.pages(first)).hasSize(84);
    }
}
