package collarwright.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.geometry.Vec3;
import collarwright.units.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

/** Files that look well at first sight, and well-made files that look odd. */
class FrameTrapsTest {

    private static final FrameOptions METRES = new FrameOptions(Optional.of(LengthUnit.M), 0.1, false);
    private static final String MARK = "\uFEFF";

    private static FrameReading read(String name, String text) {
        return FrameReader.read(name, SampleFrames.bytes(text), METRES);
    }

    private static List<String> found(FrameReading reading) {
        return reading.findings().stream()
                .map(f -> f.level() + " " + f.where().text() + ": " + f.expected() + " | " + f.found())
                .toList();
    }

    private static String entities(String... entities) {
        return "0\nSECTION\n2\nENTITIES\n" + String.join("", entities) + "0\nENDSEC\n0\nEOF\n";
    }

    private static String groups(String text) {
        return text.replace(' ', '\n') + "\n";
    }

    // Two edges of 21 faces make 20 warnings and more; the members that cross come after them.
    @Test
    void stop_afterManyWarningsOfItsKind_stopsAllTheSame() {
        StringBuilder text = new StringBuilder("v 0 0 0\nv 1 0 0\n");
        StringBuilder faces = new StringBuilder();
        for (int edge = 0; edge < 25; edge++) {
            text.append("v ").append(edge).append(" 5 0\nv ").append(edge).append(" 6 0\n");
            for (int face = 0; face < 3; face++) {
                int corner = 53 + 3 * edge + face;
                faces.append("f ").append(3 + 2 * edge).append(' ').append(4 + 2 * edge);
                faces.append(' ').append(corner).append('\n');
            }
        }
        for (int corner = 0; corner < 75; corner++) {
            text.append("v ")
                    .append(corner / 3.0)
                    .append(" 5.5 ")
                    .append(1 + corner % 3)
                    .append('\n');
        }
        FrameReading reading = read("a.obj", text.append(faces) + "l 51 51\n");
        assertThat(reading.frame()).isEmpty();
        assertThat(reading.findings())
                .filteredOn(f -> f.code() == Code.FRAME_MEMBER && f.level() == Level.STOP)
                .extracting(Finding::expected)
                .containsExactly("a member between two nodes");
        assertThat(found(reading)).contains("WARN a.obj: none of this kind | 5 more");
    }

    // 300,000 points that no line uses, and a pyramid after them: node numbers of more than 18 bits.
    @Test
    void nodes_withHighNumbers_areKeptApart() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 300_000; i++) {
            text.append("v ").append(100 + i).append(" 0 0\n");
        }
        text.append("v 0 0 1\nv 1 1 0\nv -1 1 0\nv -1 -1 0\nv 1 -1 0\n");
        text.append("f -5 -4 -3\nf -5 -3 -2\nf -5 -2 -1\nf -5 -1 -4\n");
        FrameNet net = read("a.obj", text.toString()).frame().orElseThrow();
        assertThat(net.nodeCount()).isEqualTo(5);
        assertThat(net.memberCount()).isEqualTo(8);
    }

    @Test
    void stl_textOfTwoSolids_isReadWholeAndCutShortRefused() {
        String two = SampleFrames.stl() + SampleFrames.stl().replace(" 1.0\n", " -1.0\n");
        assertThat(read("a.stl", two).frame())
                .hasValueSatisfying(net -> assertThat(net.nodeCount()).isEqualTo(6));
        String cut = two.substring(0, two.length() - 60);
        assertThat(found(read("a.stl", cut))).anyMatch(f -> f.contains("endsolid at the end | the end of the file"));
        String torn = two.replaceFirst("endloop\n", "");
        assertThat(found(read("a.stl", torn))).anyMatch(f -> f.contains("endloop before the next loop | outer loop"));
        assertThat(found(read("a.stl", two.replaceFirst("endsolid roof\n", ""))))
                .anyMatch(f -> f.contains("endsolid before the next solid | solid roof"));
    }

    @Test
    void marksAndCapitals_areNoFaults() {
        FrameNet plain = read("a.stl", SampleFrames.stl()).frame().orElseThrow();
        assertThat(read("a.stl", MARK + SampleFrames.stl().toUpperCase(Locale.ROOT))
                        .frame())
                .contains(plain);
        assertThat(read("a.obj", MARK + SampleFrames.OBJ.substring(SampleFrames.OBJ.indexOf("v ")))
                        .frame())
                .isPresent()
                .isEqualTo(read("a.obj", SampleFrames.OBJ).frame());
        assertThat(read("a.off", MARK + SampleFrames.OFF).frame()).isPresent();
        assertThat(read("a.ply", MARK + SampleFrames.ply()).frame()).isPresent();
        assertThat(read("a.dxf", MARK + SampleFrames.dxf()).frame()).isPresent();
    }

    @Test
    void textInUtf16_isCalledSo() {
        for (var charset : List.of(StandardCharsets.UTF_16, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
            FrameReading reading = FrameReader.read("a.obj", SampleFrames.OBJ.getBytes(charset), METRES);
            assertThat(found(reading)).containsExactly("STOP a.obj: text in UTF-8 or plain ASCII | text in UTF-16");
        }
    }

    @Test
    void dxf_wrongAndMissingNumbers_areTold() {
        String line = groups("0 LINE 10 0 20 0 30 0 11 1 21 0 31 0");
        assertThat(found(read("a.dxf", entities(line, groups("0 LWPOLYLINE 70 1 10 12OO 20 0 10 0 20 2 10 2 20 2")))))
                .containsExactly("STOP a.dxf:24:1: a number in group 10 of LWPOLYLINE | 12OO");
        assertThat(found(read("a.dxf", entities(line, groups("0 LWPOLYLINE 70 x 10 1 10 0 20 2")))))
                .containsExactly(
                        "STOP a.dxf:20:1: group 20 after group 10 of LWPOLYLINE | none",
                        "STOP a.dxf:22:1: a whole number in group 70 of LWPOLYLINE | x");
        assertThat(found(read("a.dxf", entities(line, groups("0 LINE 10 0 20 5 30 0 21 5 31 0")))))
                .containsExactly("STOP a.dxf:20:1: group 11 of LINE | none");
        assertThat(found(read("a.dxf", entities(line, groups("0 LINE 10 5 20 0 11 5 21 5")))))
                .containsExactly("WARN a.dxf: three coordinates for every point | 2 points without a z");
    }

    // Source: Autodesk, DXF Reference for AutoCAD 2000, 3DFACE: the fourth corner is the third where only three are
    // given
    // (from memory).
    @Test
    void dxf_faceOfThreeCorners_isATriangle() {
        FrameNet net = read("a.dxf", entities(groups("0 3DFACE 10 0 20 0 30 0 11 1 21 0 31 0 12 0 22 1 32 0")))
                .frame()
                .orElseThrow();
        assertThat(net.memberCount()).isEqualTo(3);
    }

    @Test
    void dxf_arcsAndSheets_areTold() {
        String flat = groups("0 LWPOLYLINE 70 0 10 0 20 0 42 0.5 10 2 20 0 42 0 10 2 20 2");
        String paper = groups("0 LINE 67 1 10 7 20 0 30 0 11 9 21 0 31 0");
        FrameReading reading = read("a.dxf", entities(flat, paper));
        assertThat(found(reading))
                .containsExactly(
                        "WARN a.dxf: straight pieces in polylines | 1 arc",
                        "NOTE a.dxf: LINE, 3DFACE, POLYLINE or LWPOLYLINE of the model | 1 of LINE on a sheet of paper");
        assertThat(reading.frame().orElseThrow().memberCount()).isEqualTo(2);
    }

    // Planes whose axes are plain: seen from below x is turned round; a plane square to +x has its x along +y; one that
    // leans by (0.6, 0, 0.8) has its x along +y and its y along (−0.8, 0, 0.6). Worked by hand from the arbitrary axis
    // algorithm: Autodesk, DXF Reference for AutoCAD 2000, appendix on object coordinate systems (from memory).
    @Test
    void dxf_flatPolylinesOfOtherPlanes_standInTheWorld() {
        check("210 0 220 0 230 -1", new Vec3(-2000, 0, -500), new Vec3(0, 3000, -500));
        check("210 1 220 0 230 0", new Vec3(500, 2000, 0), new Vec3(500, 0, 3000));
        check("210 0.6 220 0 230 0.8", new Vec3(300, 2000, 400), new Vec3(-2400 + 300, 0, 1800 + 400));
        check("210 0 220 0 230 1", new Vec3(2000, 0, 500), new Vec3(0, 3000, 500));
        assertThat(found(read("a.dxf", entities(groups("0 LWPOLYLINE 210 0 220 0 230 0 10 0 20 0 10 1 20 0")))))
                .anyMatch(f -> f.contains("a direction in groups 210, 220 and 230 of LWPOLYLINE | 0.0 0.0 0.0"));
    }

    private static void check(String plane, Vec3 first, Vec3 second) {
        String light = "0 LWPOLYLINE 38 0.5 " + plane + " 10 2 20 0 10 0 20 3";
        String heavy = "0 POLYLINE 66 1 10 0 20 0 30 0.5 " + plane
                + " 0 VERTEX 10 2 20 0 30 0.5 0 VERTEX 10 0 20 3 30 0.5 0 SEQEND";
        for (String one : List.of(light, heavy)) {
            FrameNet net = read("a.dxf", entities(groups(one))).frame().orElseThrow();
            assertThat(net.node(0).minus(first).norm()).as(plane).isCloseTo(0, within(1e-9));
            assertThat(net.node(1).minus(second).norm()).as(plane).isCloseTo(0, within(1e-9));
        }
    }

    @Test
    void ply_listForACoordinate_isRefused() {
        String text = SampleFrames.ply();
        assertThat(found(read("a.ply", text.replace("property float x", "property list uchar float x"))))
                .hasSize(1)
                .allMatch(f -> f.endsWith("a number for x of element vertex | property list uchar float x"));
        assertThat(found(read("a.ply", text.replaceFirst("property list \\w+ \\w+ vertex", "property int vertex"))))
                .hasSize(1)
                .allMatch(f -> f.contains(": a list for vertex_ind"));
    }

    @Test
    void off_linesBeyondTheCounts_areToldOf() {
        assertThat(found(read("a.off", SampleFrames.OFF + "# end\n3 0 1 2\n3 0 2 3\n")))
                .containsExactly("WARN a.off:13:1: 4 faces, as the file's counts promise | 2 lines more");
    }

    // A number with a comma makes two columns; columns that the head names, and empty ones, are no fault.
    @Test
    void csv_surplusColumns_areRefusedUnlessTheHeadNamesThem() {
        String rows = "node,a,0,0,0\nnode,b,1,0,0\nmember,a,b\n";
        assertThat(found(read("a.csv", "kind,id,x (m),y,z\n" + rows.replace("a,0,0,0", "a,0,000,0,000,0,500"))))
                .contains("STOP a.csv:2:1: node, a name and three numbers | node,a,0,000,0,000,0,500");
        assertThat(found(read("a.csv", rows.replace("member,a,b", "member,a,b,c"))))
                .containsExactly("STOP a.csv:3:1: member and the names of two nodes that stand above | member,a,b,c");
        assertThat(read("a.csv", "kind,id,x (m),y,z,remark\n" + rows.replace("0,0,0", "0,0,0,post"))
                        .frame())
                .isPresent();
        assertThat(read("a.csv", rows.replace("\n", ",,,\n")).frame()).isPresent();
    }

    // One strut of 10 km among 40,000 of a metre: with cells as wide as it, all pairs would be compared (many minutes).
    @Test
    void crossings_withOneVeryLongMember_areFoundInTime() {
        int wide = 200;
        StringBuilder text = new StringBuilder();
        for (int i = 0; i <= wide; i++) {
            for (int j = 0; j <= wide; j++) {
                text.append("v ").append(i).append(' ').append(j).append(" 0\n");
            }
        }
        for (int i = 0; i < wide; i++) {
            for (int j = 0; j < wide; j++) {
                int at = i * (wide + 1) + j + 1;
                text.append("l ").append(at).append(' ').append(at + 1).append('\n');
                text.append("l ").append(at).append(' ').append(at + wide + 1).append('\n');
            }
        }
        text.append("v 0.5 0.5 -1\nv 10000 0.5 1\nl -1 -2\n").append("v 50.5 50 -1\nv 50.5 50 1\nl -1 -2\n");
        List<Finding> findings = Assertions.assertTimeoutPreemptively(
                Duration.ofSeconds(60), () -> read("a.obj", text.toString()).findings());
        assertThat(findings)
                .filteredOn(f -> f.code() == Code.FRAME_CROSSING)
                .singleElement()
                .satisfies(f -> assertThat(f.where().text()).contains("N40403/N40404"));
    }

    // Every pair of drawn members of very different lengths is compared by hand.
    @Test
    void crossings_ofDrawnMembers_areThoseOfEveryPair() {
        collarwright.testing.Seeds.each(40, draw -> {
            int count = 60;
            double[] at = new double[6 * count];
            int[] members = new int[2 * count];
            for (int m = 0; m < count; m++) {
                double length = StrictMath.pow(10, draw.between(-2, 2));
                for (int i = 0; i < 3; i++) {
                    at[6 * m + i] = draw.between(-2, 2);
                    at[6 * m + 3 + i] = at[6 * m + i] + length * draw.between(-1, 1);
                }
                members[2 * m] = 2 * m;
                members[2 * m + 1] = 2 * m + 1;
            }
            FrameNet net = new FrameNet(at, members);
            List<String> found = new java.util.ArrayList<>();
            Crossings.each(net, m -> m % 3 == 0, 0.15, (a, b, apart) -> found.add(a + " " + b));
            List<String> pairs = new java.util.ArrayList<>();
            for (int a = 0; a < count; a++) {
                for (int b = a + 1; b < count; b++) {
                    double apart =
                            Segments.apart(net.node(2 * a), net.node(2 * a + 1), net.node(2 * b), net.node(2 * b + 1));
                    if ((a % 3 == 0 || b % 3 == 0) && apart < 0.15) {
                        pairs.add(a + " " + b);
                    }
                }
            }
            assertThat(found).containsExactlyInAnyOrderElementsOf(pairs);
        });
    }
}
