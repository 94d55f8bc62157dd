package collarwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.drawing.Box;
import collarwright.drawing.Cut;
import collarwright.drawing.ExampleCollars;
import collarwright.drawing.FlatPart;
import collarwright.drawing.Heading;
import collarwright.drawing.Label;
import collarwright.drawing.NestedSheet;
import collarwright.drawing.PlateDrawing;
import collarwright.drawing.Role;
import collarwright.drawing.Sheet;
import collarwright.tooling.Hole;
import collarwright.tooling.IndexPlate;
import collarwright.tooling.Pattern;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import org.junit.jupiter.api.Test;

/** Plates measured in the text of their SVG, in whose own axes y runs down. */
class PlateDrawingTest {
    private static final Pattern LOPSIDED =
            ExampleCollars.pattern("CA", ExampleCollars.saw(30), 0, 40, 95, 170, 260, 320);
    private static final IndexPlate.Sizes SIZES = new IndexPlate.Sizes(180, 20, 6);

    private static Sheet sheet(Pattern pattern, Cut cut, boolean turned) {
        FlatPart part = PlateDrawing.draw(IndexPlate.of(pattern, SIZES), "HKVWTXNA", cut);
        return NestedSheet.draw(
                new Box(0, 0, 260, 260),
                List.of(new NestedSheet.Place(part, 20, 20, turned)),
                new NestedSheet.Words("plates-1", new Heading("Plates", "Test", "HKVWTXNA", List.of(), List.of())));
    }

    /** Middle of the bore, from the file. */
    private static double[] centre(String svg) {
        MatchResult bore = found(svg, "<circle id=\"CUT-INSIDE-1\" cx=\"([\\d.]+)\" cy=\"([\\d.]+)\" r=\"([\\d.]+)\"")
                .get(0);
        return new double[] {number(bore, 1), number(bore, 2), number(bore, 3)};
    }

    private static List<MatchResult> found(String text, String regex) {
        return java.util.regex.Pattern.compile(regex).matcher(text).results().toList();
    }

    private static double number(MatchResult match, int group) {
        return Double.parseDouble(match.group(group));
    }

    /** Azimuths of the half round bottoms, clockwise as the eye sees the page, from straight up. */
    private static List<Double> notches(String svg, double radius) {
        String path = found(svg, "id=\"CUT-OUTSIDE-1\" d=\"([^\"]+)\"").get(0).group(1);
        double[] c = centre(svg);
        List<Double> azimuths = new ArrayList<>();
        for (MatchResult arc : found(path, "([\\d.]+) ([\\d.]+)A([\\d.]+) [\\d.]+ 0 [01] [01] ([\\d.]+) ([\\d.]+)")) {
            if (Math.abs(number(arc, 3) - radius) < 0.01) {
                double x = (number(arc, 1) + number(arc, 4)) / 2 - c[0];
                double y = (number(arc, 2) + number(arc, 5)) / 2 - c[1];
                assertThat(Math.hypot(x, y)).isCloseTo(84, within(0.001));
                azimuths.add((Math.toDegrees(Math.atan2(x, -y)) + 360.0005) % 360);
            }
        }
        azimuths.sort(Double::compare);
        return azimuths;
    }

    private static List<Double> planned() {
        return LOPSIDED.holes().stream()
                .map(Hole::azimuth)
                .map(Math::toDegrees)
                .sorted()
                .toList();
    }

    private static boolean isRight(String svg) {
        List<Double> made = notches(svg, 3);
        boolean right = made.size() == planned().size();
        for (int i = 0; right && i < made.size(); i++) {
            right = Math.abs(made.get(i) - planned().get(i)) < 0.01;
        }
        // The flag hole lies clockwise of the 0° line, right of it with the line upward.
        MatchResult flag = found(svg, "CUT-INSIDE-2\" cx=\"([\\d.]+)\"").get(0);
        return right && number(flag, 1) > centre(svg)[0];
    }

    @Test
    void draw_plate_hasANotchAtEveryHoleClockwise() {
        String svg = SvgWriter.print(sheet(LOPSIDED, Cut.NOMINAL, false));

        assertThat(isRight(svg)).isTrue();
        assertThat(centre(svg)[2]).isEqualTo(10);
    }

    @Test
    void draw_mirroredFile_isCaught() {
        String svg = SvgWriter.print(sheet(LOPSIDED, Cut.NOMINAL, false));
        String path = found(svg, "id=\"CUT-OUTSIDE-1\" d=\"([^\"]+)\"").get(0).group(1);
        StringBuilder mirrored = new StringBuilder();
        for (MatchResult step : found(path, "([MLAZ])((?:[\\d.]+ [\\d.]+ 0 [01] [01] )?)([\\d.]*)((?: [\\d.]+)?)")) {
            String x = step.group(3).isEmpty() ? "" : "" + (260 - Double.parseDouble(step.group(3)));
            mirrored.append(step.group(1)).append(step.group(2)).append(x).append(step.group(4));
        }
        double cx = centre(svg)[0];
        String wrong = svg.replace(path, mirrored)
                .replace(
                        "cx=\""
                                + found(svg, "CUT-INSIDE-1\" cx=\"([\\d.]+)\"")
                                        .get(0)
                                        .group(1),
                        "cx=\"" + (260 - cx));

        assertThat(notches(wrong, 3)).hasSize(6);
        assertThat(isRight(wrong)).isFalse();
    }

    @Test
    void draw_numbers_standAtTheirNotches() {
        Sheet sheet = sheet(LOPSIDED, Cut.NOMINAL, false);
        double[] c = centre(SvgWriter.print(sheet));

        for (Hole hole : LOPSIDED.holes()) {
            Label label = sheet.shapes(Role.MARK).stream()
                    .filter(Label.class::isInstance)
                    .map(Label.class::cast)
                    .filter(l -> l.text().equals(Integer.toString(hole.number())))
                    .findFirst()
                    .orElseThrow();
            Box box = label.bounds();
            double x = (box.left() + box.right()) / 2 - c[0];
            double y = (box.bottom() + box.top()) / 2 - (260 - c[1]);
            double off = Math.toDegrees(Math.atan2(x, y)) - Math.toDegrees(hole.azimuth());
            assertThat(Math.IEEEremainder(off, 360)).isCloseTo(0, within(1.5));
        }
    }

    @Test
    void draw_kerfByRole_isTakenOnceOnEachSide() {
        String svg = SvgWriter.print(sheet(LOPSIDED, new Cut(0.2, 0.3, 5), false));

        assertThat(centre(svg)[2]).isEqualTo(9.9);
        assertThat(notches(svg, 2.85)).hasSize(6);
        String path = found(svg, "id=\"CUT-OUTSIDE-1\" d=\"([^\"]+)\"").get(0).group(1);
        assertThat(found(path, "A90\\.15 90\\.15 ")).hasSize(6);
        assertThat(found(svg, "id=\"LEAD-IN-\\d\"")).hasSize(3);
    }

    @Test
    void draw_anyPlate_isSoundInEveryFormatAlsoTurned() {
        List<Pattern> patterns = new ArrayList<>(List.of(
                LOPSIDED,
                ExampleCollars.pattern("CB", ExampleCollars.saw(30), 0),
                ExampleCollars.pattern("CC", ExampleCollars.saw(30), 0, 180)));
        ExampleCollars.all().forEach(s -> patterns.add(s.pattern()));
        for (Pattern pattern : patterns) {
            for (boolean turned : new boolean[] {false, true}) {
                Sheet sheet = sheet(pattern, new Cut(0.2, 0.3, 5), turned);
                for (String text : List.of(
                        SvgWriter.print(sheet),
                        DxfWriter.print(sheet, DxfFlavour.R12),
                        DxfWriter.print(sheet, DxfFlavour.R2000, DxfOutlines.POLYLINES))) {
                    assertThat(FileLint.check(pattern.id(), text).findings()).isEmpty();
                }
            }
        }
    }

    @Test
    void of_holesAboveOneAnother_shareANotch() {
        IndexPlate plate = IndexPlate.of(ExampleCollars.pattern("CA", ExampleCollars.saw(30), 0, 90, 90, 200), SIZES);

        assertThat(plate.notches())
                .extracting(IndexPlate.Notch::holes)
                .containsExactly(List.of(1), List.of(2, 3), List.of(4));
    }

    @Test
    void of_holesOnBothSidesOfTheZeroLine_shareANotch() {
        IndexPlate plate =
                IndexPlate.of(ExampleCollars.pattern("CA", ExampleCollars.saw(30), 0, 120, 240, 359.995), SIZES);
        IndexPlate apart =
                IndexPlate.of(ExampleCollars.pattern("CA", ExampleCollars.saw(30), 0, 120, 240, 359.98), SIZES);

        assertThat(plate.notches())
                .extracting(IndexPlate.Notch::holes)
                .containsExactly(List.of(1, 4), List.of(2), List.of(3));
        assertThat(plate.notches().get(0).azimuth()).isZero();
        assertThat(apart.notches()).hasSize(4);
    }

    @Test
    void leastWeb_ofNeighbours_isTheChordLessThePin() {
        // Equilateral: the chord of 60° is the radius. From memory.
        IndexPlate plate = IndexPlate.of(ExampleCollars.pattern("CA", ExampleCollars.saw(30), 0, 60, 180), SIZES);

        assertThat(plate.leastWeb()).isCloseTo(84 - 6, within(1e-9));
        assertThat(plate.sizes().room()).isEqualTo(84 - 3 - 10);
    }
}
