package collarwright.frame;

import collarwright.finding.Code;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

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
        return bytes.length == HEAD + TRIANGLE * promised() || !StlText.startsWithSolid(bytes);
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
        return new StlText(file, bytes).read();
    }
}
