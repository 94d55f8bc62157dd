package collarwright.rehearsal;

import collarwright.geometry.Vec3;
import collarwright.machining.Operation;
import collarwright.machining.ProgramTask;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * How the holes that a text makes differ from the planned ones, in the words of the shop.
 *
 * <p>Frame: X+ toward the free end; the sense of an angle is told as seen from above TOP.
 */
final class HoleDifferences {

    private final Proof proof;
    private final ProgramTask task;
    private final List<DrilledHole> made;
    private final HolePairs pairs;
    private final NamedDifferences differences;

    HoleDifferences(Proof proof, ProgramTask task) {
        this.proof = proof;
        this.task = task;
        this.differences = new NamedDifferences(proof);
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
                DrilledHole hole = made.get(i);
                differences.added(hole.line(), task.marks() ? "a dimple" : "a hole", hole.at());
            } else {
                compare(made.get(i), task.operations().get(of));
            }
        }
        IntStream.range(0, task.operations().size())
                .filter(j -> !pairs.plannedOf().containsValue(j))
                .forEach(j ->
                        differences.missing(lineOfMissing(j), task.operations().get(j)));
        return differences.told();
    }

    private void compare(DrilledHole hole, Operation operation) {
        double slack = 2 * proof.tolerance();
        double along = hole.at().x() - operation.place().x();
        if (StrictMath.abs(along) > slack) {
            double x = hole.at().x();
            int line =
                    differences.lineOf(hole.line(), s -> s.to().x() != s.from().x() && s.to().x() == x);
            differences.along(line, operation, along);
        }
        double bottom = operation.bottom() + proof.file().lift();
        double deeper = bottom - hole.bottom();
        if (StrictMath.abs(deeper) > slack) {
            String way = deeper > 0 ? " too deep" : " too shallow";
            String name = NamedDifferences.name(operation);
            differences.add(
                    lowest(hole), "Z", name, name + " to Z " + proof.text(bottom), differences.length(deeper) + way);
        }
        double off = new HolePairs.Place(hole.at().x(), hole.at().a())
                .offDegrees(operation.place().angleDegrees());
        // NaN, an angle that is nowhere stated, is off.
        if (!(StrictMath.abs(off) <= 2 * proof.angleToleranceDegrees())) {
            differences.turned(differences.lineOf(hole.line(), Event.Stroke::turns), operation, off);
        }
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

    private static int lowest(DrilledHole hole) {
        return hole.strokes().stream()
                .filter(s -> s.to().z() == hole.bottom())
                .findFirst()
                .map(Event.Stroke::line)
                .orElse(hole.line());
    }
}
