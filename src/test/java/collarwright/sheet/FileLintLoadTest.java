package collarwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Files that are large or made to keep a reader busy. The time limit only ends a test that hangs. */
@Timeout(60)
class FileLintLoadTest {
    private static String svg(int size, String inside, String outside, String leads) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"" + size + "mm\" height=\"" + size
                + "mm\" viewBox=\"0 0 " + size + " " + size + "\">\n"
                + group("CUT-INSIDE", "#ff0000", inside) + group("CUT-OUTSIDE", "#0000ff", outside)
                + group("MARK", "#000000", "") + group("NOTE", "#505050", "")
                + group("LEAD-IN", "#008000", leads) + "</svg>\n";
    }

    private static String group(String id, String colour, String lines) {
        return "<g id=\"" + id + "\" fill=\"none\" stroke=\"" + colour + "\" stroke-width=\"0.1\">\n" + lines
                + "</g>\n";
    }

    private static String each(int count, java.util.function.IntFunction<String> line) {
        return IntStream.range(0, count).mapToObj(line).collect(Collectors.joining("\n", "", "\n"));
    }

    private static List<String> expected(FileLint.Report report) {
        return report.findings().stream().map(Finding::expected).toList();
    }

    private static String circle(double x, double y, double r) {
        return "<circle cx=\"" + Decimals.trimmed(x, 3) + "\" cy=\"" + Decimals.trimmed(y, 3) + "\" r=\""
                + Decimals.trimmed(r, 3) + "\"/>";
    }

    @Test
    void check_nestOfThousands_isSoundWithinItsWork() {
        int side = 70;
        String text = svg(
                20 * side + 20,
                each(side * side, i -> circle(20 + i % side * 20, 20 + i / side * 20, 3)),
                each(side * side, i -> circle(20 + i % side * 20, 20 + i / side * 20, 8)),
                each(side * side, i -> {
                    int x = 20 + i % side * 20;
                    int y = 20 + i / side * 20;
                    return "<line x1=\"" + (x + 9) + "\" y1=\"" + y + "\" x2=\"" + (x + 8) + "\" y2=\"" + y + "\"/>";
                }));

        FileLint.Report report = FileLint.check("f", text);

        assertThat(report.findings()).isEmpty();
        assertThat(report.summary()).contains((2 * side * side) + " closed contours");
    }

    @Test
    void work_ofANest_growsWithItsSize() {
        long small = steps(20);
        long large = steps(60);

        // Nine times the circles; compared each with each it would be eighty-one times the work.
        assertThat(large).isLessThan(15 * small);
    }

    private static long steps(int side) {
        DrawnPieces pieces = new DrawnPieces(new FileFaults("f"));
        pieces.sheet(2000, 2000);
        for (int i = 0; i < side * side; i++) {
            pieces.circle(new DrawnPiece.Source("L", "circle", i), 20 + i % side * 20, 20 + i / side * 20, 8);
        }
        List<DrawnPiece> all = pieces.all();
        DrawnWork work = new DrawnWork(DrawnWork.MOST);
        assertThat(DrawnCrossings.of(all, work, 1)).isEmpty();
        DrawnPlaces places = new DrawnPlaces(all.stream().map(List::of).toList(), work);
        all.forEach(piece -> {
            assertThat(places.touch(piece.first())).isTrue();
            assertThat(places.hold(DrawnPiece.Spot.of(
                            piece.first().mmX() - 8, piece.first().mmY())))
                    .isTrue();
        });
        return DrawnWork.MOST - work.left();
    }

    @Test
    void check_linesBesideOneAnother_areComparedOnce() {
        String text = svg(
                800,
                each(
                        3000,
                        i -> "<line x1=\"" + Decimals.trimmed(10 + i * 0.01, 2) + "\" y1=\"10\" x2=\""
                                + Decimals.trimmed(700 + i * 0.01, 2) + "\" y2=\"590\"/>"),
                "",
                "");

        FileLint.Report report = FileLint.check("f", text);

        assertThat(report.faults()).isEqualTo(3000);
        assertThat(report.findings()).hasSize(101);
        assertThat(report.findings().get(100).found()).isEqualTo("2900 faults more");
    }

    @Test
    void check_circlesRoundOneAnother_endWhenTheWorkIsSpent() {
        FileLint.Report report =
                FileLint.check("f", svg(800, each(3000, i -> circle(400, 400, 390 - i * 0.005)), "", ""));

        assertThat(expected(report)).containsExactly("a drawing that is compared in 300000000 steps");
    }

    @Test
    void check_whatReachesTooFar_isRefusedAtItsLine() {
        List<String> far = new ArrayList<>(List.of(
                "<circle cx=\"400\" cy=\"300\" r=\"99999\"/>",
                "<path d=\"M10 10A99999 99999 0 1 1 10.001 10\"/>",
                "<circle cx=\"100000\" cy=\"300\" r=\"1\"/>"));
        for (String line : far) {
            FileLint.Report report = FileLint.check("f", svg(800, each(3000, i -> line), "", ""));

            assertThat(report.faults()).isEqualTo(3000);
            assertThat(expected(report)).contains("lines within 100000 mm of the sheet's corner");
            assertThat(report.summary()).contains(" 0 lines and arcs");
        }
    }

    @Test
    void check_whatLiesOutsideTheSheet_isToldAndNotComparedFurther() {
        FileLint.Report report = FileLint.check("f", svg(800, each(3000, i -> circle(400, 400, 90_000 - i)), "", ""));

        assertThat(report.faults()).isEqualTo(3000);
        assertThat(expected(report)).contains("inside the sheet, 5 mm from its edges");
    }

    @Test
    void check_moreShortLinesThanAreRead_isRefused() {
        assertThatThrownBy(() ->
                        FileLint.check("f", svg(99_000, each(2000, i -> circle(49_500, 49_500, 49_000 - i)), "", "")))
                .isInstanceOfSatisfying(
                        JobException.class,
                        e -> assertThat(e.findings()).singleElement().satisfies(f -> {
                            assertThat(f.code()).isEqualTo(Code.DRAWING_FILE);
                            assertThat(f.expected()).contains("at most 4000000 short lines");
                        }));
    }

    @Test
    void check_attributesByTheThousand_areReadInALoop() {
        String text = svg(800, "", circle(400, 400, 9), "")
                .replace("<circle ", "<circle " + each(20_000, i -> "a" + i + "=\"1\""));

        assertThat(FileLint.check("f", text).faults()).isEqualTo(20_000);
    }

    @Test
    void check_thousandsOfEndsInOnePlace_areWalkedOnce() {
        String text = svg(
                        800,
                        "",
                        "",
                        each(
                                20_000,
                                i -> "<line x1=\"400\" y1=\"400\" x2=\"" + (10 + i % 780) + "\" y2=\""
                                        + Decimals.trimmed(10 + Math.floorDiv(i, 780) * 0.01, 2) + "\"/>"))
                .replace("CUT-INSIDE", "X")
                .replace("LEAD-IN", "CUT-INSIDE")
                .replace("#008000", "#ff0000");

        FileLint.Report report = FileLint.check("f", text);

        assertThat(report.faults()).isGreaterThan(20_000);
        assertThat(report.findings()).hasSize(101);
    }
}
