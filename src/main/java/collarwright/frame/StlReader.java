package collarwright.frame;

import collarwright.finding.Code;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.OptionalDouble;

/**
 * Reads triangles in the format STL, text or binary. A file is binary when its length is what its count of triangles
 * asks for, whatever word it begins with.
 *
 * <p>Source: 3D Systems, StereoLithography Interface Specification, 1989 (from memory).
 */
final class StlReader {

    private static final int HEAD = 84;
    private static final int TRIANGLE = 50;

    private final String file;
    private final byte[] bytes;

    StlReader(String file, byte[] bytes) {
        this.file = file;
        this.bytes = bytes;
    }

    RawFrame read() {
        return binary() ? triangles() : text();
    }

    private long promised() {
        return bytes.length < HEAD
                ? -1
                : ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).getInt(HEAD - 4) & 0xFFFF_FFFFL;
    }

    private boolean binary() {
        if (bytes.length < HEAD) {
            return false;
        }
        return bytes.length == HEAD + TRIANGLE * promised() || !startsWithSolid();
    }

    private boolean startsWithSolid() {
        return new String(bytes, 0, StrictMath.min(bytes.length, 80), StandardCharsets.ISO_8859_1)
                .stripLeading()
                .startsWith("solid");
    }

    private RawFrame triangles() {
        RawFrame raw = new RawFrame(file, false);
        long promised = promised();
        long there = ((long) bytes.length - HEAD) / TRIANGLE;
        if (promised != there || (bytes.length - HEAD) % TRIANGLE != 0) {
            raw.stop(
                    Code.FRAME_SYNTAX,
                    raw.at((int) StrictMath.min(there + 1, Integer.MAX_VALUE)),
                    promised + " triangles, as the file's head promises",
                    there + " whole ones",
                    "the file is cut short or no STL: write it again");
            return raw;
        }
        ByteBuffer in = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
        for (int t = 0; t < there; t++) {
            int at = HEAD + TRIANGLE * t + 12;
            int[] corners = new int[3];
            for (int i = 0; i < 3; i++) {
                corners[i] = raw.point(
                        in.getFloat(at + 12 * i), in.getFloat(at + 12 * i + 4), in.getFloat(at + 12 * i + 8), t + 1);
            }
            raw.face(corners, t + 1);
        }
        return raw;
    }

    private RawFrame text() {
        RawFrame raw = new RawFrame(file, true);
        Lines lines = new Lines(bytes, StandardCharsets.UTF_8);
        Ints corners = new Ints();
        boolean ended = false;
        while (lines.next()) {
            String[] words = lines.line().strip().split("\\s+", -1);
            if (words[0].equals("vertex")) {
                corner(raw, corners, words, lines.number());
            } else if (words[0].equals("endloop")) {
                loop(raw, corners, lines.number());
                corners = new Ints();
            }
            ended |= words[0].equals("endsolid");
        }
        if (!ended) {
            raw.stop(
                    Code.FRAME_SYNTAX,
                    raw.at(lines.number()),
                    "endsolid at the end",
                    "the end of the file",
                    "the file is cut short or no STL: write it again");
        }
        return raw;
    }

    private static void corner(RawFrame raw, Ints corners, String[] words, int place) {
        double[] at = new double[3];
        for (int i = 0; i < 3; i++) {
            OptionalDouble number = words.length == 4 ? Numbers.real(words[i + 1]) : OptionalDouble.empty();
            if (number.isEmpty()) {
                raw.stop(
                        Code.FRAME_SYNTAX,
                        raw.at(place),
                        "vertex and three numbers",
                        String.join(" ", words),
                        "mend the line");
                return;
            }
            at[i] = number.getAsDouble();
        }
        corners.add(raw.point(at[0], at[1], at[2], place));
    }

    private static void loop(RawFrame raw, Ints corners, int place) {
        if (corners.size() == 3) {
            raw.face(corners.toArray(), place);
        } else {
            raw.stop(
                    Code.FRAME_SYNTAX,
                    raw.at(place),
                    "three corners in a facet",
                    corners.size() + "",
                    "mend the facet");
        }
    }
}
