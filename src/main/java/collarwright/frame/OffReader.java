package collarwright.frame;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Reads the text mesh format OFF: counts, points, faces. A face of two corners is a member.
 *
 * <p>Source: M. Phillips et al., Geomview manual, section on OFF files (from memory).
 */
final class OffReader {

    private final RawFrame raw;
    private final Lines lines;
    private final ArrayDeque<String> words = new ArrayDeque<>();
    private boolean ended;

    OffReader(String file, byte[] bytes) {
        this.raw = new RawFrame(file, true);
        this.lines = new Lines(bytes, StandardCharsets.UTF_8);
    }

    RawFrame read() {
        String head = word();
        int extra = head.endsWith("OFF") ? extra(head) : -1;
        if (extra < 0) {
            raw.stop(Code.FRAME_SYNTAX, raw.at(1), "OFF at the beginning", head, "write the file as plain OFF");
            return raw;
        }
        int points = count("a number of points");
        int faces = count("a number of faces");
        count("a number of edges");
        for (int i = 0; i < points && !ended; i++) {
            double x = real();
            double y = real();
            double z = real();
            if (!ended) {
                raw.point(x, y, z, lines.number());
            }
            for (int skip = 0; skip < extra && !ended; skip++) {
                real();
            }
            if (head.startsWith("C")) {
                restOfLine();
            }
        }
        for (int i = 0; i < faces && !ended; i++) {
            face(points);
        }
        rest(faces);
        return raw;
    }

    private void rest(int faces) {
        int left = 0;
        int place = 0;
        while (!ended && lines.next()) {
            if (!uncommented(lines.line()).isEmpty()) {
                place = left == 0 ? lines.number() : place;
                left++;
            }
        }
        if (left > 0) {
            raw.add(Finding.warn(
                    Code.FRAME_SYNTAX,
                    raw.at(place),
                    faces + " faces, as the file's counts promise",
                    left + (left == 1 ? " line more" : " lines more"),
                    "they were passed over; correct the count of faces if they belong to the frame"));
        }
    }

    private static String uncommented(String line) {
        int comment = line.indexOf('#');
        return (comment < 0 ? line : line.substring(0, comment)).strip();
    }

    // Numbers after the three coordinates: none are counted for colours, which end with the line.
    private static int extra(String head) {
        return switch (head) {
            case "OFF", "COFF" -> 0;
            case "NOFF" -> 3;
            default -> -1;
        };
    }

    private void face(int points) {
        int corners = count("a number of corners");
        Ints found = new Ints();
        for (int i = 0; i < corners && !ended; i++) {
            String word = word();
            OptionalInt index = Numbers.whole(word);
            if (!ended && (index.isEmpty() || index.getAsInt() < 0 || index.getAsInt() >= points)) {
                raw.stop(
                        Code.FRAME_SYNTAX,
                        raw.at(lines.number()),
                        "the number of a point, 0 to " + (points - 1),
                        word,
                        "mend the face");
            } else if (!ended) {
                found.add(index.getAsInt());
            }
        }
        if (!ended && found.size() == corners && corners == 2) {
            raw.line(found.get(0), found.get(1), lines.number());
        } else if (!ended && found.size() == corners && corners > 2) {
            raw.face(found.toArray(), lines.number());
        }
        restOfLine();
    }

    private void restOfLine() {
        words.clear();
    }

    private int count(String what) {
        String word = word();
        OptionalInt number = Numbers.whole(word);
        if (!ended && (number.isEmpty() || number.getAsInt() < 0)) {
            raw.stop(Code.FRAME_SYNTAX, raw.at(lines.number()), what, word, "mend the line");
            ended = true;
        }
        return number.orElse(0);
    }

    private double real() {
        String word = word();
        OptionalDouble number = Numbers.real(word);
        if (!ended && number.isEmpty()) {
            raw.stop(Code.FRAME_SYNTAX, raw.at(lines.number()), "a number", word, "mend the line");
            ended = true;
        }
        return number.orElse(0);
    }

    private String word() {
        while (words.isEmpty()) {
            if (!lines.next()) {
                if (!ended) {
                    raw.stop(
                            Code.FRAME_SYNTAX,
                            raw.at(lines.number()),
                            "as many points and faces as the file's counts promise",
                            "the end of the file",
                            "the file is cut short: write it again");
                    ended = true;
                }
                return "";
            }
            for (String word : uncommented(lines.line()).split("\\s+", -1)) {
                if (!word.isEmpty()) {
                    words.add(word);
                }
            }
        }
        return words.poll();
    }
}
