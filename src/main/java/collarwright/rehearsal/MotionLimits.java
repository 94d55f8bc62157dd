package collarwright.rehearsal;

import collarwright.machining.Machine;
import java.util.ArrayList;
import java.util.List;

/** What the moves of every program keep, on every kind of machine. */
final class MotionLimits {

    private MotionLimits() {}

    /**
     * The axes in the order in which they are first stated; in one stroke, in the order of the letters given.
     *
     * @param axes their letters
     * @param lines the line of each
     */
    record Stated(String axes, List<Integer> lines) {
        Stated {
            lines = List.copyOf(lines);
        }
    }

    static Stated firstStated(Replayed program, String letters) {
        StringBuilder order = new StringBuilder();
        List<Integer> lines = new ArrayList<>();
        for (Event.Stroke s : program.strokes()) {
            for (int i = 0; i < letters.length(); i++) {
                char letter = letters.charAt(i);
                if (Double.isNaN(at(s.from(), letter)) && !Double.isNaN(at(s.to(), letter))) {
                    order.append(letter);
                    lines.add(s.line());
                }
            }
        }
        return new Stated(order.toString(), lines);
    }

    private static double at(Pose pose, char letter) {
        return switch (letter) {
            case 'X' -> pose.x();
            case 'Y' -> pose.y();
            case 'Z' -> pose.z();
            default -> pose.a();
        };
    }

    /** The first axes move in the order that is asked for; told at the first that does not. */
    static List<Fault> order(Replayed program, Stated stated, String wanted, String words) {
        String found = stated.axes();
        if (found.equals(wanted)) {
            return List.of();
        }
        int same = 0;
        while (same < found.length() && same < wanted.length() && found.charAt(same) == wanted.charAt(same)) {
            same++;
        }
        List<Event.Stroke> strokes = program.strokes();
        int line = same < found.length()
                ? stated.lines().get(same)
                : strokes.isEmpty() ? 1 : strokes.get(0).line();
        return List.of(new Fault(line, "first motions " + words + " in this order", found.isEmpty() ? "none" : found));
    }

    /** The tool goes up to the clear height first, and ends there. */
    static List<Fault> ends(Replayed program) {
        List<Event.Stroke> strokes = program.strokes();
        if (strokes.isEmpty()) {
            return List.of();
        }
        List<Fault> faults = new ArrayList<>();
        low(program, strokes.get(0), "first of all Z up to ", faults);
        low(program, strokes.get(strokes.size() - 1), "at the end Z up to ", faults);
        return faults;
    }

    private static void low(Replayed program, Event.Stroke stroke, String when, List<Fault> faults) {
        double z = stroke.to().z();
        if (!program.atClear(z)) {
            faults.add(new Fault(stroke.line(), when + program.text(program.clear()), "Z " + program.text(z)));
        }
    }

    /** X, all round an arc, Z and feed stay within what the machine can do. */
    static List<Fault> travel(Replayed program, Event.Stroke stroke) {
        List<Fault> faults = new ArrayList<>();
        Machine.Travel travel = program.machine().travel();
        double slack = program.tolerance();
        boolean arc = stroke.path() instanceof Swept.Arc;
        double least = arc ? stroke.reach().minX() : stroke.to().x();
        double most = arc ? stroke.reach().maxX() : stroke.to().x();
        if (least < travel.minX() - slack || most > travel.maxX() + slack) {
            faults.add(new Fault(
                    stroke.line(),
                    "X between " + program.text(travel.minX()) + " and " + program.text(travel.maxX()),
                    "X " + program.text(most > travel.maxX() + slack ? most : least)));
        }
        double z = stroke.to().z();
        if (z < travel.minZ() - slack || z > travel.maxZ() + slack) {
            faults.add(new Fault(
                    stroke.line(),
                    "Z between " + program.text(travel.minZ()) + " and " + program.text(travel.maxZ()),
                    "Z " + program.text(z)));
        }
        double feed = stroke.drive().feedMmPerMin();
        if (stroke.feed() && feed > travel.maxFeedMmPerMin() + 1e-6) {
            faults.add(new Fault(
                    stroke.line(),
                    "F up to " + program.text(travel.maxFeedMmPerMin()) + " a minute",
                    program.text(feed) + " a minute"));
        }
        return faults;
    }

    /** One axis moves at a time, and only Z cuts. */
    static List<Fault> oneAxis(Event.Stroke stroke) {
        List<Fault> faults = new ArrayList<>();
        int axes = 0;
        for (Word word : stroke.block().words()) {
            axes += "XYZA".indexOf(word.letter()) >= 0 ? 1 : 0;
        }
        if (axes != 1) {
            faults.add(new Fault(stroke.line(), "one axis in a move", axes + " axes"));
        }
        if (stroke.feed() && !stroke.block().has("Z")) {
            faults.add(new Fault(stroke.line(), "cuts along Z only", "another axis"));
        }
        return faults;
    }
}
