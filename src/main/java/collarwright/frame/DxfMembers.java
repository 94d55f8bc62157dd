package collarwright.frame;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.geometry.Vec3;
import java.util.List;

/**
 * Makes members of the entities of a drawing. Lines, faces and 3D polylines stand in the world's coordinates, flat
 * polylines in those of their own plane.
 */
final class DxfMembers {

    private static final int CLOSED = 1;
    private static final int IN_SPACE = 8;
    private static final int MESH = 16;
    private static final int CLOSED_ACROSS = 32;
    private static final int POLYFACE = 64;
    private static final int BULGE = 42;

    private final RawFrame raw;
    private int arcs;
    private int flatPoints;

    DxfMembers(RawFrame raw) {
        this.raw = raw;
    }

    /** Tells what was built otherwise than it is drawn. */
    void tell() {
        if (arcs > 0) {
            raw.add(Finding.warn(
                    Code.FRAME_SYNTAX,
                    new Where.Part(raw.file()),
                    "straight pieces in polylines",
                    arcs + (arcs == 1 ? " arc" : " arcs"),
                    "the chord of each is a member; draw straight lines if you mean something else"));
        }
        if (flatPoints > 0) {
            raw.add(Finding.warn(
                    Code.FRAME_SYNTAX,
                    new Where.Part(raw.file()),
                    "three coordinates for every point",
                    flatPoints + (flatPoints == 1 ? " point" : " points") + " without a z",
                    "0 was taken, as in a flat drawing; save the drawing in 3D if that is wrong"));
        }
    }

    private Vec3 point(DxfGroups group, int code) {
        flatPoints += group.has(code + 20) ? 0 : 1;
        return group.point(code);
    }

    private int put(Vec3 at, int place) {
        return raw.point(at.x(), at.y(), at.z(), place);
    }

    void line(DxfGroups line) {
        int from = put(point(line, 10), line.place());
        raw.line(from, put(point(line, 11), line.place()), line.place());
    }

    // A triangle repeats its third corner as the fourth, or leaves it out; a bit for each edge hides it.
    void face(DxfGroups face) {
        int[] corners = new int[4];
        for (int i = 0; i < 4; i++) {
            boolean left = i == 3 && !face.has(13) && !face.has(23) && !face.has(33);
            corners[i] = left ? corners[2] : put(point(face, 10 + i), face.place());
        }
        boolean triangle = true;
        for (int i = 0; i < 3; i++) {
            triangle &= raw.coordinate(3 * corners[2] + i) == raw.coordinate(3 * corners[3] + i);
        }
        int sides = triangle ? 3 : 4;
        int hidden = face.whole(70);
        for (int i = 0; i < sides; i++) {
            int bit = triangle && i == 2 ? 3 : i;
            if ((hidden >> i & 1) == 0 && (hidden >> bit & 1) == 0) {
                raw.side(corners[i], corners[(i + 1) % sides], face.place());
            }
        }
    }

    void flatPolyline(DxfGroups line) {
        double height = line.number(38, 0);
        Ints points = new Ints();
        for (int i = 0; i < line.size(); i++) {
            if (line.code(i) == 10) {
                boolean pair = i + 1 < line.size() && line.code(i + 1) == 20;
                if (!pair) {
                    raw.stop(
                            Code.FRAME_SYNTAX,
                            raw.at(line.place()),
                            "group 20 after group 10 of LWPOLYLINE",
                            "none",
                            "mend the entity, or save the drawing again");
                } else {
                    Vec3 at = new Vec3(line.number(i), line.number(i + 1), height);
                    points.add(put(line.world(at), line.place()));
                }
            } else if (line.code(i) == BULGE && line.number(i) != 0) {
                arcs++;
            }
        }
        chain(points, (line.whole(70) & CLOSED) != 0, line.place());
    }

    private void chain(Ints points, boolean closed, int place) {
        for (int i = 0; i + 1 < points.size(); i++) {
            raw.line(points.get(i), points.get(i + 1), place);
        }
        if (closed && points.size() > 2) {
            raw.line(points.get(points.size() - 1), points.get(0), place);
        }
    }

    void polyline(DxfGroups head, List<DxfGroups> vertices) {
        int flags = head.whole(70);
        boolean flat = (flags & (IN_SPACE | MESH | POLYFACE)) == 0;
        Ints points = new Ints();
        for (DxfGroups vertex : vertices) {
            if ((flags & POLYFACE) != 0 && (vertex.whole(70) & POLYFACE) == 0) {
                polyface(vertex, points);
            } else {
                Vec3 at = point(vertex, 10);
                points.add(put(flat ? head.world(at) : at, vertex.place()));
                arcs += flat && vertex.number(BULGE, 0) != 0 ? 1 : 0;
            }
        }
        if ((flags & MESH) != 0) {
            mesh(points, head);
        } else if ((flags & POLYFACE) == 0) {
            chain(points, (flags & CLOSED) != 0, head.place());
        }
    }

    // Corners count from 1; a negative one begins a hidden edge.
    private void polyface(DxfGroups vertex, Ints points) {
        Ints corners = new Ints();
        for (int group = 71; group <= 74; group++) {
            int corner = vertex.whole(group);
            if (StrictMath.abs((long) corner) > points.size()) {
                raw.stop(
                        Code.FRAME_SYNTAX,
                        raw.at(vertex.place()),
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
                raw.side(points.get(corners.get(i) - 1), points.get(next - 1), vertex.place());
            }
        }
    }

    private void mesh(Ints points, DxfGroups head) {
        int m = head.whole(71);
        int n = head.whole(72);
        int flags = head.whole(70);
        if (m < 2 || n < 2 || (long) m * n != points.size()) {
            raw.stop(
                    Code.FRAME_SYNTAX,
                    raw.at(head.place()),
                    m + " × " + n + " points of a mesh",
                    points.size() + " points",
                    "the drawing is cut short: save it again");
            return;
        }
        for (int i = 0; i < m; i++) {
            for (int j = 0; j < n; j++) {
                int here = points.get(i * n + j);
                if (i + 1 < m || (flags & CLOSED) != 0) {
                    raw.side(here, points.get((i + 1) % m * n + j), head.place());
                }
                if (j + 1 < n || (flags & CLOSED_ACROSS) != 0) {
                    raw.side(here, points.get(i * n + (j + 1) % n), head.place());
                }
            }
        }
    }
}
