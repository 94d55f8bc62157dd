package collarwright.rehearsal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;

/**
 * A hole as the strokes of a program make it.
 *
 * @param at where: X, Y and A, of a bored hole those of its axis; Z is the lowest point reached
 * @param strokes what the tool did from leaving the clear height until it came back to it
 */
record DrilledHole(Pose at, List<Event.Stroke> strokes) {
    DrilledHole {
        strokes = List.copyOf(strokes);
    }

    double bottom() {
        return at.z();
    }

    /** How wide it is bored: round the first arc, by a cutter of this size; empty where no arc is. */
    OptionalDouble bored(double toolDiameter) {
        return arc(strokes).stream()
                .mapToDouble(s -> {
                    Swept.Arc arc = (Swept.Arc) s.path();
                    double radius = StrictMath.hypot(
                            s.from().x() - arc.centreX(), s.from().y() - arc.centreY());
                    return 2 * radius + toolDiameter;
                })
                .findFirst();
    }

    /** The first cut along an arc. */
    private static Optional<Event.Stroke> arc(List<Event.Stroke> strokes) {
        return strokes.stream()
                .filter(s -> s.feed() && s.path() instanceof Swept.Arc)
                .findFirst();
    }

    /** Where a hole is: about the first arc's centre, or where the first cut ends. */
    private static Pose place(List<Event.Stroke> strokes, Event.Stroke first) {
        return arc(strokes)
                .map(s -> {
                    Swept.Arc arc = (Swept.Arc) s.path();
                    return new Pose(arc.centreX(), arc.centreY(), s.to().z(), s.to().a());
                })
                .orElse(first.to());
    }

    /** Its cuts in order, one or more. */
    List<Event.Stroke> cuts() {
        return strokes.stream().filter(Event.Stroke::feed).toList();
    }

    /** The line of its first cut. */
    int line() {
        for (Event.Stroke stroke : strokes) {
            if (stroke.feed()) {
                return stroke.line();
            }
        }
        throw new IllegalStateException("a hole without a cut");
    }

    /** Gathers the strokes at one place between two stays at clear height. */
    static List<DrilledHole> from(Proof proof) {
        return from(proof.strokes(), proof::atClear);
    }

    /** Gathers strokes between two stays at a height that counts as clear; a rapid elsewhere begins another hole too. */
    static List<DrilledHole> from(List<Event.Stroke> all, DoublePredicate clear) {
        List<DrilledHole> holes = new ArrayList<>();
        List<Event.Stroke> strokes = new ArrayList<>();
        boolean cut = false;
        for (Event.Stroke stroke : all) {
            if (cut && !stroke.feed() && (stroke.travels() || stroke.turns())) {
                close(holes, strokes);
                cut = false;
            }
            strokes.add(stroke);
            cut |= stroke.feed();
            if (clear.test(stroke.to().z())) {
                close(holes, strokes);
                cut = false;
            }
        }
        close(holes, strokes);
        return holes;
    }

    /** Whether as many are made as are planned. */
    static List<Fault> counted(Replayed program, List<DrilledHole> holes, int planned, String things) {
        if (holes.size() == planned) {
            return List.of();
        }
        List<Event> events = program.events();
        int line = events.isEmpty() ? 1 : events.get(events.size() - 1).line();
        return List.of(new Fault(line, planned + " " + things, holes.size() + " made"));
    }

    private static void close(List<DrilledHole> holes, List<Event.Stroke> strokes) {
        strokes.stream().filter(Event.Stroke::feed).findFirst().ifPresent(first -> {
            double lowest =
                    strokes.stream().mapToDouble(Event.Stroke::lowest).min().orElse(first.lowest());
            holes.add(new DrilledHole(place(strokes, first).withZ(lowest), strokes));
        });
        strokes.clear();
    }
}
