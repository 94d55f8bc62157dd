package collarwright.frame;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** One small frame in every format, by hand: a square pyramid, 2 m wide and 1 m high, given in metres. */
final class SampleFrames {

    static final String OBJ = """
            # a pyramid
            o roof
            v -1 -1 0
            v 1 -1 0
            v 1 1 0 1.0
            v -1 1 0 0.5 0.5 0.5
            vt 0 0
            vn 0 0 1
            v 0 0 1
            f 1/1/1 2/1 5//1
            f 2 3 5
            f -3 -2 -1
            f 4 1 \\
              5
            l 1 2
            """;

    static final String OFF = """
            OFF # a pyramid
            5 4 8
            -1 -1 0
            1 -1 0
            1 1 0
            -1 1 0
            0 0 1
            3 0 1 4
            3 1 2 4 255 0 0
            3 2 3 4
            3 3 0 4
            """;

    static final String CSV = String.join(
            "\r\n",
            "\uFEFFkind;name;x (m);y;z",
            "node;a;-1;-1;0",
            "node;b;1;-1;0",
            "node;\"c;1\";1;1;0",
            "node;d;-1;1;0",
            "node;e;0;0;1",
            "member;a;b",
            "member;b;\"c;1\"",
            "member;\"c;1\";d",
            "member;d;a",
            "member;a;e",
            "member;b;e",
            "member;\"c;1\";e",
            "member;d;e",
            "");

    private static final float[][] CORNERS = {{-1, -1, 0}, {1, -1, 0}, {1, 1, 0}, {-1, 1, 0}, {0, 0, 1}};

    private SampleFrames() {}

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    static String stl() {
        StringBuilder text = new StringBuilder("solid roof\n");
        for (int i = 0; i < 4; i++) {
            text.append("facet normal 0 0 1\nouter loop\n");
            for (int corner : new int[] {i, (i + 1) % 4, 4}) {
                float[] c = CORNERS[corner];
                text.append("vertex ")
                        .append(c[0])
                        .append(' ')
                        .append(c[1])
                        .append(' ')
                        .append(c[2])
                        .append('\n');
            }
            text.append("endloop\nendfacet\n");
        }
        return text.append("endsolid roof\n").toString();
    }

    static byte[] binaryStl(String head) {
        ByteBuffer out = ByteBuffer.allocate(84 + 4 * 50).order(ByteOrder.LITTLE_ENDIAN);
        out.put(bytes(head));
        out.putInt(80, 4);
        for (int i = 0; i < 4; i++) {
            int at = 84 + 50 * i + 12;
            for (int corner : new int[] {i, (i + 1) % 4, 4}) {
                for (float c : CORNERS[corner]) {
                    out.putFloat(at, c);
                    at += 4;
                }
            }
        }
        return out.array();
    }

    static String ply() {
        StringBuilder text = new StringBuilder(head("ascii"));
        for (float[] c : CORNERS) {
            text.append("7 ")
                    .append(c[0])
                    .append(' ')
                    .append(c[1])
                    .append(' ')
                    .append(c[2])
                    .append('\n');
        }
        for (int i = 0; i < 4; i++) {
            text.append("3 ").append(i).append(' ').append((i + 1) % 4).append(" 4\n");
        }
        return text.append("0 1\n").toString();
    }

    private static String head(String format) {
        return "ply\nformat " + format + " 1.0\ncomment by hand\nelement vertex 5\nproperty uchar red\n"
                + "property float x\nproperty float y\nproperty float z\nelement face 4\n"
                + "property list uchar int vertex_indices\nelement edge 1\nproperty int vertex1\nproperty int vertex2\n"
                + "end_header\n";
    }

    static byte[] binaryPly(ByteOrder order) {
        byte[] head = bytes(head(order == ByteOrder.BIG_ENDIAN ? "binary_big_endian" : "binary_little_endian"));
        ByteBuffer out = ByteBuffer.allocate(head.length + 5 * 13 + 4 * 13 + 8).order(order);
        out.put(head);
        for (float[] c : CORNERS) {
            out.put((byte) 200).putFloat(c[0]).putFloat(c[1]).putFloat(c[2]);
        }
        for (int i = 0; i < 4; i++) {
            out.put((byte) 3).putInt(i).putInt((i + 1) % 4).putInt(4);
        }
        return out.putInt(0).putInt(1).array();
    }

    static String dxf() {
        StringBuilder text =
                new StringBuilder("0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n6\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n");
        for (int i = 0; i < 4; i++) {
            text.append("0\nLINE\n8\n0\n").append(point(10, CORNERS[i])).append(point(11, CORNERS[4]));
        }
        text.append("0\nLWPOLYLINE\n70\n1\n38\n0.0\n");
        for (int i = 0; i < 4; i++) {
            text.append("10\n")
                    .append(CORNERS[i][0])
                    .append("\n20\n")
                    .append(CORNERS[i][1])
                    .append('\n');
        }
        return text.append("0\nCIRCLE\n40\n1.0\n0\nENDSEC\n0\nEOF\n").toString();
    }

    static String point(int code, float[] at) {
        return code + "\n" + at[0] + "\n" + (code + 10) + "\n" + at[1] + "\n" + (code + 20) + "\n" + at[2] + "\n";
    }

    /** Every format by a name that says which. */
    static Map<String, byte[]> all() {
        Map<String, byte[]> all = new LinkedHashMap<>();
        all.put("a.obj", bytes(OBJ));
        all.put("a.OFF", bytes(OFF));
        all.put("a.csv", bytes(CSV));
        all.put("text.stl", bytes(stl()));
        all.put("binary.stl", binaryStl("binary"));
        all.put("solid.stl", binaryStl("solid, though it is binary"));
        all.put("text.ply", bytes(ply()));
        all.put("little.ply", binaryPly(ByteOrder.LITTLE_ENDIAN));
        all.put("big.ply", binaryPly(ByteOrder.BIG_ENDIAN));
        all.put("a.dxf", bytes(dxf()));
        return all;
    }
}
