package collarwright.frame;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.units.LengthUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a file says, before vertices are merged: points, edges of faces and lines, each with its place, and faults. */
final class RawFrame {

    /** So many faults of one kind and level are told; the rest are counted. */
    private static final int TOLD = 20;

    private final String file;
    private final boolean lines;
    private final Doubles coordinates = new Doubles();
    private final Ints pointPlaces = new Ints();
    private final Ints ends = new Ints();
    private final Ints edgePlaces = new Ints();
    private final List<Finding> findings = new ArrayList<>();
    private final Map<Kind, Integer> counts = new LinkedHashMap<>();
    private Optional<LengthUnit> unit = Optional.empty();
    private boolean declared;
    private int faces;
    private boolean stopped;

    /** Faults that are counted together: a mild one must not use up the room of a grave one. */
    private record Kind(Code code, Level level) {}

    /**
     * Nothing yet.
     *
     * @param file its name
     * @param lines whether places are lines of text; otherwise records of a binary file
     */
    RawFrame(String file, boolean lines) {
        this.file = file;
        this.lines = lines;
    }

    String file() {
        return file;
    }

    /** Takes the unit that the file names. */
    void unit(LengthUnit named) {
        unit = Optional.of(named);
    }

    Optional<LengthUnit> unit() {
        return unit;
    }

    /** Tells that every point was named as a node, so that one without a member is a fault. */
    void nodesAreDeclared() {
        declared = true;
    }

    boolean declared() {
        return declared;
    }

    /** Takes a point in the file's unit; gives its index. */
    int point(double x, double y, double z, int place) {
        coordinates.add(x);
        coordinates.add(y);
        coordinates.add(z);
        pointPlaces.add(place);
        if (!(Double.isFinite(x) && Double.isFinite(y) && Double.isFinite(z))) {
            stop(
                    Code.FRAME_COORDINATE,
                    at(place),
                    "three finite numbers",
                    x + " " + y + " " + z,
                    "mend the point in the program that wrote it");
        }
        return pointPlaces.size() - 1;
    }

    /** Takes a member that was given for itself. */
    void line(int a, int b, int place) {
        edge(a, b, -1 - place);
    }

    /** Takes an edge of a face. */
    void side(int a, int b, int place) {
        edge(a, b, place);
    }

    private void edge(int a, int b, int place) {
        ends.add(a);
        ends.add(b);
        edgePlaces.add(place);
    }

    /** Takes a face by its corners in their order. */
    void face(int[] corners, int place) {
        faces++;
        for (int i = 0; i < corners.length; i++) {
            side(corners[i], corners[(i + 1) % corners.length], place);
        }
    }

    int faces() {
        return faces;
    }

    int points() {
        return pointPlaces.size();
    }

    double coordinate(int index) {
        return coordinates.get(index);
    }

    int edges() {
        return edgePlaces.size();
    }

    int from(int edge) {
        return ends.get(2 * edge);
    }

    int to(int edge) {
        return ends.get(2 * edge + 1);
    }

    boolean isLine(int edge) {
        return edgePlaces.get(edge) < 0;
    }

    int edgePlace(int edge) {
        int place = edgePlaces.get(edge);
        return place < 0 ? -1 - place : place;
    }

    int pointPlace(int point) {
        return pointPlaces.get(point);
    }

    Where at(int place) {
        return lines ? new Where.Text(file, StrictMath.max(1, place), 1) : new Where.Part(file + " / record " + place);
    }

    void stop(Code code, Where where, String expected, String found, String... hints) {
        add(Finding.stop(code, where, expected, found, hints));
    }

    void add(Finding finding) {
        stopped |= finding.level() == Level.STOP;
        int count = counts.merge(new Kind(finding.code(), finding.level()), 1, Integer::sum);
        if (count <= TOLD) {
            findings.add(finding);
        }
    }

    boolean stopped() {
        return stopped;
    }

    /** All faults, with a count of those that are not told one by one. */
    List<Finding> findings() {
        List<Finding> all = new ArrayList<>(findings);
        counts.forEach((kind, count) -> {
            if (count > TOLD) {
                all.add(new Finding(
                        kind.level(),
                        kind.code(),
                        new Where.Part(file),
                        "none of this kind",
                        (count - TOLD) + " more",
                        List.of("mend those that are shown and read the file again")));
            }
        });
        return all;
    }
}
