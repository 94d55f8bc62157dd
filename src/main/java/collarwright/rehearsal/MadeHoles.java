package collarwright.rehearsal;

import collarwright.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/** Holes as the texts made them, found by where they lie along the pipe. */
final class MadeHoles {

    private final NavigableMap<Double, List<Made>> byX = new TreeMap<>();
    private int size;

    /**
     * A hole in the pipe's frame.
     *
     * @param direction from the axis through its middle
     * @param diameter of its cutter
     */
    record Made(Vec3 direction, double diameter) {}

    void add(double x, Vec3 direction, double diameter) {
        byX.computeIfAbsent(x, k -> new ArrayList<>()).add(new Made(direction, diameter));
        size++;
    }

    int size() {
        return size;
    }

    /** Those no further along the pipe than the slack. */
    List<Made> near(double x, double slack) {
        List<Made> near = new ArrayList<>();
        byX.subMap(x - slack, true, x + slack, true).values().forEach(near::addAll);
        return near;
    }
}
