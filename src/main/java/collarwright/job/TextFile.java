package collarwright.job;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.units.Decimals;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * A text that was read from somewhere, with the name that findings call it by.
 *
 * @param name the file's name as the user gave it
 * @param text its whole text, without a byte order mark
 */
public record TextFile(String name, String text) {

    /** The largest file that is read, in bytes: 1 MiB. Our choice: a job of thousands of lines is smaller. */
    public static final int MOST_BYTES = 1 << 20;

    /**
     * Decodes a file.
     *
     * @param name the file's name as the user gave it
     * @param bytes its content
     * @param findings takes JOB_FILE_UNREADABLE if the file is too large or not UTF-8
     * @return the text, or empty after a finding
     */
    public static Optional<TextFile> decode(String name, byte[] bytes, FindingList findings) {
        if (bytes.length > MOST_BYTES) {
            findings.add(Finding.stop(
                    Code.JOB_FILE_UNREADABLE,
                    new Where.Path(name),
                    "a file of at most 1 MiB (1048576 bytes)",
                    bytes.length + " bytes (" + Decimals.trimmed(bytes.length / 1048576.0, 1) + " MiB)",
                    "check that this is the file you mean"));
            return Optional.empty();
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return Optional.of(new TextFile(name, text.startsWith("\ufeff") ? text.substring(1) : text));
        } catch (CharacterCodingException e) {
            findings.add(Finding.stop(
                    Code.JOB_FILE_UNREADABLE,
                    place(name, bytes),
                    "text in UTF-8",
                    "bytes that are no UTF-8",
                    "save the file as UTF-8 in the editor",
                    "check that it is a text file"));
            return Optional.empty();
        }
    }

    // The longest good beginning tells line and column of the first bad byte.
    private static Where place(String name, byte[] bytes) {
        int good = goodBytes(bytes);
        String before = new String(bytes, 0, good, StandardCharsets.UTF_8);
        int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
        String row = before.substring(before.lastIndexOf('\n') + 1);
        return new Where.Text(name, line, 1 + row.codePointCount(0, row.length()));
    }

    private static int goodBytes(byte[] bytes) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        java.nio.CharBuffer out = java.nio.CharBuffer.allocate(bytes.length + 1);
        StandardCharsets.UTF_8.newDecoder().decode(in, out, true);
        return in.position();
    }

    /**
     * Returns one line of the text.
     *
     * @param number from 1
     * @return the line without its end; empty text if there is no such line
     */
    public String line(int number) {
        return text.lines().skip(number - 1L).findFirst().orElse("");
    }
}
