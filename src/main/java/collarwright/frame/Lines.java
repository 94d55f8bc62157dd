package collarwright.frame;

import java.nio.charset.Charset;
import java.util.Arrays;

/** The lines of a text, one after another, without a copy of the whole; a byte order mark of UTF-8 is passed over. */
final class Lines {

    private final byte[] bytes;
    private final Charset charset;
    private int at;
    private int number;
    private String line = "";

    Lines(byte[] bytes, Charset charset) {
        this.bytes = bytes;
        this.charset = charset;
        byte[] mark = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};
        boolean marked = bytes.length >= mark.length && Arrays.equals(mark, 0, mark.length, bytes, 0, mark.length);
        this.at = marked ? mark.length : 0;
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
