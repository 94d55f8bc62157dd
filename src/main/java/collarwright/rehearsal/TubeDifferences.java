package collarwright.rehearsal;

import collarwright.machining.Operation;
import collarwright.machining.ProgramTask;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * How what a tube cutter's text cuts and marks differs from the plan. What was moved as a whole, corner for corner, is told
 * by how far, and judged where it is now; any other change of an outline is left to the rules, which name the hole.
 */
final class TubeDifferences {

    private final Proof proof;
    private final ProgramTask task;
    private final List<TubeStay> made;
    private final List<TubeStay> planned;
    private final Map<Integer, Integer> plannedOf = new HashMap<>();
    private final List<Operation> operations = new ArrayList<>();
    private final NamedDifferences differences;

    /**
     * Pairs what is made with what is planned.
     *
     * @param proof the text that somebody may have edited
     * @param task its plan
     * @param plannedText the planned text's own doing, stay by stay as the plan has it
     */
    TubeDifferences(Proof proof, ProgramTask task, Proof plannedText) {
        this.proof = proof;
        this.task = task;
        this.made = TubeStay.of(proof);
        this.planned = TubeStay.of(plannedText);
        this.differences = new NamedDifferences(proof);
        for (TubeStay.Kind kind : TubeStay.Kind.values()) {
            pair(kind);
        }
        compare();
    }

    /** Faults with the letter of the word they stand in. */
    Map<Fault, String> told() {
        return differences.told();
    }

    /** The task as if it had been planned as it was made, so that the rules judge the rest. */
    ProgramTask asMade() {
        return operations.isEmpty()
                ? task
                : new ProgramTask(task.load(), task.cutter(), task.cut(), task.heights(), operations, task.tool());
    }

    private static TubeStay.Kind kind(Operation operation) {
        return operation instanceof Operation.Contour
                ? TubeStay.Kind.OUTLINE
                : operation instanceof Operation.PartOff ? TubeStay.Kind.ROUND : TubeStay.Kind.SPOT;
    }

    private void pair(TubeStay.Kind kind) {
        int[] ours = IntStream.range(0, made.size())
                .filter(i -> made.get(i).kind() == kind)
                .toArray();
        int[] theirs = IntStream.range(0, task.operations().size())
                .filter(j -> kind(task.operations().get(j)) == kind)
                .toArray();
        List<HolePairs.Place> places = IntStream.of(ours)
                .mapToObj(i -> made.get(i).middle())
                .map(at -> new HolePairs.Place(at.x(), kind == TubeStay.Kind.ROUND ? 0 : at.a()))
                .toList();
        List<Operation> wanted =
                IntStream.of(theirs).mapToObj(j -> task.operations().get(j)).toList();
        HolePairs.of(places, wanted, proof.settings()).plannedOf().forEach((i, j) -> plannedOf.put(ours[i], theirs[j]));
    }

    private void compare() {
        for (int i = 0; i < made.size(); i++) {
            Integer of = plannedOf.get(i);
            operations.add(of == null ? added(made.get(i)) : moved(made.get(i), of));
        }
        for (int j = 0; j < task.operations().size(); j++) {
            if (!plannedOf.containsValue(j)) {
                differences.missing(lineBehind(j), task.operations().get(j));
            }
        }
    }

    /** The last line of what stands before it in the plan and was made; else where the first begins. */
    private int lineBehind(int number) {
        int before = -1;
        int line = made.isEmpty() ? 1 : made.get(0).line();
        for (Map.Entry<Integer, Integer> pair : plannedOf.entrySet()) {
            if (pair.getValue() < number && pair.getValue() > before) {
                before = pair.getValue();
                List<Event> events = made.get(pair.getKey()).events();
                line = events.get(events.size() - 1).line();
            }
        }
        return line;
    }

    private Operation moved(TubeStay stay, int of) {
        Operation operation = task.operations().get(of);
        Optional<Pose> by = shift(places(stay), places(planned.get(of)));
        if (by.isEmpty()) {
            return operation;
        }
        double along = by.get().x();
        double turn = stay.kind() == TubeStay.Kind.ROUND ? 0 : by.get().a();
        if (StrictMath.abs(along) > 2 * proof.tolerance()) {
            differences.along(differences.lineOf(stay.line(), Event.Stroke::travels), operation, along);
        }
        if (StrictMath.abs(turn) > 2 * proof.angleToleranceDegrees()) {
            differences.turned(differences.lineOf(stay.line(), Event.Stroke::turns), operation, turn);
        }
        Operation.Place place = operation.place();
        return at(
                operation,
                new Operation.Place(place.collar(), place.x() + along, place.azimuth(), place.angleDegrees() + turn));
    }

    private static List<Pose> places(TubeStay stay) {
        return stay.kind() == TubeStay.Kind.OUTLINE ? stay.track() : List.of(stay.start());
    }

    /** By how much all corners were moved; empty if not all by as much. */
    private Optional<Pose> shift(List<Pose> made, List<Pose> planned) {
        if (made.size() != planned.size() || made.isEmpty()) {
            return Optional.empty();
        }
        double along = made.get(0).x() - planned.get(0).x();
        double turn = made.get(0).a() - planned.get(0).a();
        for (int i = 0; i < made.size(); i++) {
            double x = made.get(i).x() - planned.get(i).x() - along;
            double a = made.get(i).a() - planned.get(i).a() - turn;
            if (!(StrictMath.abs(x) <= 2 * proof.tolerance()
                    && StrictMath.abs(a) <= 2 * proof.angleToleranceDegrees())) {
                return Optional.empty();
            }
        }
        return Optional.of(new Pose(along, 0, 0, turn));
    }

    /** What is one too many is judged as if a planned one like it had been asked for there. */
    private Operation added(TubeStay stay) {
        Pose at = stay.middle();
        String what = switch (stay.kind()) {
            case OUTLINE -> "a hole";
            case ROUND -> "a cut all round";
            case SPOT -> "a spot";
        };
        differences.added(stay.line(), what, at);
        Operation first = task.operations().get(0);
        Operation.Place place = new Operation.Place(first.place().collar(), at.x(), 0, at.a());
        double kerf = proof.machine().tube().orElseThrow().kerf();
        return switch (stay.kind()) {
            case OUTLINE -> at(alike(stay.length() + kerf), place);
            case ROUND -> new Operation.PartOff(place, false, task.cutter(), first.bottom());
            case SPOT -> new Operation.Mark(place, Operation.Meaning.ZERO_LINE, task.cutter(), first.bottom());
        };
    }

    /** The planned hole whose size is nearest. */
    private Operation alike(double diameter) {
        return task.operations().stream()
                .filter(Operation.Contour.class::isInstance)
                .map(Operation.Contour.class::cast)
                .min(Comparator.comparingDouble(c -> StrictMath.abs(c.diameter() - diameter)))
                .orElseThrow();
    }

    private static Operation at(Operation operation, Operation.Place place) {
        if (operation instanceof Operation.Contour c) {
            return new Operation.Contour(place, c.hole(), c.cutter(), c.diameter(), c.bottom());
        }
        if (operation instanceof Operation.PartOff p) {
            return new Operation.PartOff(place, p.trim(), p.cutter(), p.bottom());
        }
        return operation instanceof Operation.Mark m
                ? new Operation.Mark(place, m.meaning(), m.cutter(), m.bottom())
                : operation;
    }
}
