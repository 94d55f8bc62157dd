package collarwright.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.geometry.Vec3;
import collarwright.testing.Seeds;
import collarwright.units.LengthUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Frames read from every format. The files are written by hand after the formats' descriptions. */
class FrameReaderTest {

    private static final FrameOptions METRES = new FrameOptions(Optional.of(LengthUnit.M), 0.1, false);

    static Set<Map.Entry<String, byte[]>> files() {
        return SampleFrames.all().entrySet();
    }

    private static Set<String> members(FrameNet net) {
        Set<String> members = new TreeSet<>();
        for (int m = 0; m < net.memberCount(); m++) {
            List<String> ends = new ArrayList<>(List.of(
                    net.node(net.memberA(m)).toString(),
                    net.node(net.memberB(m)).toString()));
            ends.sort(null);
            members.add(String.join(" to ", ends));
        }
        return members;
    }

    private static FrameNet read(String name, String text, FrameOptions options) {
        FrameReading reading = FrameReader.read(name, SampleFrames.bytes(text), options);
        return reading.frame().orElseThrow(() -> new AssertionError(reading.findings()));
    }

    @ParameterizedTest
    @MethodSource("files")
    void read_everyFormat_givesThePyramid(Map.Entry<String, byte[]> file) {
        FrameReading reading = FrameReader.read(file.getKey(), file.getValue(), METRES);
        FrameNet net = reading.frame().orElseThrow(() -> new AssertionError(reading.findings()));
        assertThat(net.nodeCount()).isEqualTo(5);
        assertThat(members(net))
                .isEqualTo(members(read("a.obj", SampleFrames.OBJ, METRES)))
                .hasSize(8);
        assertThat(IntStream.range(0, 5).mapToObj(net::node)).contains(new Vec3(0, 0, 1000), new Vec3(-1000, -1000, 0));
        assertThat(reading.unit()).isEqualTo(LengthUnit.M);
    }

    @Test
    void read_unitOfTheFile_isTaken() {
        for (String name : List.of("a.csv", "a.dxf")) {
            FrameReading reading = FrameReader.read(
                    name,
                    SampleFrames.all().getOrDefault(name, new byte[0]),
                    new FrameOptions(Optional.empty(), 0, false));
            assertThat(reading.unit()).isEqualTo(LengthUnit.M);
            assertThat(reading.frame()).isPresent();
        }
    }

    @Test
    void read_yUp_isTurnedSoThatZIsUp() {
        FrameNet net = read("a.obj", SampleFrames.OBJ, new FrameOptions(Optional.of(LengthUnit.M), 0, true));
        // (x, y, z) with y up is (x, −z, y) with z up: a quarter turn about x, nothing mirrored.
        assertThat(net.node(4)).isEqualTo(new Vec3(0, -1000, 0));
        assertThat(net.node(2)).isEqualTo(new Vec3(1000, -0.0, 1000));
    }

    @Test
    void merge_nearVertices_areTheFirstOfThem() {
        String text = "v 0 0 0\nv 1000 0 0\nv 0 1000 0\nv 1000.06 0.06 0\nl 1 2\nl 4 3\nl 3 1\n";
        FrameNet net = read("a.obj", text, new FrameOptions(Optional.of(LengthUnit.MM), 0.1, false));
        assertThat(net.nodeCount()).isEqualTo(3);
        assertThat(net.node(1)).isEqualTo(new Vec3(1000, 0, 0));
        assertThat(read("a.obj", text, new FrameOptions(Optional.of(LengthUnit.MM), 0.05, false))
                        .nodeCount())
                .isEqualTo(4);
    }

    @Test
    void dxf_facesMeshesAndPolylines_giveTheirEdges() {
        String face = "0\n3DFACE\n" + SampleFrames.point(10, new float[] {0, 0, 0})
                + SampleFrames.point(11, new float[] {1, 0, 0}) + SampleFrames.point(12, new float[] {1, 1, 0})
                + SampleFrames.point(13, new float[] {0, 1, 0});
        assertThat(dxf(face).memberCount()).isEqualTo(4);
        assertThat(dxf(face + "70\n2\n").memberCount()).isEqualTo(3);
        String triangle = "0\n3DFACE\n" + SampleFrames.point(10, new float[] {0, 0, 0})
                + SampleFrames.point(11, new float[] {1, 0, 0}) + SampleFrames.point(12, new float[] {1, 1, 0})
                + SampleFrames.point(13, new float[] {1, 1, 0});
        assertThat(dxf(triangle).memberCount()).isEqualTo(3);
        String mesh = "0\nPOLYLINE\n66\n1\n70\n16\n71\n3\n72\n2\n";
        String polyline = "0\nPOLYLINE\n66\n1\n70\n9\n";
        String surface = "0\nPOLYLINE\n66\n1\n70\n64\n71\n4\n72\n1\n";
        StringBuilder vertices = new StringBuilder();
        for (float[] at : new float[][] {{0, 0, 0}, {0, 1, 0}, {1, 0, 0}, {1, 1, 0}, {2, 0, 0}, {2, 1, 0}}) {
            vertices.append("0\nVERTEX\n70\n64\n").append(SampleFrames.point(10, at));
        }
        // 3 by 2 points of a grid have 3 · 1 + 2 · 2 edges.
        assertThat(dxf(mesh + vertices + "0\nSEQEND\n").memberCount()).isEqualTo(7);
        String square = "0\nVERTEX\n" + SampleFrames.point(10, new float[] {0, 0, 0}) + "0\nVERTEX\n"
                + SampleFrames.point(10, new float[] {1, 0, 0}) + "0\nVERTEX\n"
                + SampleFrames.point(10, new float[] {1, 1, 5});
        assertThat(dxf(polyline + square + "0\nSEQEND\n").memberCount()).isEqualTo(3);
        String corners = "0\nVERTEX\n70\n128\n71\n1\n72\n2\n73\n4\n74\n-3\n";
        // Of the four edges of 1, 2, 4, −3 the one that begins at the negative corner is hidden.
        assertThat(dxf(surface + vertices + corners + "0\nSEQEND\n").memberCount())
                .isEqualTo(3);
    }

    private static FrameNet dxf(String entities) {
        return read("a.dxf", "0\nSECTION\n2\nENTITIES\n" + entities + "0\nENDSEC\n0\nEOF\n", METRES);
    }

    // The order of a file's nodes and members says nothing about the frame.
    @Test
    void read_shuffledFiles_haveTheSameMembers() {
        Seeds.each(40, draw -> {
            int nodes = 12;
            List<String> points = new ArrayList<>();
            for (int i = 0; i < nodes; i++) {
                points.add(draw.between(-1, 1) + " " + draw.between(-1, 1) + " " + i);
            }
            List<int[]> lines = new ArrayList<>();
            for (int i = 0; i + 1 < nodes; i++) {
                lines.add(new int[] {i, i + 1});
            }
            List<Integer> order =
                    draw.shuffled(IntStream.range(0, nodes).boxed().toList());
            assertThat(members(read("a.obj", obj(points, lines, order), METRES)))
                    .isEqualTo(members(read(
                            "a.obj",
                            obj(
                                    points,
                                    draw.shuffled(lines),
                                    IntStream.range(0, nodes).boxed().toList()),
                            METRES)));
        });
    }

    private static String obj(List<String> points, List<int[]> lines, List<Integer> order) {
        StringBuilder text = new StringBuilder();
        order.forEach(point -> text.append("v ").append(points.get(point)).append('\n'));
        lines.forEach(line -> text.append("l ")
                .append(order.indexOf(line[1]) + 1)
                .append(' ')
                .append(order.indexOf(line[0]) + 1)
                .append('\n'));
        return text.toString();
    }

    // Cut short at every byte, and with drawn bytes changed: findings or a frame, never anything else.
    @ParameterizedTest
    @MethodSource("files")
    void read_damagedFiles_endInFindingsOrAFrame(Map.Entry<String, byte[]> file) {
        byte[] whole = file.getValue();
        for (int length = 0; length < whole.length; length++) {
            told(FrameReader.read(file.getKey(), Arrays.copyOf(whole, length), METRES));
        }
        Seeds.each(300, draw -> {
            byte[] changed = whole.clone();
            for (int i = draw.whole(1, 4); i > 0; i--) {
                changed[draw.whole(0, changed.length - 1)] = (byte) draw.whole(-128, 127);
            }
            told(FrameReader.read(file.getKey(), changed, METRES));
        });
    }

    private static void told(FrameReading reading) {
        if (reading.frame().isEmpty()) {
            assertThat(reading.findings())
                    .anyMatch(f -> f.level() == collarwright.finding.Level.STOP)
                    .allMatch(f -> !f.hints().isEmpty());
        }
    }

    @Test
    void read_largeFrames_areReadOrRefused() {
        // A grid of 300 by 300 nodes has 2 · 300 · 299 members.
        StringBuilder text = new StringBuilder();
        int side = 300;
        for (int i = 0; i < side * side; i++) {
            text.append("v ").append(i % side).append(' ').append(i / side).append(" 0\n");
        }
        for (int i = 0; i < side * side; i++) {
            if (i % side + 1 < side) {
                text.append("l ").append(i + 1).append(' ').append(i + 2).append('\n');
            }
            if (i / side + 1 < side) {
                text.append("l ").append(i + 1).append(' ').append(i + 1 + side).append('\n');
            }
        }
        assertThat(read("a.obj", text.toString(), METRES).memberCount()).isEqualTo(2 * side * (side - 1));
        StringBuilder many = new StringBuilder();
        for (int i = 0; i <= FrameReader.MOST_NODES + 1; i++) {
            many.append("v ").append(i).append(" 0 0\n");
        }
        for (int i = 1; i <= FrameReader.MOST_NODES + 1; i++) {
            many.append("l ").append(i).append(' ').append(i + 1).append('\n');
        }
        assertThat(FrameReader.read("a.obj", SampleFrames.bytes(many.toString()), METRES)
                        .findings())
                .extracting(Finding::code)
                .containsExactly(Code.FRAME_LIMIT);
        assertThat(FrameReader.tooLarge("a.stl", 2L << 30)).isPresent();
        assertThat(FrameReader.tooLarge("a.stl", FrameReader.MOST_BYTES)).isEmpty();
    }

    @Test
    void net_wrongValues_areRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new FrameNet(new double[] {0, 0, Double.NaN}, new int[0]));
        assertThatIllegalArgumentException().isThrownBy(() -> new FrameNet(new double[6], new int[] {1, 0}));
        assertThatIllegalArgumentException().isThrownBy(() -> new FrameNet(new double[6], new int[] {0, 2}));
        assertThatIllegalArgumentException().isThrownBy(() -> new FrameOptions(Optional.empty(), -1, false));
    }
}
