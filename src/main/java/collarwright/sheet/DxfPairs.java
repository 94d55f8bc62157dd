package collarwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Group codes of a DXF and their values.
 *
 * <p>Source: Autodesk, DXF Reference: group codes come in pairs of lines.
 */
final class DxfPairs {
    private static final String CURE = "name a DXF of a pack of ours, R12 or R2000";

    private DxfPairs() {}

    /**
     * A group code and its value.
     *
     * @param code what the value is
     * @param value without blanks around it
     * @param line of the value, from 1
     */
    record Tag(int code, String value, int line) {
        boolean starts(String what) {
            return code == 0 && value.equals(what);
        }
    }

    static List<Tag> read(String text, FileFaults faults) {
        List<Tag> tags = new ArrayList<>();
        List<String> lines = lines(text);
        int end = lines.size();
        while (end > 0 && lines.get(end - 1).isBlank()) {
            end--;
        }
        for (int i = 0; i < end; i += 2) {
            String code = lines.get(i).strip();
            if (code.isEmpty() || code.length() > 4 || FileFaults.digits(code, 0) != code.length()) {
                throw faults.unreadable(i + 1, "a group code, a whole number", FileFaults.shown(code), CURE);
            }
            tags.add(new Tag(
                    Integer.parseInt(code), i + 1 < end ? lines.get(i + 1).strip() : "", i + 2));
        }
        if (tags.isEmpty() || !tags.get(tags.size() - 1).starts("EOF")) {
            faults.add(StrictMath.max(1, end), "EOF at the end: a whole file", "it breaks off");
        }
        return tags;
    }

    // A line ends in CR LF, LF or CR. Read by hand: a file has tens of thousands of them.
    private static List<String> lines(String text) {
        List<String> lines = new ArrayList<>();
        int start = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n' || c == '\r') {
                lines.add(text.substring(start, i));
                if (c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n') {
                    i++;
                }
                start = i + 1;
            }
        }
        lines.add(text.substring(start));
        return lines;
    }

    static Optional<Tag> tag(List<Tag> record, int code) {
        for (Tag tag : record) {
            if (tag.code() == code) {
                return Optional.of(tag);
            }
        }
        return Optional.empty();
    }

    static Optional<String> text(List<Tag> record, int code) {
        return tag(record, code).map(Tag::value);
    }

    /** A whole number of 0 or more; 0 if there is none. */
    static int whole(List<Tag> record, int code) {
        return text(record, code)
                .filter(t -> !t.isEmpty() && t.length() <= 8 && FileFaults.digits(t, 0) == t.length())
                .map(Integer::parseInt)
                .orElse(0);
    }
}
