package collarwright.rehearsal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How the holes that a text makes in work that lies still differ from the planned ones, each held against the nearest. */
final class BenchDifferences {

    private final BenchProof proof;
    private final String piece;
    private final Sides sides;
    private final List<DrilledHole> made;
    private final Map<Integer, Integer> plannedOf = new HashMap<>();

    /** Words for a side. */
    interface Sides {
        String side(char axis, boolean more);
    }

    BenchDifferences(BenchProof proof, String piece, Sides sides) {
        this.proof = proof;
        this.piece = piece;
        this.sides = sides;
        this.made = proof.holes();
        pair();
    }

    /** The nearest two that are left belong together, until the next are further apart than any hole is moved. */
    private void pair() {
        while (true) {
            double least = HolePairs.FURTHEST;
            int hole = -1;
            int point = -1;
            for (int i = 0; i < made.size(); i++) {
                for (int j = 0; j < proof.points().size(); j++) {
                    boolean free = !plannedOf.containsKey(i) && !plannedOf.containsValue(j);
                    double apart = apart(made.get(i), proof.points().get(j));
                    if (free && apart < least) {
                        least = apart;
                        hole = i;
                        point = j;
                    }
                }
            }
            if (hole < 0) {
                return;
            }
            plannedOf.put(hole, point);
        }
    }

    private static double apart(DrilledHole hole, BenchProof.Point point) {
        return StrictMath.hypot(hole.at().x() - point.x(), across(hole, point));
    }

    /** How far it is off along Y; 0 on a machine without a Y. */
    private static double across(DrilledHole hole, BenchProof.Point point) {
        double y = hole.at().y();
        return Double.isNaN(y) ? 0 : y - point.y();
    }

    /** Faults with the letter of the word they stand in. */
    Map<Fault, String> told() {
        Map<Fault, String> told = new LinkedHashMap<>();
        for (int i = 0; i < made.size(); i++) {
            Integer of = plannedOf.get(i);
            if (of == null) {
                DrilledHole hole = made.get(i);
                String where = "added at X " + proof.text(hole.at().x()) + ", Y "
                        + proof.text(hole.at().y());
                told.put(new Fault(hole.line(), "only what the plan has", what() + ": " + where), "");
            } else {
                compare(made.get(i), proof.points().get(of), told);
            }
        }
        for (int j = 0; j < proof.points().size(); j++) {
            if (!plannedOf.containsValue(j)) {
                missing(proof.points().get(j), told);
            }
        }
        return told;
    }

    private String what() {
        return piece + ", " + (proof.tool().dimples() ? "a dimple" : "a hole");
    }

    private void missing(BenchProof.Point point, Map<Fault, String> told) {
        List<Event> events = proof.events();
        int end = events.isEmpty() ? 1 : events.get(events.size() - 1).line();
        String name = name(point);
        String where = " at X " + proof.text(point.x()) + ", Y " + proof.text(point.y());
        told.put(new Fault(end, name + where, name + ": missing"), "M");
    }

    private void compare(DrilledHole hole, BenchProof.Point point, Map<Fault, String> told) {
        double slack = 2 * proof.tolerance();
        String name = name(point);
        double along = hole.at().x() - point.x();
        if (StrictMath.abs(along) > slack) {
            String off = "X " + length(along) + " " + sides.side('X', along > 0);
            told.put(new Fault(line(hole, 'X'), name + " at X " + proof.text(point.x()), name + ": " + off), "X");
        }
        double across = across(hole, point);
        if (StrictMath.abs(across) > slack) {
            String off = "Y " + length(across) + " " + sides.side('Y', across > 0);
            told.put(new Fault(line(hole, 'Y'), name + " at Y " + proof.text(point.y()), name + ": " + off), "Y");
        }
        double bottom = point.bottom() + proof.levels().lift();
        double deeper = bottom - hole.bottom();
        if (StrictMath.abs(deeper) > slack) {
            String off = length(deeper) + (deeper > 0 ? " too deep" : " too shallow");
            told.put(new Fault(lowest(hole), name + " to Z " + proof.text(bottom), name + ": " + off), "Z");
        }
    }

    private String name(BenchProof.Point point) {
        return piece + ", " + point.title();
    }

    private String length(double length) {
        return proof.text(StrictMath.abs(length));
    }

    /** The line that moved the tool to the hole along an axis; the hole's own if none did. */
    private int line(DrilledHole hole, char axis) {
        int line = hole.line();
        for (Event.Stroke stroke : proof.strokes()) {
            if (stroke.line() > hole.line()) {
                break;
            }
            line = stroke.block().value(axis).isPresent() ? stroke.line() : line;
        }
        return line;
    }

    private static int lowest(DrilledHole hole) {
        return hole.strokes().stream()
                .filter(s -> s.to().z() <= hole.bottom())
                .findFirst()
                .map(Event.Stroke::line)
                .orElse(hole.line());
    }

    /** Whether the holes are made in another order than planned. */
    boolean reordered() {
        int last = -1;
        for (int i = 0; i < made.size(); i++) {
            int of = plannedOf.getOrDefault(i, last);
            if (of < last) {
                return true;
            }
            last = of;
        }
        return false;
    }

    /** The plan as if the holes had been planned as they were made, so that the rules judge the rest. */
    List<BenchProof.Point> asMade() {
        List<BenchProof.Point> points = new ArrayList<>();
        for (int i = 0; i < made.size(); i++) {
            DrilledHole hole = made.get(i);
            Integer of = plannedOf.get(i);
            BenchProof.Point planned = of == null ? null : proof.points().get(of);
            double y = planned != null && Double.isNaN(hole.at().y())
                    ? planned.y()
                    : hole.at().y();
            points.add(new BenchProof.Point(
                    planned == null ? "a hole" : planned.title(),
                    hole.at().x(),
                    y,
                    hole.bottom() - proof.levels().lift()));
        }
        return points;
    }
}
