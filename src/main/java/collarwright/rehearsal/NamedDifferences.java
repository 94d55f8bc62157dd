package collarwright.rehearsal;

import collarwright.machining.Operation;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * Differences of holes in the words of the shop; alike ones are told once.
 *
 * <p>Frame: X+ toward the free end; the sense of an angle is told as seen from above TOP.
 */
final class NamedDifferences {

    /** This many are named; of more the count is told. */
    private static final int NAMED = 3;

    private final Proof proof;
    private final List<Difference> differences = new ArrayList<>();

    NamedDifferences(Proof proof) {
        this.proof = proof;
    }

    /** One difference: the word it stands in, what is meant, what is there, and the hole's name. */
    private record Difference(int line, String letter, String name, String expected, String found) {}

    static String name(Operation operation) {
        return "collar " + operation.place().collar() + ", " + operation.title();
    }

    void add(int line, String letter, String name, String expected, String found) {
        differences.add(new Difference(line, letter, name, expected, found));
    }

    /** Off along X by so much. */
    void along(int line, Operation operation, double off) {
        String side = off > 0 ? " toward the free end" : " toward the chuck";
        String name = name(operation);
        String where = name + " at X " + proof.text(operation.place().x());
        add(line, "X", name, where, "X " + length(off) + side);
    }

    /** Off round the pipe by so many degrees of the A word. */
    void turned(int line, Operation operation, double off) {
        // A rises with the azimuth where TOP faces the chuck on an RS274 axis; each turned about turns the sense.
        boolean alike = proof.machine().rotary().topTowardChuck()
                == proof.machine().rotary().positive();
        String sense = off > 0 == alike ? "clockwise" : "anticlockwise";
        double arc = Angles.radians(StrictMath.abs(off))
                * proof.settings().work().body().outerRadius();
        String name = name(operation);
        add(
                line,
                "A",
                name,
                name + " at A " + Decimals.fixed(operation.place().angleDegrees(), 3),
                "turned " + Decimals.trimmed(StrictMath.abs(off), 3) + "° too far " + sense
                        + " as seen from above TOP, " + length(arc) + " on the outside");
    }

    /** Made where nothing is planned. */
    void added(int line, String what, Pose at) {
        String angle = Double.isNaN(at.a()) ? "nowhere stated" : Decimals.fixed(at.a(), 3);
        add(line, "", what, "only what the plan has", "added at X " + proof.text(at.x()) + ", A " + angle);
    }

    /** Planned and not made. */
    void missing(int line, Operation operation) {
        String name = name(operation);
        add(
                line,
                "",
                name,
                name + " at X " + proof.text(operation.place().x()) + ", A "
                        + Decimals.fixed(operation.place().angleDegrees(), 3),
                "missing");
    }

    /** The last line up to one, that line included, with such a move; the line itself if there is none. */
    int lineOf(int until, Predicate<Event.Stroke> move) {
        int line = until;
        for (Event.Stroke stroke : proof.strokes()) {
            if (stroke.line() > until) {
                break;
            }
            line = move.test(stroke) ? stroke.line() : line;
        }
        return line;
    }

    /** Faults with the letter of the word they stand in, one for each kind of difference. */
    Map<Fault, String> told() {
        Map<String, List<Difference>> kinds = new LinkedHashMap<>();
        for (Difference d : differences) {
            kinds.computeIfAbsent(d.letter() + d.found(), k -> new ArrayList<>())
                    .add(d);
        }
        Map<Fault, String> told = new LinkedHashMap<>();
        kinds.values().forEach(alike -> told.put(fault(alike), alike.get(0).letter()));
        return told;
    }

    private static Fault fault(List<Difference> alike) {
        Difference first = alike.get(0);
        if (alike.size() == 1) {
            return new Fault(first.line(), first.expected(), first.name() + ": " + first.found());
        }
        List<String> names = alike.stream().limit(NAMED).map(Difference::name).toList();
        String more = alike.size() > NAMED ? " and " + (alike.size() - NAMED) + " more" : "";
        return new Fault(first.line(), first.expected(), String.join("; ", names) + more + ": " + first.found());
    }

    String length(double length) {
        double unit = proof.settings().units().millimetres();
        return Decimals.trimmed(StrictMath.abs(length) / unit, proof.lengthDecimals()) + " "
                + proof.settings().units().symbol();
    }
}
