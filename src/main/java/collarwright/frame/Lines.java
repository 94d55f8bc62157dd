package collarwright.frame;

import java.nio.charset.Charset;
import java.util.Arrays;

/** The lines of a text, one after another, without a copy of the whole; a byte order mark of UTF-8 is passed over. */
final class Lines {

    private static final byte[] MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private final byte[] bytes;
    private final Charset charset;
    private int at;
    private int number;
    private String line = "";

    Lines(byte[] bytes, Charset charset) {
        this.bytes = bytes;
        this.charset = charset;
        this.at = marked(bytes) ? MARK.length : 0;
    }

    private static boolean marked(byte[] bytes) {
        return bytes.length >= MARK.length && Arrays.equals(MARK, 0, MARK.length, bytes, 0, MARK.length);
    }

    /** Goes to the next line; false at the end. Lines end in LF, CR or CR LF. */
    boolean next() {
        if (at >= bytes.length) {
            return false;
        }
        int from = at;
        while (at < bytes.length && bytes[at] != '\n' && bytes[at] != '\r') {
            at++;
        }
        line = new String(bytes, from, at - from, charset);
        if (at < bytes.length && bytes[at] == '\r') {
            at++;
            if (at < bytes.length && bytes[at] == '\n') {
                at++;
            }
        } else {
            at++;
        }
        number++;
        return true;
    }

    String line() {
        return line;
    }

    /** From 1. */
    int number() {
        return number;
    }

    /** Where the next line begins. */
    int offset() {
        return at;
    }
}
