package collarwright.frame;

import collarwright.finding.Code;
import java.nio.charset.StandardCharsets;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Reads the text mesh format OBJ: {@code v}, {@code f} and {@code l}; all else is passed over. Edges of faces and pieces of
 * lines are members.
 *
 * <p>Source: Wavefront, Object Files (.obj), appendix B1 of the Advanced Visualizer manual (from memory).
 */
final class ObjReader {

    private final RawFrame raw;
    private final Lines lines;

    ObjReader(String file, byte[] bytes) {
        this.raw = new RawFrame(file, true);
        this.lines = new Lines(bytes, StandardCharsets.UTF_8);
    }

    RawFrame read() {
        while (lines.next()) {
            int place = lines.number();
            StringBuilder whole = new StringBuilder(lines.line());
            while (whole.length() > 0 && whole.charAt(whole.length() - 1) == '\\' && lines.next()) {
                whole.setLength(whole.length() - 1);
                whole.append(' ').append(lines.line());
            }
            int comment = whole.indexOf("#");
            String text = comment < 0 ? whole.toString() : whole.substring(0, comment);
            statement(text.strip().split("\\s+", -1), place);
        }
        return raw;
    }

    private void statement(String[] words, int place) {
        switch (words[0]) {
            case "v" -> vertex(words, place);
            case "f" -> face(words, place);
            case "l" -> line(words, place);
            default -> {
                // Normals, textures, groups and materials do not matter here.
            }
        }
    }

    private void vertex(String[] words, int place) {
        double[] at = new double[3];
        boolean told = false;
        for (int i = 0; i < 3; i++) {
            OptionalDouble number = i + 1 < words.length ? Numbers.real(words[i + 1]) : OptionalDouble.empty();
            if (number.isEmpty() && !told) {
                raw.stop(
                        Code.FRAME_SYNTAX,
                        raw.at(place),
                        "v and three numbers",
                        String.join(" ", words),
                        "write the point again; a decimal point, no comma");
                told = true;
            }
            at[i] = number.orElse(0);
        }
        raw.point(at[0], at[1], at[2], place);
    }

    private void face(String[] words, int place) {
        int[] corners = corners(words, place);
        if (words.length < 4) {
            raw.stop(
                    Code.FRAME_SYNTAX,
                    raw.at(place),
                    "f and three corners or more",
                    String.join(" ", words),
                    "a face has three corners; write an edge as l");
        } else if (corners.length == words.length - 1) {
            raw.face(corners, place);
        }
    }

    private void line(String[] words, int place) {
        int[] corners = corners(words, place);
        if (words.length < 3) {
            raw.stop(
                    Code.FRAME_SYNTAX, raw.at(place), "l and two points or more", String.join(" ", words), "name both");
        } else if (corners.length == words.length - 1) {
            for (int i = 0; i + 1 < corners.length; i++) {
                raw.line(corners[i], corners[i + 1], place);
            }
        }
    }

    // Indexes count from 1; negative ones count back from the last point. Shorter than the words after a fault.
    private int[] corners(String[] words, int place) {
        Ints found = new Ints();
        for (int i = 1; i < words.length; i++) {
            int slash = words[i].indexOf('/');
            OptionalInt index = Numbers.whole(slash < 0 ? words[i] : words[i].substring(0, slash));
            int point = index.orElse(0) < 0 ? raw.points() + index.orElse(0) : index.orElse(0) - 1;
            if (index.isEmpty() || point < 0 || point >= raw.points()) {
                raw.stop(
                        Code.FRAME_SYNTAX,
                        raw.at(place),
                        "the number of a point that stands above, 1 to " + raw.points(),
                        words[i],
                        "points have to stand before the faces and lines that name them");
            } else {
                found.add(point);
            }
        }
        return found.toArray();
    }
}
