package collarwright.rehearsal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoublePredicate;

/**
 * A hole as the strokes of a program make it.
 *
 * @param at where: X, Y and A; Z is the lowest point reached
 * @param strokes what the tool did from leaving the clear height until it came back to it
 */
record DrilledHole(Pose at, List<Event.Stroke> strokes) {
    DrilledHole {
        strokes = List.copyOf(strokes);
    }

    double bottom() {
        return at.z();
    }

    /** Its cuts in order, one or more. */
    List<Event.Stroke> cuts() {
        return strokes.stream().filter(Event.Stroke::feed).toList();
    }

    /** The line of its first cut. */
    int line() {
        return cuts().get(0).line();
    }

    /** Gathers the strokes at one place between two stays at clear height. */
    static List<DrilledHole> from(Proof proof) {
        return from(proof.strokes(), proof::atClear);
    }

    /** Gathers strokes between two stays at a height that counts as clear. */
    static List<DrilledHole> from(List<Event.Stroke> all, DoublePredicate clear) {
        List<DrilledHole> holes = new ArrayList<>();
        List<Event.Stroke> strokes = new ArrayList<>();
        for (Event.Stroke stroke : all) {
            strokes.add(stroke);
            if (clear.test(stroke.to().z())) {
                close(holes, strokes);
            }
        }
        close(holes, strokes);
        return holes;
    }

    private static void close(List<DrilledHole> holes, List<Event.Stroke> strokes) {
        strokes.stream().filter(Event.Stroke::feed).findFirst().ifPresent(first -> {
            double lowest =
                    strokes.stream().mapToDouble(Event.Stroke::lowest).min().orElse(first.lowest());
            holes.add(new DrilledHole(first.to().withZ(lowest), strokes));
        });
        strokes.clear();
    }
}
