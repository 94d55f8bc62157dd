package collarwright.frame;

import collarwright.finding.Code;
import collarwright.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** The groups of one entity of a drawing in their order: a code and a value each. */
final class DxfGroups {

    private static final int EXTRUSION = 210;

    private final RawFrame raw;
    private final String kind;
    private final int place;
    private final Ints codes = new Ints();
    private final Ints places = new Ints();
    private final List<String> values = new ArrayList<>();

    DxfGroups(RawFrame raw, String kind, int place) {
        this.raw = raw;
        this.kind = kind;
        this.place = place;
    }

    String kind() {
        return kind;
    }

    int place() {
        return place;
    }

    void add(int code, String value, int at) {
        codes.add(code);
        values.add(value);
        places.add(at);
    }

    int size() {
        return codes.size();
    }

    int code(int index) {
        return codes.get(index);
    }

    /** The first group of a code; −1 if there is none. */
    private int first(int code) {
        for (int i = 0; i < codes.size(); i++) {
            if (codes.get(i) == code) {
                return i;
            }
        }
        return -1;
    }

    boolean has(int code) {
        return first(code) >= 0;
    }

    /** The number of a group; a finding and 0 where it is none. */
    double number(int index) {
        OptionalDouble number = Numbers.real(values.get(index));
        if (number.isEmpty()) {
            wrong(index, "a number");
        }
        return number.orElse(0);
    }

    /** The number of a code that has to be there; a finding and 0 where it is not. */
    double needed(int code) {
        int at = first(code);
        if (at < 0) {
            raw.stop(
                    Code.FRAME_SYNTAX,
                    raw.at(place),
                    "group " + code + " of " + kind,
                    "none",
                    "mend the entity, or save the drawing again");
            return 0;
        }
        return number(at);
    }

    /** The number of a code, or 0 where there is none. */
    double number(int code, double otherwise) {
        int at = first(code);
        return at < 0 ? otherwise : number(at);
    }

    /** The whole number of a code, or 0 where there is none. */
    int whole(int code) {
        int at = first(code);
        if (at < 0) {
            return 0;
        }
        OptionalInt whole = Numbers.whole(values.get(at));
        if (whole.isEmpty()) {
            wrong(at, "a whole number");
        }
        return whole.orElse(0);
    }

    private void wrong(int index, String expected) {
        raw.stop(
                Code.FRAME_SYNTAX,
                raw.at(places.get(index)),
                expected + " in group " + codes.get(index) + " of " + kind,
                values.get(index).isEmpty() ? "nothing" : values.get(index),
                "mend the entity");
    }

    /** A point in three groups; a missing third is 0, as flat drawings have it. */
    Vec3 point(int code) {
        return new Vec3(needed(code), needed(code + 10), number(code + 20, 0));
    }

    /** Whether the entity lies on a sheet of paper and not in the model. */
    boolean onPaper() {
        return whole(67) == 1;
    }

    /**
     * Brings a point of the entity's own plane into the world by the arbitrary axis algorithm.
     *
     * <p>Source: Autodesk, DXF Reference for AutoCAD 2000, appendix on object coordinate systems (from memory).
     */
    Vec3 world(Vec3 at) {
        Vec3 extrusion = new Vec3(
                number(EXTRUSION, 0), number(EXTRUSION + 10, 0), number(EXTRUSION + 20, has(EXTRUSION) ? 0 : 1));
        double norm = extrusion.norm();
        if (!(norm > 1e-9 && norm < Double.POSITIVE_INFINITY)) {
            raw.stop(
                    Code.FRAME_SYNTAX,
                    raw.at(place),
                    "a direction in groups 210, 220 and 230 of " + kind,
                    extrusion.x() + " " + extrusion.y() + " " + extrusion.z(),
                    "mend the entity");
            return at;
        }
        Vec3 z = extrusion.times(1 / norm);
        boolean steep = StrictMath.abs(z.x()) < 1.0 / 64 && StrictMath.abs(z.y()) < 1.0 / 64;
        Vec3 x = (steep ? new Vec3(0, 1, 0) : new Vec3(0, 0, 1)).cross(z).unit();
        return x.times(at.x()).plus(z.cross(x).times(at.y())).plus(z.times(at.z()));
    }
}
