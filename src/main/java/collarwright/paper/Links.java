package collarwright.paper;

import java.nio.charset.StandardCharsets;

/** Addresses of the pack's files. */
final class Links {

    private Links() {}

    /** A path of the pack as a link. */
    static String to(String path) {
        StringBuilder link = new StringBuilder();
        for (byte b : path.getBytes(StandardCharsets.UTF_8)) {
            char c = (char) (b & 0xFF);
            if (c < 0x80 && (Character.isLetterOrDigit(c) || "-_.~/".indexOf(c) >= 0)) {
                link.append(c);
            } else {
                link.append('%')
                        .append(Character.toUpperCase(Character.forDigit(c >> 4, 16)))
                        .append(Character.toUpperCase(Character.forDigit(c & 15, 16)));
            }
        }
        return link.toString();
    }
}
