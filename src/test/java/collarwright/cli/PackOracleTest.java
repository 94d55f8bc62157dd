package collarwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.testing.Box;
import collarwright.testing.CanonicalMove;
import collarwright.testing.Checker;
import collarwright.testing.EzdxfStrict;
import collarwright.testing.Mutool;
import collarwright.testing.NeedsChecker;
import collarwright.testing.Poppler;
import collarwright.testing.ProjectFolder;
import collarwright.testing.Rs274;
import collarwright.testing.Run;
import collarwright.testing.SvgElements;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The samples' packs, and those of a dome of each kind, as files, held against programs from outside that share no code with ours: an independent model of
 * the plan, the RS274/NGC interpreter, a strict DXF reader, PDF tools. With {@code -Dpacks=FOLDER} it holds the packs in
 * that folder instead.
 */
class PackOracleTest {

    static List<Path> packs() throws IOException {
        String other = System.getProperty("packs");
        List<Path> packs = new ArrayList<>(other == null ? DomePacks.all() : List.of());
        Path top = other == null ? ProjectFolder.top().resolve("output-samples") : Path.of(other);
        try (Stream<Path> found = Files.walk(top, 2)) {
            found.filter(f -> Files.exists(f.resolve("plan.json"))).sorted().forEach(packs::add);
            return packs;
        }
    }

    private static List<Path> files(Path folder, String suffix) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.toString().endsWith(suffix)).sorted().toList();
        }
    }

    // The model was written from the geometry alone, by other methods; it agrees within 1e-6 mm and 1e-6°.
    @ParameterizedTest
    @MethodSource("packs")
    @NeedsChecker(Checker.EZDXF) // the same Python
    void plan_againstTheIndependentModel_agrees(Path pack) {
        Run run = Run.of(List.of(
                "/usr/bin/python3",
                ProjectFolder.checkerScript("plan_model.py").toString(),
                pack.resolve("plan.json").toString()));

        assertThat(run.exit()).as(run.out() + run.err()).isZero();
        assertThat(run.out()).contains("agrees");
    }

    @Test
    @NeedsChecker(Checker.EZDXF) // the same Python
    void model_againstPublishedFigures_holds() {
        Run run = Run.of(List.of(
                "/usr/bin/python3", ProjectFolder.checkerScript("plan_model.py").toString(), "--self-test"));

        assertThat(run.exit()).as(run.out() + run.err()).isZero();
        assertThat(run.out()).contains(" 0 failed");
    }

    // Every hole of the plan is met where the interpreter's moves end at the bottom, at its A, on every collar.
    @ParameterizedTest
    @MethodSource("packs")
    @NeedsChecker(Checker.RS274)
    void programs_inTheOutsideInterpreter_drillThePlannedAngles(Path pack) throws IOException {
        JsonNode plan = new ObjectMapper().readTree(pack.resolve("plan.json").toFile());
        Rs274 interpreter = new Rs274(List.of(new Rs274.Tool(1, 50, 5)));
        for (JsonNode program : plan.get("programs")) {
            Path file = pack.resolve(program.get("file").asText());
            List<CanonicalMove> moves = interpreter.read(file).movesOrFail();
            boolean cuts = !program.get("tools").isEmpty() && !file.toString().contains("-air");
            if (cuts && !file.toString().contains("-mark")) {
                assertSamePlaces(file, drilled(moves), planned(plan, program));
                assertThat(lowest(moves))
                        .as(file.toString())
                        .isCloseTo(plannedBottom(plan, program), within(0.0026 + 0.001));
            }
        }
    }

    /** Where a hole goes in: along the pipe, and the A word. */
    private record Spot(double x, double angleDegrees) {}

    private static List<Spot> drilled(List<CanonicalMove> moves) {
        return moves.stream()
                .filter(move -> move.kind() == CanonicalMove.Kind.FEED)
                .map(move -> new Spot(move.x() * move.unitMm(), move.a()))
                .distinct()
                .toList();
    }

    // A step of a program is 0.001 mm or 0.0001 in, and 0.001 degrees; holes nearly in line are drilled at one angle.
    private static void assertSamePlaces(Path file, List<Spot> drilled, List<Spot> planned) {
        assertThat(drilled).as(file.toString()).hasSameSizeAs(planned);
        for (Spot spot : planned) {
            assertThat(drilled)
                    .as(file + ": " + spot)
                    .anyMatch(d -> StrictMath.abs(d.x() - spot.x()) < 0.004
                            && StrictMath.abs(StrictMath.IEEEremainder(d.angleDegrees() - spot.angleDegrees(), 360))
                                    < 0.0011);
        }
    }

    private static double lowest(List<CanonicalMove> moves) {
        return moves.stream()
                .filter(m -> m.kind() == CanonicalMove.Kind.FEED)
                .mapToDouble(m -> m.z() * m.unitMm())
                .min()
                .orElseThrow();
    }

    // The full diameter is through where the circle of the bore is half a hole away from the crown's line (Pythagoras);
    // the cutter's point goes its own length and the overtravel further. Programs in inches count 0.0001 in.
    private static double plannedBottom(JsonNode plan, JsonNode program) {
        JsonNode inputs = plan.get("inputs");
        double bore = inputs.at("/collar/outerRadiusMm").asDouble()
                - inputs.at("/collar/wallMaxMm").asDouble();
        for (JsonNode cutter : inputs.get("cutters")) {
            if (cutter.get("id").asText().equals(program.get("tools").get(0).asText())) {
                double half = cutter.get("asDrilledMaxMm").asDouble() / 2;
                return StrictMath.sqrt(bore * bore - half * half)
                        - cutter.get("leadMm").asDouble()
                        - inputs.at("/limits/overtravelMm").asDouble();
            }
        }
        throw new AssertionError("no such cutter: " + program);
    }

    private static List<Spot> planned(JsonNode plan, JsonNode program) {
        String cutter = program.get("tools").get(0).asText();
        double middle = plan.at("/inputs/collar/widthMm").asDouble() / 2;
        List<Spot> spots = new ArrayList<>();
        for (JsonNode stick : plan.get("sticks")) {
            if (!stick.get("id").asText().equals(program.get("stick").asText())) {
                continue;
            }
            assertThat(stick.get("top").asText()).isEqualTo("TOP faces the chuck");
            for (JsonNode place : stick.get("places")) {
                for (JsonNode one : plan.get("patterns")) {
                    for (JsonNode hole : one.get("holes")) {
                        if (one.get("id").asText().equals(place.get("pattern").asText())
                                && hole.get("cutter").asText().equals(cutter)) {
                            spots.add(new Spot(
                                    place.get("edgeMm").asDouble()
                                            + middle
                                            - hole.get("heightMm").asDouble(),
                                    hole.get("azimuthDeg").asDouble()));
                        }
                    }
                }
            }
        }
        return spots;
    }

    @ParameterizedTest
    @MethodSource("packs")
    @NeedsChecker(Checker.EZDXF)
    void dxf_bothFlavours_areCleanAndAlike(Path pack) throws IOException {
        for (Path r12 : files(pack.resolve("templates"), "-r12.dxf")) {
            Path r2000 = Path.of(r12.toString().replace("-r12", "-r2000"));
            EzdxfStrict.Reading old = EzdxfStrict.read(r12).orFail();
            EzdxfStrict.Reading young = EzdxfStrict.read(r2000).orFail();
            assertThat(old.version()).isEqualTo("AC1009");
            assertThat(young.version()).isEqualTo("AC1015");
            assertThat(young.entities("CIRCLE")).hasSameSizeAs(old.entities("CIRCLE"));
            assertThat(young.extents().orElseThrow().width())
                    .isCloseTo(old.extents().orElseThrow().width(), within(1e-3));
            assertThat(young.extents().orElseThrow().height())
                    .isCloseTo(old.extents().orElseThrow().height(), within(1e-3));
        }
    }

    // The paper of a wrap is as long as the girth of its own middle and as high as the collar is wide.
    @ParameterizedTest
    @MethodSource("packs")
    @NeedsChecker(Checker.SVGELEMENTS)
    void svg_everyTemplate_measuresTrueInMillimetres(Path pack) throws IOException {
        JsonNode collar =
                new ObjectMapper().readTree(pack.resolve("plan.json").toFile()).at("/inputs/collar");
        double girth = StrictMath.PI * (2 * collar.get("outerRadiusMm").asDouble() + 0.1); // office paper
        List<Path> svgs = files(pack.resolve("templates"), ".svg");
        assertThat(svgs).isNotEmpty();
        for (Path svg : svgs) {
            SvgElements.Sizes sizes = SvgElements.measure(svg);
            Box edge = sizes.boxes().get("CUT-OUTSIDE-1");
            assertThat(edge).as(svg.toString()).isNotNull();
            assertThat(edge.width()).isCloseTo(girth, within(1e-3));
            assertThat(edge.height()).isCloseTo(collar.get("widthMm").asDouble(), within(1e-3));
            Box page = new Box(0, 0, sizes.pageWidth(), sizes.pageHeight());
            assertThat(sizes.boxes().values()).allMatch(box -> page.holds(box, 0));
        }
    }

    @ParameterizedTest
    @MethodSource("packs")
    @NeedsChecker({Checker.MUTOOL, Checker.POPPLER})
    void templates_onPaper_haveTrueBarsOnEveryPage(Path pack) throws IOException {
        for (Path pdf : files(pack.resolve("templates"), ".pdf")) {
            for (int page = 1; page <= Poppler.pages(pdf).size(); page++) {
                List<Double> lengths = new ArrayList<>();
                Mutool.strokes(pdf, page).forEach(s -> lengths.add(s.length()));
                assertThat(lengths)
                        .as(pdf + " page " + page)
                        .filteredOn(l -> near(l, 100))
                        .hasSize(2);
                assertThat(lengths)
                        .as(pdf + " page " + page)
                        .filteredOn(l -> near(l, 101.6))
                        .hasSize(2);
            }
        }
    }

    private static boolean near(double length, double expected) {
        return StrictMath.abs(length - expected) < 0.005;
    }
}
