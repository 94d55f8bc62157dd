package collarwright.tooling;

import collarwright.hub.Alike;
import collarwright.hub.HubType;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What has to be drilled for a hub type, hole after hole: gap to the next hole, lean and height. It can be read from any
 * hole on, and with the collar turned over, which reads the holes the other way round and heights with the other sign.
 */
final class HoleCycle {

    private static final double TURN = 2 * StrictMath.PI;

    private final HubType type;
    private final double[] heights;

    /**
     * A way to read a cycle.
     *
     * @param flipped whether the collar is turned over
     * @param first the strut whose hole is read first
     */
    record Reading(boolean flipped, int first) {}

    private HoleCycle(HubType type, double[] heights) {
        this.type = type;
        this.heights = heights;
    }

    /**
     * The holes of a hub type.
     *
     * @param type the hub type
     * @param heights of its holes above the mid-plane, by strut
     * @return the cycle
     */
    static HoleCycle of(HubType type, List<Double> heights) {
        return new HoleCycle(
                type, heights.stream().mapToDouble(Double::doubleValue).toArray());
    }

    int size() {
        return heights.length;
    }

    /** The strut at a place of a reading. */
    int strut(Reading reading, int at) {
        return StrictMath.floorMod(reading.flipped() ? reading.first() - at : reading.first() + at, size());
    }

    /** Azimuth of a place from the first hole, the way holes are read, in [0, 2π). */
    double azimuth(Reading reading, int at) {
        double from = type.struts().get(reading.first()).azimuth();
        double to = type.struts().get(strut(reading, at)).azimuth();
        double azimuth = reading.flipped() ? from - to : to - from;
        return azimuth < 0 ? azimuth + TURN : azimuth;
    }

    /** Height of the hole at a place, + toward TOP. */
    double height(Reading reading, int at) {
        double height = heights[strut(reading, at)];
        return reading.flipped() ? 0 - height : height;
    }

    private double gap(Reading reading, int at) {
        int strut = strut(reading, at);
        return type.gapAfter(reading.flipped() ? StrictMath.floorMod(strut - 1, size()) : strut);
    }

    private double lean(Reading reading, int at) {
        return StrictMath.abs(type.struts().get(strut(reading, at)).axialAngle());
    }

    /**
     * Finds the reading that stands for the drilling, whichever hub type or mirror image it was met as: the least by gap,
     * lean and height, hole after hole. A collar that looks the same when turned over is not.
     */
    Reading least() {
        Reading best = new Reading(false, 0);
        for (Reading reading : readings()) {
            best = compare(reading, this, best) < 0 ? reading : best;
        }
        return best;
    }

    /**
     * Finds how this hub type sits on a drilling.
     *
     * @param other the cycle of another hub type, or of this one
     * @param as how it is read
     * @return the first reading that drills the same, not turned over if that can be; empty if there is none
     */
    Optional<Reading> like(HoleCycle other, Reading as) {
        if (size() != other.size()) {
            return Optional.empty();
        }
        return readings().stream()
                .filter(reading -> compare(reading, other, as) == 0)
                .findFirst();
    }

    private List<Reading> readings() {
        return IntStream.range(0, 2 * size())
                .mapToObj(i -> new Reading(i >= size(), i % size()))
                .toList();
    }

    private int compare(Reading mine, HoleCycle other, Reading its) {
        for (int at = 0; at < size(); at++) {
            int gap = compare(gap(mine, at), other.gap(its, at));
            int lean = gap != 0 ? gap : compare(lean(mine, at), other.lean(its, at));
            int height = lean != 0 ? lean : compare(height(mine, at), other.height(its, at));
            if (height != 0) {
                return height;
            }
        }
        return 0;
    }

    private static int compare(double a, double b) {
        boolean same = Alike.EXACT.angle().same(StrictMath.min(a, b), StrictMath.max(a, b));
        return same ? 0 : Double.compare(a, b);
    }
}
