package collarwright.frame;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.units.LengthUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Reads a frame from a file of a general program; the end of the name says which format: {@code .obj}, {@code .stl},
 * {@code .ply}, {@code .off}, {@code .dxf} (text) or {@code .csv}.
 *
 * <p>Faults: FRAME_FILE, FRAME_SYNTAX, FRAME_UNIT, FRAME_COORDINATE, FRAME_MEMBER, FRAME_CROSSING, FRAME_LIMIT, each with
 * its place; of one kind and level at most 20 one by one. They come in up to four rounds, because each step needs the one
 * before: what the lines say and the unit; places of points; members; crossings.
 */
public final class FrameReader {

    /** The largest file, bytes. Our choice, no source: a binary mesh of a million triangles. */
    public static final long MOST_BYTES = 64L * 1024 * 1024;

    /** The most nodes. Our choice, no source. */
    public static final int MOST_NODES = 250_000;

    /** The most members. Our choice, no source. */
    public static final int MOST_MEMBERS = 1_000_000;

    private FrameReader() {}

    /**
     * Tells whether a file is too large to be read at all, before it is.
     *
     * @param name its name
     * @param length bytes
     * @return a stop, or empty
     */
    public static Optional<Finding> tooLarge(String name, long length) {
        return length <= MOST_BYTES
                ? Optional.empty()
                : Optional.of(Finding.stop(
                        Code.FRAME_LIMIT,
                        new Where.Part(name),
                        "a file of at most " + MOST_BYTES / 1024 / 1024 + " MB",
                        length / 1024 / 1024 + " MB",
                        "write the frame's lines only, or as a binary file"));
    }

    /**
     * Reads a frame.
     *
     * @param name the file's name; its end says the format
     * @param bytes its content
     * @param options how it is to be read
     * @return the frame and the findings
     */
    public static FrameReading read(String name, byte[] bytes, FrameOptions options) {
        Optional<Finding> large = tooLarge(name, bytes.length);
        if (large.isPresent()) {
            return new FrameReading(Optional.empty(), LengthUnit.MM, List.of(large.get()));
        }
        if (wideText(name, bytes)) {
            Finding wide = Finding.stop(
                    Code.FRAME_FILE,
                    new Where.Part(name),
                    "text in UTF-8 or plain ASCII",
                    "text in UTF-16",
                    "save the file again with the encoding UTF-8");
            return new FrameReading(Optional.empty(), LengthUnit.MM, List.of(wide));
        }
        Optional<RawFrame> raw = raw(name, bytes);
        if (raw.isEmpty()) {
            Finding unknown = Finding.stop(
                    Code.FRAME_FILE,
                    new Where.Part(name),
                    "a file that ends in .obj, .stl, .ply, .off, .dxf or .csv",
                    "another ending",
                    "save the frame in one of these formats");
            return new FrameReading(Optional.empty(), LengthUnit.MM, List.of(unknown));
        }
        return new FrameBuilder(raw.get(), options).build();
    }

    // Two bytes for a letter: a mark at the beginning, or a zero beside the first letter. Binary STL may begin with
    // anything.
    private static boolean wideText(String name, byte[] bytes) {
        if (bytes.length < 2 || name.toLowerCase(Locale.ROOT).endsWith(".stl")) {
            return false;
        }
        int first = bytes[0] & 0xFF;
        int second = bytes[1] & 0xFF;
        boolean marked = (first == 0xFF && second == 0xFE) || (first == 0xFE && second == 0xFF);
        return marked || (first == 0) != (second == 0);
    }

    private static Optional<RawFrame> raw(String name, byte[] bytes) {
        String lower = name.toLowerCase(Locale.ROOT);
        return switch (lower.substring(lower.lastIndexOf('.') + 1)) {
            case "obj" -> Optional.of(new ObjReader(name, bytes).read());
            case "stl" -> Optional.of(new StlReader(name, bytes).read());
            case "ply" -> Optional.of(new PlyReader(name, bytes).read());
            case "off" -> Optional.of(new OffReader(name, bytes).read());
            case "dxf" -> Optional.of(new DxfReader(name, bytes).read());
            case "csv" -> Optional.of(new CsvFrameReader(name, bytes).read());
            default -> Optional.empty();
        };
    }
}
