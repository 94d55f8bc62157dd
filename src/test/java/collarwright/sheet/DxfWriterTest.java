package collarwright.sheet;

import static collarwright.sheet.Sheets.empty;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import collarwright.drawing.Arc;
import collarwright.drawing.Circle;
import collarwright.drawing.ExampleCollars;
import collarwright.drawing.Label;
import collarwright.drawing.Line;
import collarwright.drawing.Point;
import collarwright.drawing.Role;
import collarwright.drawing.RolledBack;
import collarwright.drawing.Sheet;
import collarwright.drawing.WrapSettings;
import collarwright.drawing.WrapTemplate;
import collarwright.testing.Box;
import collarwright.testing.Checker;
import collarwright.testing.DxfJs;
import collarwright.testing.EzdxfStrict;
import collarwright.testing.NeedsChecker;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DxfWriterTest {
    @TempDir
    Path folder;

    private static Sheet small() {
        return empty().with(Role.CUT_OUTSIDE, Sheets.square(30, 30, 50))
                .with(Role.CUT_INSIDE, new Circle(new Point(50, 50), 10.5), Sheets.slot(40, 66))
                .with(
                        Role.MARK,
                        Line.of(40, 50, 60, 50),
                        new Arc(new Point(100, 50), 10, 0, -4),
                        Label.of("O 8", 5, 120, 50))
                .build();
    }

    private Path write(Sheet sheet, DxfFlavour flavour, DxfOutlines outlines) throws IOException {
        Path file = folder.resolve(flavour.suffix() + outlines + ".dxf");
        return Files.writeString(file, DxfWriter.print(sheet, flavour, outlines));
    }

    private static Map<String, Long> counts(EzdxfStrict.Reading reading) {
        return reading.entities().stream()
                .collect(Collectors.groupingBy(
                        e -> e.layer() + " " + e.type().replace("LWPOLYLINE", "POLYLINE"),
                        TreeMap::new,
                        Collectors.counting()));
    }

    private static void same(Box seen, collarwright.drawing.Box planned) {
        assertThat(seen.x()).isCloseTo(planned.left(), offset(1e-3));
        assertThat(seen.y()).isCloseTo(planned.bottom(), offset(1e-3));
        assertThat(seen.width()).isCloseTo(planned.width(), offset(1e-3));
        assertThat(seen.height()).isCloseTo(planned.height(), offset(1e-3));
    }

    @Test
    @NeedsChecker(Checker.EZDXF)
    void print_templates_areSoundAndAlikeInBothFlavours() throws IOException {
        for (WrapSettings settings : ExampleCollars.all()) {
            Sheet sheet = WrapTemplate.of(settings).sheet();
            for (DxfOutlines outlines : DxfOutlines.values()) {
                EzdxfStrict.Reading old =
                        EzdxfStrict.read(write(sheet, DxfFlavour.R12, outlines)).orFail();
                EzdxfStrict.Reading full = EzdxfStrict.read(write(sheet, DxfFlavour.R2000, outlines))
                        .orFail();
                assertThat(old.version()).isEqualTo("AC1009");
                assertThat(full.version()).isEqualTo("AC1015");
                assertThat(old.insunits()).hasValue(4);
                assertThat(full.insunits()).hasValue(4);
                assertThat(counts(old)).isEqualTo(counts(full));
                assertThat(old.layers()).contains("CUT-INSIDE", "CUT-OUTSIDE", "MARK", "NOTE");
                assertThat(full.layers()).contains("CUT-INSIDE", "CUT-OUTSIDE", "MARK", "NOTE");
                same(old.extents().orElseThrow(), sheet.extents());
                same(full.extents().orElseThrow(), sheet.extents());
            }
        }
    }

    @Test
    @NeedsChecker(Checker.EZDXF)
    void print_template_hasOnlyPlainEntities() throws IOException {
        Sheet sheet = WrapTemplate.of(ExampleCollars.six()).sheet();
        EzdxfStrict.Reading reading = EzdxfStrict.read(write(sheet, DxfFlavour.R12, DxfOutlines.LINES_AND_ARCS));
        assertThat(reading.entities().stream().map(EzdxfStrict.Entity::type).distinct())
                .containsExactlyInAnyOrder("LINE", "ARC", "CIRCLE");
        // One pilot circle for each hole.
        assertThat(reading.entities("CIRCLE"))
                .hasSize(6)
                .allMatch(e -> e.layer().equals("MARK"));
        assertThat(reading.entities("LINE").stream().filter(e -> e.layer().equals("CUT-OUTSIDE")))
                .hasSize(4);
        assertThat(reading.entities("ARC")).noneMatch(e -> e.layer().startsWith("CUT"));
    }

    @Test
    @NeedsChecker(Checker.EZDXF)
    void print_template_rolledBackInSpace_meetsThePlannedAxes() throws IOException {
        WrapSettings settings = ExampleCollars.lopsided();
        WrapTemplate template = WrapTemplate.of(settings);
        Sheet sheet = template.sheet();
        for (DxfFlavour flavour : DxfFlavour.values()) {
            EzdxfStrict.Reading reading = EzdxfStrict.read(write(sheet, flavour, DxfOutlines.LINES_AND_ARCS));
            double zero = zeroLine(reading);
            double middle = (sheet.body().bottom() + sheet.body().top()) / 2;
            RolledBack rolled = new RolledBack(zero, middle, 55.05);
            List<Point> marks = reading.entities("CIRCLE").stream()
                    .map(e -> new Point(e.points().get(0).x(), e.points().get(0).y()))
                    .toList();
            assertThat(rolled.misses(marks, settings.pattern().holes(), 55))
                    .allSatisfy(miss -> assertThat(miss).isLessThan(0.01));
            List<Point> mirrored =
                    marks.stream().map(p -> new Point(2 * zero - p.x(), p.y())).toList();
            assertThat(rolled.misses(mirrored, settings.pattern().holes(), 55).subList(1, 3))
                    .allSatisfy(miss -> assertThat(miss).isGreaterThan(10));
        }
    }

    // The longest upright line on the mark layer that starts on the lower edge.
    private static double zeroLine(EzdxfStrict.Reading reading) {
        double edge = reading.entities("LINE").stream()
                .filter(e -> e.layer().equals("CUT-OUTSIDE"))
                .flatMap(e -> e.points().stream())
                .mapToDouble(EzdxfStrict.Point::y)
                .min()
                .orElseThrow();
        return reading.entities("LINE").stream()
                .filter(e -> e.layer().equals("MARK"))
                .filter(e -> e.points().get(0).x() == e.points().get(1).x()
                        && e.points().get(0).y() == edge
                        && e.points().get(1).y() > edge + 5)
                .mapToDouble(e -> e.points().get(0).x())
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @EnumSource(DxfFlavour.class)
    @NeedsChecker(Checker.EZDXF)
    void print_outlineOfLinesAndArcs_chainsEndToEnd(DxfFlavour flavour) throws IOException {
        EzdxfStrict.Reading reading = EzdxfStrict.read(write(small(), flavour, DxfOutlines.LINES_AND_ARCS));
        List<EzdxfStrict.Entity> slot = reading.entities().stream()
                .filter(e -> e.layer().equals("CUT-INSIDE") && !e.type().equals("CIRCLE"))
                .toList();
        assertThat(slot.stream().map(EzdxfStrict.Entity::type)).containsExactly("LINE", "ARC", "LINE", "ARC");
        List<List<Point>> ends = slot.stream().map(DxfWriterTest::ends).toList();
        for (List<Point> one : ends) {
            for (Point end : one) {
                long meeting = ends.stream()
                        .filter(other -> other != one)
                        .filter(other -> other.stream().anyMatch(p -> p.distance(end) < 2e-4))
                        .count();
                assertThat(meeting).as(end.toString()).isEqualTo(1);
            }
        }
    }

    private static List<Point> ends(EzdxfStrict.Entity e) {
        if (e.type().equals("LINE")) {
            return e.points().stream().map(p -> new Point(p.x(), p.y())).toList();
        }
        EzdxfStrict.Point c = e.points().get(0);
        return List.of(e.startDegrees(), e.endDegrees()).stream()
                .map(StrictMath::toRadians)
                .map(a -> new Point(c.x() + e.radius() * StrictMath.cos(a), c.y() + e.radius() * StrictMath.sin(a)))
                .toList();
    }

    @ParameterizedTest
    @EnumSource(DxfFlavour.class)
    @NeedsChecker(Checker.EZDXF)
    void print_polylines_areClosedWithBulges(DxfFlavour flavour) throws IOException {
        EzdxfStrict.Reading reading =
                EzdxfStrict.read(write(small(), flavour, DxfOutlines.POLYLINES)).orFail();
        List<EzdxfStrict.Entity> cuts = reading.entities().stream()
                .filter(e -> e.layer().startsWith("CUT") && e.type().endsWith("POLYLINE"))
                .toList();
        assertThat(cuts).hasSize(2).allMatch(EzdxfStrict.Entity::closed);
        assertThat(cuts.get(0).points().stream().map(EzdxfStrict.Point::bulge)).containsExactly(0.0, 1.0, 0.0, 1.0);
        same(reading.extents().orElseThrow(), small().extents());
    }

    @Test
    @NeedsChecker(Checker.EZDXF)
    void print_clockwiseArc_isTurnedRound() throws IOException {
        EzdxfStrict.Reading reading = EzdxfStrict.read(write(small(), DxfFlavour.R12, DxfOutlines.LINES_AND_ARCS));
        EzdxfStrict.Entity arc = reading.entities("ARC").stream()
                .filter(e -> e.radius() == 10)
                .findFirst()
                .orElseThrow();
        assertThat(arc.startDegrees()).isCloseTo(360 - StrictMath.toDegrees(4), offset(1e-7));
        assertThat(arc.endDegrees()).isZero();
    }

    @ParameterizedTest
    @EnumSource(DxfFlavour.class)
    @NeedsChecker(Checker.DXF_JS)
    void print_template_isReadAlikeByAnotherReader(DxfFlavour flavour) throws IOException {
        Sheet sheet = WrapTemplate.of(ExampleCollars.three()).sheet();
        DxfJs.Reading reading = DxfJs.read(write(sheet, flavour, DxfOutlines.LINES_AND_ARCS));
        assertThat(reading.counts().keySet()).containsExactly("ARC", "CIRCLE", "LINE");
        assertThat(reading.counts()).containsEntry("CIRCLE", 3);
        assertThat(reading.box().x()).isCloseTo(sheet.extents().left(), offset(0.02));
        assertThat(reading.box().y()).isCloseTo(sheet.extents().bottom(), offset(0.02));
        assertThat(reading.box().width()).isCloseTo(sheet.extents().width(), offset(0.02));
        assertThat(reading.box().height()).isCloseTo(sheet.extents().height(), offset(0.02));
    }

    @ParameterizedTest
    @EnumSource(DxfFlavour.class)
    void print_text_isPlainTagsInPairs(DxfFlavour flavour) {
        String text = DxfWriter.print(WrapTemplate.of(ExampleCollars.six()).sheet(), flavour);
        assertThat(text).endsWith("\r\n0\r\nEOF\r\n");
        assertThat(text.codePoints().allMatch(c -> c == '\r' || c == '\n' || (c >= ' ' && c < 127)))
                .isTrue();
        List<String> lines = text.lines().toList();
        assertThat(lines.size() % 2).isZero();
        for (int i = 0; i < lines.size(); i += 2) {
            assertThat(lines.get(i)).matches("[0-9]+");
            String value = lines.get(i + 1);
            assertThat(value).doesNotMatch("-0(\\.0+)?");
            // Groups 30 and 31 of an entity are z.
            if (i > lines.indexOf("ENTITIES") && lines.get(i).matches("3[01]") && i < lines.lastIndexOf("ENDSEC")) {
                assertThat(value).isEqualTo("0.0");
            }
        }
        assertThat(lines)
                .doesNotContain("SPLINE", "ELLIPSE", "HATCH", "TEXT", "MTEXT", "INSERT", "POLYLINE", "LWPOLYLINE");
    }

    @ParameterizedTest
    @EnumSource(DxfFlavour.class)
    void print_everyEntity_hasItsLayersColour(DxfFlavour flavour) {
        List<String> lines = DxfWriter.print(small(), flavour).lines().toList();
        Map<String, String> colours = Map.of("CUT-INSIDE", "1", "CUT-OUTSIDE", "5", "MARK", "7", "NOTE", "8");
        int entities = 0;
        for (int i = 0; i + 3 < lines.size(); i += 2) {
            String layer = lines.get(i + 1);
            if (lines.get(i).equals("8") && colours.containsKey(layer)) {
                assertThat(lines.get(i + 2)).isEqualTo("62");
                assertThat(lines.get(i + 3)).isEqualTo(colours.get(layer));
                entities++;
            }
        }
        assertThat(entities).isGreaterThan(10);
    }
}
