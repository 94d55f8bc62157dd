package collarwright.pack;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * Reads the parts of a zip file in memory by its central directory. Java's own reader of streams refuses the long data
 * descriptors that the workbook's library writes, and its reader of files needs a file.
 *
 * <p>Source: PKWARE, .ZIP File Format Specification, version 6.3.10, 2022, sections 4.3.7, 4.3.12 and 4.3.16.
 */
final class ZippedParts {

    private static final int END = 0x06054b50;
    private static final int END_LENGTH = 22;
    private static final int ENTRY_LENGTH = 46;
    private static final int LOCAL_LENGTH = 30;
    private static final int DEFLATED = 8;

    private final ByteBuffer zip;

    private ZippedParts(byte[] zip) {
        this.zip = ByteBuffer.wrap(zip).order(ByteOrder.LITTLE_ENDIAN);
    }

    /**
     * One part.
     *
     * @param name its path
     * @param content its bytes; not to be changed
     */
    @SuppressWarnings("ArrayRecordComponent")
    record Part(String name, byte[] content) {}

    /** All parts in their order; the file is one that a library has just written, below 2 GB. */
    static List<Part> of(byte[] zip) {
        return new ZippedParts(zip).all();
    }

    private List<Part> all() {
        int end = zip.limit() - END_LENGTH;
        while (end >= 0 && zip.getInt(end) != END) {
            end--;
        }
        if (end < 0) {
            throw new IllegalStateException("no end of a zip file");
        }
        int count = Short.toUnsignedInt(zip.getShort(end + 10));
        int at = zip.getInt(end + 16);
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int nameLength = Short.toUnsignedInt(zip.getShort(at + 28));
            String name = new String(zip.array(), at + ENTRY_LENGTH, nameLength, StandardCharsets.UTF_8);
            parts.add(new Part(name, content(at)));
            at += ENTRY_LENGTH
                    + nameLength
                    + Short.toUnsignedInt(zip.getShort(at + 30))
                    + Short.toUnsignedInt(zip.getShort(at + 32));
        }
        return parts;
    }

    private byte[] content(int entry) {
        boolean deflated = zip.getShort(entry + 10) == DEFLATED;
        int packed = zip.getInt(entry + 20);
        byte[] content = new byte[zip.getInt(entry + 24)];
        int local = zip.getInt(entry + 42);
        int data = local
                + LOCAL_LENGTH
                + Short.toUnsignedInt(zip.getShort(local + 26))
                + Short.toUnsignedInt(zip.getShort(local + 28));
        if (!deflated) {
            zip.get(data, content);
            return content;
        }
        Inflater inflater = new Inflater(true);
        try {
            inflater.setInput(zip.array(), data, packed);
            int length = 0;
            int more = 1;
            while (more > 0 && length < content.length) {
                more = inflater.inflate(content, length, content.length - length);
                length += more;
            }
            if (length != content.length) {
                throw new IllegalStateException("a part that is shorter than it says");
            }
            return content;
        } catch (DataFormatException e) {
            throw new IllegalStateException("a part that cannot be read", e);
        } finally {
            inflater.end();
        }
    }
}
