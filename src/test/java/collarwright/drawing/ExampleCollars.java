package collarwright.drawing;

import collarwright.collar.CollarBody;
import collarwright.geometry.Interval;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/** Collars of invented jobs for the tests of sheets. */
public final class ExampleCollars {
    private ExampleCollars() {}

    /** A hole saw that drills as large as it says. */
    public static Cutter saw(double size) {
        return saw(size, Decimals.trimmed(size, 2) + " mm");
    }

    /** A hole saw with its marking. */
    public static Cutter saw(double size, String marked) {
        Interval drills = Interval.of(size);
        return new Cutter("HS-" + marked, CutterKind.HOLE_SAW, marked, size, drills, false, 8, 38, 60, 600, "rack");
    }

    /** A pattern by the azimuths of its holes, all on the mid-plane. */
    public static Pattern pattern(String id, Cutter cutter, double... azimuthDegrees) {
        List<Hole> holes = new ArrayList<>();
        for (double degrees : azimuthDegrees) {
            holes.add(hole(holes.size() + 1, degrees, 0, cutter));
        }
        return new Pattern(id, 6, holes, "KWPARTXB");
    }

    /** One hole. */
    public static Hole hole(int number, double azimuthDegrees, double height, Cutter cutter) {
        return new Hole(number, azimuthDegrees * Math.PI / 180, height, 0.2, cutter.size(), cutter, 0.21, 0.2, 0.22);
    }

    /** A template for a pattern. */
    public static WrapSettings settings(Pattern pattern, double od, double width, boolean measured) {
        return new WrapSettings(
                pattern,
                new CollarBody(od / 2, Interval.of(6), width),
                measured,
                WrapSettings.OFFICE_PAPER,
                new WrapSettings.OrderWords("Bee-yard windbreak, east slope", "HKVWTXNA", 12));
    }

    /** Six holes of 44 mm in a wide collar, gaps of 3v six-way hubs. */
    public static WrapSettings six() {
        return settings(pattern("CA", saw(44, "44 mm"), 0, 55.6906, 117.8453, 180, 235.6906, 297.8453), 160, 80, false);
    }

    /** Five large holes in a small inch pipe: narrow webs. */
    public static WrapSettings five() {
        return settings(pattern("CB", saw(50.8, "2 in"), 0, 72, 144, 216, 288), 114.3, 76, true);
    }

    /** Four holes of a foot hub, with half a turn free. */
    public static WrapSettings four() {
        return settings(pattern("CC", saw(44.2, "1-3/4 in"), 0, 60.1, 121.3, 180), 160.1, 80, true);
    }

    /** Three small holes in a small collar. */
    public static WrapSettings three() {
        return settings(pattern("CD", saw(21.2, "21 mm"), 0, 118, 240), 60, 45, true);
    }

    /** Holes that show a mirrored sheet at once. */
    public static WrapSettings lopsided() {
        return settings(pattern("CE", saw(40, "40 mm"), 0, 50, 170), 110, 70, true);
    }

    /** All of them. */
    public static List<WrapSettings> all() {
        return List.of(six(), five(), four(), three(), lopsided());
    }
}
