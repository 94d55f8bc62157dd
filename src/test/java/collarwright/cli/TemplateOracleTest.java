package collarwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The templates as files, read by a reader that only knows the formats, rolled round the pipe in space as a person does it,
 * printed face out and TOP up, and set on every node: each hole has to lie round the strut that goes to the next node. No
 * azimuth of the plan is used, only where the nodes are and which strut goes into which hole.
 *
 * <p>Source: geometry of the cylinder and of the cross product, no table.
 */
class TemplateOracleTest {
    private static final double CLOSE = 0.01;

    /** A place on the sheet as it is read, y up. */
    private record Spot(double x, double y) {}

    /**
     * What is cut out of a sheet.
     *
     * @param holes corners of every hole, in the order of the file, which is the order of their numbers
     * @param edge corners of the paper
     */
    private record Paper(List<List<Spot>> holes, List<Spot> edge) {

        Paper mirrored() {
            Function<List<Spot>, List<Spot>> turn =
                    spots -> spots.stream().map(s -> new Spot(-s.x(), s.y())).toList();
            return new Paper(holes.stream().map(turn).toList(), turn.apply(edge));
        }

        double girth() {
            return most(edge, Spot::x) + most(edge, s -> -s.x());
        }

        double middle() {
            return (most(edge, Spot::y) - most(edge, s -> -s.y())) / 2;
        }

        // An outline is as wide to the left of its axis as to the right.
        double axis(int hole) {
            return (most(holes.get(hole), Spot::x) - most(holes.get(hole), s -> -s.x())) / 2;
        }

        private static double most(List<Spot> spots, ToDoubleFunction<Spot> number) {
            return spots.stream().mapToDouble(number).max().orElseThrow();
        }

        // From outside in front of hole 1, looking along -x with TOP (+z) up, the right hand points along +y.
        Space rolled(Spot spot, double radius) {
            double turn = 2 * StrictMath.PI * (spot.x() - axis(0)) / girth();
            return new Space(radius * StrictMath.cos(turn), radius * StrictMath.sin(turn), spot.y() - middle());
        }
    }

    /** A place or a direction in space. */
    private record Space(double x, double y, double z) {
        Space plus(Space o, double times) {
            return new Space(x + times * o.x, y + times * o.y, z + times * o.z);
        }

        double dot(Space o) {
            return x * o.x + y * o.y + z * o.z;
        }

        Space cross(Space o) {
            return new Space(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
        }

        double length() {
            return StrictMath.sqrt(dot(this));
        }

        Space unit() {
            return new Space(0, 0, 0).plus(this, 1 / length());
        }
    }

    static List<Path> templates() throws IOException {
        List<Path> all = new ArrayList<>();
        for (Path pack : PackOracleTest.packs()) {
            try (Stream<Path> files = Files.list(pack.resolve("templates"))) {
                files.filter(f -> f.toString().matches(".*[.](svg|dxf)"))
                        .sorted()
                        .forEach(all::add);
            }
        }
        return all;
    }

    @ParameterizedTest
    @MethodSource("templates")
    void template_rolledRoundTheCollarOnItsNodes_letsEveryStrutThrough(Path file) throws IOException {
        JsonNode plan = plan(file);
        Paper paper = read(file);
        assertThat(paper.girth())
                .isCloseTo(2 * StrictMath.PI * radius(plan) + StrictMath.PI * 0.1, within(CLOSE)); // office paper
        assertThat(worst(plan, pattern(file), paper)).isLessThan(CLOSE);
    }

    @ParameterizedTest
    @MethodSource("templates")
    void template_mirrored_fails(Path file) throws IOException {
        assertThat(worst(plan(file), pattern(file), read(file).mirrored())).isGreaterThan(1);
    }

    private static JsonNode plan(Path file) throws IOException {
        Path pack = file.getParent().getParent();
        return new ObjectMapper().readTree(pack.resolve("plan.json").toFile());
    }

    private static String pattern(Path file) {
        return String.valueOf(file.getFileName()).replaceAll("[-.].*", "");
    }

    private static double radius(JsonNode plan) {
        return plan.at("/inputs/collar/outerRadiusMm").asDouble();
    }

    // The most by which any corner of any hole is off its cylinder round the strut's line, over all nodes of the
    // pattern.
    private static double worst(JsonNode plan, String pattern, Paper paper) {
        double worst = 0;
        int nodes = 0;
        for (JsonNode node : plan.get("nodes")) {
            JsonNode type = named(plan.get("hubTypes"), node.get("hubType").asText());
            if (type.get("pattern").asText().equals(pattern)) {
                assertThat(node.get("flipped").asBoolean()).isFalse();
                worst = StrictMath.max(worst, off(plan, named(plan.get("patterns"), pattern), node, paper));
                nodes++;
            }
        }
        assertThat(nodes).isPositive();
        return worst;
    }

    private static double off(JsonNode plan, JsonNode pattern, JsonNode node, Paper paper) {
        List<JsonNode> holes = new ArrayList<>();
        pattern.get("holes").forEach(holes::add);
        assertThat(paper.holes())
                .hasSameSizeAs(holes)
                .allSatisfy(h -> assertThat(h).hasSizeGreaterThan(20));
        Space above = axis(plan, node);
        Space first = flat(plan, node, 1, above);
        Space left = above.cross(first);
        double worst = 0;
        for (int i = 0; i < holes.size(); i++) {
            Space strut = flat(plan, node, i + 1, above);
            double half = holes.get(i).get("asDrilledMm").asDouble() / 2;
            for (Spot corner : paper.holes().get(i)) {
                Space p = paper.rolled(corner, radius(plan));
                Space inWorld =
                        new Space(0, 0, 0).plus(first, p.x()).plus(left, p.y()).plus(above, p.z());
                double away = inWorld.cross(strut).length();
                boolean thisSide = inWorld.dot(strut) > 0;
                worst = StrictMath.max(worst, thisSide ? StrictMath.abs(away - half) : 2 * radius(plan));
            }
        }
        return worst;
    }

    // The hub of a sphere stands square to the line from the centre; that of another form as the plan says, which the
    // independent model holds to.
    private static Space axis(JsonNode plan, JsonNode node) {
        JsonNode axis = node.get("axis");
        Space said = new Space(
                axis.get(0).asDouble(), axis.get(1).asDouble(), axis.get(2).asDouble());
        boolean sphere = plan.at("/inputs/dome/heightFactor").asDouble() == 1
                && !plan.at("/inputs/dome/foot").asText().equals("riser");
        if (sphere) {
            assertThat(said.cross(at(node).unit()).length()).isLessThan(1e-12);
        }
        return said;
    }

    // Where the strut of a hole goes, seen from above its hub.
    private static Space flat(JsonNode plan, JsonNode node, int hole, Space above) {
        for (JsonNode member : plan.get("members")) {
            for (String end : List.of("a", "b")) {
                JsonNode here = member.get(end);
                if (here.get("node").asText().equals(node.get("id").asText())
                        && here.get("hole").asInt() == hole) {
                    String other =
                            member.get(end.equals("a") ? "b" : "a").get("node").asText();
                    Space way = at(named(plan.get("nodes"), other)).plus(at(node), -1);
                    return way.plus(above, -way.dot(above)).unit();
                }
            }
        }
        throw new AssertionError("no strut in hole " + hole + " of " + node.get("id"));
    }

    private static Space at(JsonNode node) {
        JsonNode xyz = node.get("xyzMm");
        return new Space(
                xyz.get(0).asDouble(), xyz.get(1).asDouble(), xyz.get(2).asDouble());
    }

    private static JsonNode named(JsonNode list, String id) {
        for (JsonNode one : list) {
            if (one.get("id").asText().equals(id)) {
                return one;
            }
        }
        throw new AssertionError("no " + id);
    }

    private static Paper read(Path file) throws IOException {
        String text = Files.readString(file);
        return file.toString().endsWith(".svg")
                ? new Paper(svg(text, "CUT-INSIDE"), svg(text, "CUT-OUTSIDE").get(0))
                : new Paper(dxf(text, "CUT-INSIDE"), dxf(text, "CUT-OUTSIDE").get(0));
    }

    // Paths of corners only, absolute; y runs down in SVG.
    private static List<List<Spot>> svg(String text, String layer) {
        List<List<Spot>> outlines = new ArrayList<>();
        Matcher path = Pattern.compile("<path id=\"" + layer + "-\\d+\" d=\"([^\"]*)\"")
                .matcher(text);
        while (path.find()) {
            assertThat(path.group(1)).matches("[-ML0-9. ]+Z");
            List<Spot> corners = new ArrayList<>();
            Matcher corner = Pattern.compile("[ML](-?[0-9.]+) (-?[0-9.]+)").matcher(path.group(1));
            while (corner.find()) {
                corners.add(new Spot(Double.parseDouble(corner.group(1)), -Double.parseDouble(corner.group(2))));
            }
            outlines.add(corners);
        }
        return outlines;
    }

    // LWPOLYLINE: a pair of 10 and 20 for every corner. LINE: from 10, 20 to 11, 21; those that follow on make an
    // outline.
    private static List<List<Spot>> dxf(String text, String layer) {
        List<List<Spot>> outlines = new ArrayList<>();
        String[] lines = text.substring(text.indexOf("ENTITIES")).split("\r?\n");
        String kind = "";
        boolean here = false;
        double x = 0;
        double toX = 0;
        Spot end = new Spot(Double.NaN, Double.NaN);
        for (int i = 1; i + 1 < lines.length; i += 2) {
            String code = lines[i].strip();
            String value = lines[i + 1].strip();
            switch (code) {
                case "0" -> {
                    kind = value;
                    here = false;
                }
                case "8" -> {
                    here = value.equals(layer);
                    if (here) {
                        assertThat(kind).isIn("LINE", "LWPOLYLINE");
                    }
                    if (here && kind.equals("LWPOLYLINE")) {
                        outlines.add(new ArrayList<>());
                    }
                }
                case "10" -> x = Double.parseDouble(value);
                case "11" -> toX = Double.parseDouble(value);
                case "20" -> {
                    Spot spot = new Spot(x, Double.parseDouble(value));
                    if (here && kind.equals("LINE") && !spot.equals(end)) {
                        outlines.add(new ArrayList<>());
                    }
                    if (here) {
                        outlines.get(outlines.size() - 1).add(spot);
                    }
                }
                case "21" -> end = here ? new Spot(toX, Double.parseDouble(value)) : end;
                default -> {}
            }
        }
        return outlines;
    }
}
