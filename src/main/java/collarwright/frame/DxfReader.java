package collarwright.frame;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.units.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Reads the drawing format DXF, text only: from its entities LINE, 3DFACE, POLYLINE (3D, polygon mesh, polyface) and
 * LWPOLYLINE; {@code $INSUNITS} names the unit.
 *
 * <p>Source: Autodesk, DXF Reference for AutoCAD 2000, chapters on the HEADER and ENTITIES sections.
 */
final class DxfReader {

    private final RawFrame raw;
    private final Lines lines;
    private final Map<String, Integer> unread = new TreeMap<>();
    private int code;
    private String value = "";
    private boolean more;

    DxfReader(String file, byte[] bytes) {
        this.raw = new RawFrame(file, true);
        this.lines = new Lines(bytes, StandardCharsets.UTF_8);
    }

    RawFrame read() {
        step();
        String section = "";
        boolean ended = false;
        while (more) {
            if (code == 0 && value.equals("SECTION")) {
                step();
                section = more && code == 2 ? value : "";
                step();
            } else if (code == 0 && value.equals("ENDSEC")) {
                section = "";
                step();
            } else if (code == 0 && value.equals("EOF")) {
                ended = true;
                step();
            } else if (section.equals("ENTITIES") && code == 0) {
                entity();
            } else if (section.equals("HEADER") && code == 9 && value.equals("$INSUNITS")) {
                step();
                units();
            } else {
                step();
            }
        }
        if (!ended && !raw.stopped()) {
            raw.stop(
                    Code.FRAME_SYNTAX,
                    raw.at(lines.number()),
                    "EOF at the end",
                    "the end of the file",
                    "the file is cut short or no text DXF: write it again as text");
        }
        unread.forEach((kind, count) -> raw.add(Finding.note(
                Code.FRAME_SYNTAX,
                new collarwright.finding.Where.Part(raw.file()),
                "LINE, 3DFACE, POLYLINE or LWPOLYLINE",
                count + " of " + kind,
                "they were passed over")));
        return raw;
    }

    // The next pair of a group code and its value.
    private void step() {
        more = lines.next();
        if (!more) {
            return;
        }
        int number = Numbers.whole(lines.line().strip()).orElse(Integer.MIN_VALUE);
        if (number == Integer.MIN_VALUE) {
            raw.stop(
                    Code.FRAME_SYNTAX,
                    raw.at(lines.number()),
                    "the number of a group",
                    lines.line(),
                    "save the drawing as text DXF again");
            more = false;
            return;
        }
        code = number;
        more = lines.next();
        value = lines.line().strip();
    }

    private void units() {
        if (more && code == 70) {
            Optional<LengthUnit> unit = switch (value) {
                case "1" -> Optional.of(LengthUnit.IN);
                case "2" -> Optional.of(LengthUnit.FT);
                case "4" -> Optional.of(LengthUnit.MM);
                case "5" -> Optional.of(LengthUnit.CM);
                case "6" -> Optional.of(LengthUnit.M);
                default -> Optional.empty();
            };
            unit.ifPresent(raw::unit);
            step();
        }
    }

    private void entity() {
        String kind = value;
        int place = lines.number();
        switch (kind) {
            case "LINE" -> line(group(), place);
            case "3DFACE" -> face(group(), place);
            case "LWPOLYLINE" -> flatPolyline(place);
            case "POLYLINE" -> polyline(place);
            default -> {
                group();
                unread.merge(kind, 1, Integer::sum);
            }
        }
    }

    // The values of an entity by group code, the first of each.
    private Map<Integer, String> group() {
        Map<Integer, String> found = new TreeMap<>();
        step();
        while (more && code != 0) {
            found.putIfAbsent(code, value);
            step();
        }
        return found;
    }

    private double number(Map<Integer, String> group, int at, int place) {
        String text = group.getOrDefault(at, "0");
        OptionalDouble number = Numbers.real(text);
        if (number.isEmpty()) {
            raw.stop(Code.FRAME_SYNTAX, raw.at(place), "a number in group " + at, text, "mend the entity");
        }
        return number.orElse(0);
    }

    private int whole(Map<Integer, String> group, int at) {
        return Numbers.whole(group.getOrDefault(at, "0")).orElse(0);
    }

    private int point(Map<Integer, String> group, int at, int place) {
        return raw.point(number(group, at, place), number(group, at + 10, place), number(group, at + 20, place), place);
    }

    private void line(Map<Integer, String> group, int place) {
        raw.line(point(group, 10, place), point(group, 11, place), place);
    }

    // A triangle repeats its third corner as the fourth; a bit for each edge hides it.
    private void face(Map<Integer, String> group, int place) {
        int[] corners = new int[4];
        for (int i = 0; i < 4; i++) {
            corners[i] = point(group, 10 + i, place);
        }
        boolean triangle = true;
        for (int i = 0; i < 3; i++) {
            triangle &= raw.coordinate(3 * corners[2] + i) == raw.coordinate(3 * corners[3] + i);
        }
        int sides = triangle ? 3 : 4;
        int hidden = whole(group, 70);
        for (int i = 0; i < sides; i++) {
            int bit = triangle && i == 2 ? 3 : i;
            if ((hidden >> i & 1) == 0 && (hidden >> bit & 1) == 0) {
                raw.side(corners[i], corners[(i + 1) % sides], place);
            }
        }
    }

    private void flatPolyline(int place) {
        double height = 0;
        int flags = 0;
        Ints points = new Ints();
        double x = 0;
        step();
        while (more && code != 0) {
            double number = Numbers.real(value).orElse(0);
            if (code == 38) {
                height = number;
            } else if (code == 70) {
                flags = (int) number;
            } else if (code == 10) {
                x = number;
            } else if (code == 20) {
                points.add(raw.point(x, number, height, place));
            }
            step();
        }
        chain(points, (flags & 1) == 1, place);
    }

    private void chain(Ints points, boolean closed, int place) {
        for (int i = 0; i + 1 < points.size(); i++) {
            raw.line(points.get(i), points.get(i + 1), place);
        }
        if (closed && points.size() > 2) {
            raw.line(points.get(points.size() - 1), points.get(0), place);
        }
    }

    private void polyline(int place) {
        Map<Integer, String> head = group();
        int flags = whole(head, 70);
        Ints points = new Ints();
        while (more && code == 0 && value.equals("VERTEX")) {
            int at = lines.number();
            Map<Integer, String> vertex = group();
            boolean faceOnly = (flags & 64) != 0 && (whole(vertex, 70) & 64) == 0;
            if (faceOnly) {
                polyface(vertex, points, at);
            } else {
                points.add(point(vertex, 10, at));
            }
        }
        if (more && code == 0 && value.equals("SEQEND")) {
            group();
        }
        if ((flags & 16) != 0) {
            mesh(points, head, place);
        } else if ((flags & 64) == 0) {
            chain(points, (flags & 1) == 1, place);
        }
    }

    // Corners count from 1; a negative one begins a hidden edge.
    private void polyface(Map<Integer, String> vertex, Ints points, int place) {
        Ints corners = new Ints();
        for (int group = 71; group <= 74; group++) {
            int corner = whole(vertex, group);
            if (StrictMath.abs(corner) > points.size()) {
                raw.stop(
                        Code.FRAME_SYNTAX,
                        raw.at(place),
                        "a corner from 1 to " + points.size(),
                        Integer.toString(corner),
                        "mend the face");
                return;
            }
            if (corner != 0) {
                corners.add(corner);
            }
        }
        for (int i = 0; i < corners.size(); i++) {
            if (corners.get(i) > 0) {
                int next = StrictMath.abs(corners.get((i + 1) % corners.size()));
                raw.side(points.get(corners.get(i) - 1), points.get(next - 1), place);
            }
        }
    }

    private void mesh(Ints points, Map<Integer, String> head, int place) {
        int m = whole(head, 71);
        int n = whole(head, 72);
        int flags = whole(head, 70);
        if (m < 2 || n < 2 || (long) m * n != points.size()) {
            raw.stop(
                    Code.FRAME_SYNTAX,
                    raw.at(place),
                    m + " × " + n + " points of a mesh",
                    points.size() + " points",
                    "the drawing is cut short: save it again");
            return;
        }
        for (int i = 0; i < m; i++) {
            for (int j = 0; j < n; j++) {
                int here = points.get(i * n + j);
                if (i + 1 < m || (flags & 1) != 0) {
                    raw.side(here, points.get((i + 1) % m * n + j), place);
                }
                if (j + 1 < n || (flags & 32) != 0) {
                    raw.side(here, points.get(i * n + (j + 1) % n), place);
                }
            }
        }
    }
}
