package collarwright.rehearsal;

import collarwright.geometry.Vec3;
import collarwright.machining.Operation;
import collarwright.machining.ProgramTask;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * How the holes that a text makes differ from the planned ones, in the words of the shop.
 *
 * <p>Frame: X+ toward the free end; the sense of an angle is told as seen from above TOP.
 */
final class HoleDifferences {

    /** This many are named; of more the count is told. */
    private static final int NAMED = 3;

    private final Proof proof;
    private final ProgramTask task;
    private final List<DrilledHole> made;
    private final HolePairs pairs;
    private final List<Difference> differences = new ArrayList<>();

    /** One difference: the word it stands in, what is meant, what is there, and the hole's name. */
    private record Difference(int line, String letter, String name, String expected, String found) {}

    HoleDifferences(Proof proof, ProgramTask task) {
        this.proof = proof;
        this.task = task;
        this.made = DrilledHole.from(proof);
        this.pairs = HolePairs.of(
                made.stream()
                        .map(h -> new HolePairs.Place(h.at().x(), h.at().a()))
                        .toList(),
                task.operations(),
                proof.settings());
    }

    /** The task as if the holes had been planned as they were made, so that the rules judge the rest. */
    ProgramTask asMade() {
        List<Operation> operations = new ArrayList<>();
        for (int i = 0; i < made.size(); i++) {
            Integer of = pairs.plannedOf().get(i);
            Operation like =
                    of == null ? task.operations().get(0) : task.operations().get(of);
            operations.add(moved(like, made.get(i)));
        }
        return operations.isEmpty()
                ? task
                : new ProgramTask(task.load(), task.cutter(), task.cut(), task.heights(), operations, task.tool());
    }

    private Operation moved(Operation like, DrilledHole hole) {
        double bottom = hole.bottom() - proof.file().lift();
        Operation.Place place = new Operation.Place(
                like.place().collar(),
                hole.at().x(),
                azimuth(hole.at().a()),
                hole.at().a());
        return like instanceof Operation.Mark mark
                ? new Operation.Mark(place, mark.meaning(), mark.cutter(), bottom)
                : like instanceof Operation.Drill drill
                        ? new Operation.Drill(place, drill.hole(), drill.cutter(), bottom)
                        : like instanceof Operation.Bore bore
                                ? new Operation.Bore(place, bore.hole(), bore.cutter(), bore.diameter(), bottom)
                                : like;
    }

    /** The azimuth that lies under the tool at an A word, by turning the pipe in space. */
    private double azimuth(double angleDegrees) {
        Vec3 up = new Vec3(0, 0, 1);
        Vec3 top = new Vec3(proof.machine().rotary().topTowardChuck() ? -1 : 1, 0, 0);
        Vec3 drilled = Wrap.drilled(angleDegrees, proof.machine().rotary().positive());
        double azimuth = -StrictMath.atan2(top.dot(up.cross(drilled)), up.dot(drilled));
        return azimuth < 0 ? azimuth + 2 * StrictMath.PI : azimuth;
    }

    /** Whether nothing is cut at all. */
    boolean nothingMade() {
        return made.isEmpty();
    }

    /** Whether the holes are made in another order than planned. */
    boolean reordered() {
        int last = -1;
        for (int i = 0; i < made.size(); i++) {
            Integer of = pairs.plannedOf().get(i);
            if (of != null) {
                if (of < last) {
                    return true;
                }
                last = of;
            }
        }
        return false;
    }

    /** Faults with the letter of the word they stand in, one for each kind of difference. */
    Map<Fault, String> told() {
        for (int i = 0; i < made.size(); i++) {
            Integer of = pairs.plannedOf().get(i);
            if (of == null) {
                added(made.get(i));
            } else {
                compare(made.get(i), task.operations().get(of));
            }
        }
        IntStream.range(0, task.operations().size())
                .filter(j -> !pairs.plannedOf().containsValue(j))
                .forEach(this::missing);
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

    private void compare(DrilledHole hole, Operation operation) {
        double slack = 2 * proof.tolerance();
        double along = hole.at().x() - operation.place().x();
        String name = name(operation);
        if (StrictMath.abs(along) > slack) {
            String side = along > 0 ? " toward the free end" : " toward the chuck";
            add(hole, "X", operation, "at X " + proof.text(operation.place().x()), "X " + length(along) + side);
        }
        double bottom = operation.bottom() + proof.file().lift();
        double deeper = bottom - hole.bottom();
        if (StrictMath.abs(deeper) > slack) {
            String way = deeper > 0 ? " too deep" : " too shallow";
            add(hole, "Z", operation, "to Z " + proof.text(bottom), length(deeper) + way);
        }
        turned(hole, operation, name);
    }

    private void turned(DrilledHole hole, Operation operation, String name) {
        double planned = operation.place().angleDegrees();
        double off = new HolePairs.Place(hole.at().x(), hole.at().a()).offDegrees(planned);
        if (StrictMath.abs(off) <= 2 * proof.angleToleranceDegrees()) {
            return;
        }
        // A rises with the azimuth where TOP faces the chuck on an RS274 axis; each turned about turns the sense.
        boolean alike = proof.machine().rotary().topTowardChuck()
                == proof.machine().rotary().positive();
        String sense = off > 0 == alike ? "clockwise" : "anticlockwise";
        double arc = Angles.radians(StrictMath.abs(off))
                * proof.settings().work().body().outerRadius();
        differences.add(new Difference(
                lineOfTurn(hole),
                "A",
                name,
                name + " at A " + Decimals.fixed(planned, 3),
                "turned " + Decimals.trimmed(StrictMath.abs(off), 3) + "° too far " + sense
                        + " as seen from above TOP, " + length(arc) + " on the outside"));
    }

    /** The line that turned the pipe to where the hole was made; the hole's own if none did. */
    private int lineOfTurn(DrilledHole hole) {
        int line = hole.line();
        for (Event.Stroke stroke : proof.strokes()) {
            if (stroke.line() > hole.line()) {
                break;
            }
            line = stroke.turns() ? stroke.line() : line;
        }
        return line;
    }

    private void added(DrilledHole hole) {
        differences.add(new Difference(
                hole.line(),
                "",
                task.marks() ? "a dimple" : "a hole",
                "only what the plan has",
                "added at X " + proof.text(hole.at().x()) + ", A "
                        + (Double.isNaN(hole.at().a())
                                ? "nowhere stated"
                                : Decimals.fixed(hole.at().a(), 3))));
    }

    private void missing(int number) {
        Operation operation = task.operations().get(number);
        differences.add(new Difference(
                lineOfMissing(number),
                "",
                name(operation),
                name(operation) + " at X " + proof.text(operation.place().x()) + ", A "
                        + Decimals.fixed(operation.place().angleDegrees(), 3),
                "missing"));
    }

    /**
     * Where a hole should be made: the lowest move at its place; else behind the last planned before it that was made, or at
     * the first that was.
     */
    private int lineOfMissing(int number) {
        Operation.Place place = task.operations().get(number).place();
        double slack = 2 * proof.tolerance();
        double least = Double.POSITIVE_INFINITY;
        int line = 0;
        for (Event.Stroke stroke : proof.strokes()) {
            HolePairs.Place at =
                    new HolePairs.Place(stroke.to().x(), stroke.to().a());
            boolean here = StrictMath.abs(at.x() - place.x()) <= slack
                    && StrictMath.abs(at.offDegrees(place.angleDegrees())) <= 2 * proof.angleToleranceDegrees();
            if (here && stroke.to().z() < least) {
                least = stroke.to().z();
                line = stroke.line();
            }
        }
        return line > 0 ? line : lineBehind(number);
    }

    private int lineBehind(int number) {
        int before = -1;
        int line = made.stream().mapToInt(DrilledHole::line).min().orElse(lastLine());
        for (Map.Entry<Integer, Integer> pair : pairs.plannedOf().entrySet()) {
            if (pair.getValue() < number && pair.getValue() > before) {
                before = pair.getValue();
                List<Event.Stroke> strokes = made.get(pair.getKey()).strokes();
                line = strokes.get(strokes.size() - 1).line();
            }
        }
        return line;
    }

    private int lastLine() {
        List<Event> events = proof.events();
        return events.isEmpty() ? 1 : events.get(events.size() - 1).line();
    }

    private void add(DrilledHole hole, String letter, Operation operation, String where, String found) {
        int line = letter.equals("X") ? lineOfTravel(hole) : lowest(hole);
        differences.add(new Difference(line, letter, name(operation), name(operation) + " " + where, found));
    }

    private int lineOfTravel(DrilledHole hole) {
        int line = hole.line();
        for (Event.Stroke stroke : proof.strokes()) {
            if (stroke.line() > hole.line()) {
                break;
            }
            line = stroke.to().x() != stroke.from().x()
                            && stroke.to().x() == hole.at().x()
                    ? stroke.line()
                    : line;
        }
        return line;
    }

    private static int lowest(DrilledHole hole) {
        return hole.strokes().stream()
                .filter(s -> s.to().z() == hole.bottom())
                .findFirst()
                .map(Event.Stroke::line)
                .orElse(hole.line());
    }

    private static String name(Operation operation) {
        return "collar " + operation.place().collar() + ", " + operation.title();
    }

    private String length(double length) {
        double unit = proof.settings().units().millimetres();
        return Decimals.trimmed(StrictMath.abs(length) / unit, proof.lengthDecimals()) + " "
                + proof.settings().units().symbol();
    }
}
