package collarwright.frame;

import collarwright.finding.Code;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Reads the text form of STL: any number of solids, each from {@code solid} to {@code endsolid}, of facets with one loop of
 * three corners. Words may be written in capitals.
 *
 * <p>Source: 3D Systems, StereoLithography Interface Specification, 1989 (from memory).
 */
final class StlText {

    /** A binary file's first bytes are free text, so many. */
    private static final int FIRST = 80;

    private final RawFrame raw;
    private final Lines lines;
    private Ints corners = new Ints();
    private boolean inSolid;
    private boolean inLoop;

    StlText(String file, byte[] bytes) {
        this.raw = new RawFrame(file, true);
        this.lines = new Lines(bytes, StandardCharsets.UTF_8);
    }

    /** Tells whether a file begins as a text does; a binary one may do so too. */
    static boolean startsWithSolid(byte[] bytes) {
        Lines head = new Lines(Arrays.copyOf(bytes, StrictMath.min(bytes.length, FIRST)), StandardCharsets.ISO_8859_1);
        String word = "";
        while (word.isEmpty() && head.next()) {
            word = words(head)[0];
        }
        return word.equals("solid");
    }

    private static String[] words(Lines lines) {
        String[] words = lines.line().strip().split("\\s+", -1);
        words[0] = words[0].toLowerCase(Locale.ROOT);
        return words;
    }

    RawFrame read() {
        boolean begun = false;
        while (lines.next()) {
            String[] words = words(lines);
            switch (words[0]) {
                case "solid" -> {
                    ended(!inSolid, "endsolid before the next solid");
                    inSolid = true;
                    begun = true;
                }
                case "endsolid" -> {
                    ended(!inLoop, "endloop before endsolid");
                    inSolid = false;
                    inLoop = false;
                }
                case "outer" -> {
                    ended(!inLoop, "endloop before the next loop");
                    inLoop = true;
                    corners = new Ints();
                }
                case "vertex" -> corner(words);
                case "endloop" -> loop();
                default -> {
                    // The facets' own words and normals, and empty lines.
                }
            }
        }
        if (!begun || inSolid) {
            raw.stop(
                    Code.FRAME_SYNTAX,
                    raw.at(lines.number()),
                    begun ? "endsolid at the end" : "solid at the beginning, endsolid at the end",
                    "the end of the file",
                    "the file is cut short or no STL: write it again");
        }
        return raw;
    }

    private void ended(boolean well, String expected) {
        if (!well) {
            raw.stop(
                    Code.FRAME_SYNTAX,
                    raw.at(lines.number()),
                    expected,
                    lines.line().strip(),
                    "a piece of the file is missing: write it again");
        }
    }

    private void corner(String[] words) {
        double[] at = new double[3];
        for (int i = 0; i < 3; i++) {
            OptionalDouble number = words.length == 4 ? Numbers.real(words[i + 1]) : OptionalDouble.empty();
            if (number.isEmpty()) {
                raw.stop(
                        Code.FRAME_SYNTAX,
                        raw.at(lines.number()),
                        "vertex and three numbers",
                        String.join(" ", words),
                        "mend the line");
                return;
            }
            at[i] = number.getAsDouble();
        }
        corners.add(raw.point(at[0], at[1], at[2], lines.number()));
    }

    private void loop() {
        inLoop = false;
        if (corners.size() == 3) {
            raw.face(corners.toArray(), lines.number());
        } else {
            raw.stop(
                    Code.FRAME_SYNTAX,
                    raw.at(lines.number()),
                    "three corners in a facet",
                    corners.size() + "",
                    "mend the facet");
        }
        corners = new Ints();
    }
}
