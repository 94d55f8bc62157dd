package collarwright.paper;

import collarwright.job.Job;
import collarwright.plan.Plan;
import collarwright.strut.StrutEnd;
import collarwright.strut.StrutType;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Angles for those who bevel or cope strut ends so that they lie flat against the centre ring; every other paper has square
 * ends.
 *
 * <p>A strut leans out of its hub's plane by its axial angle, and the ring's wall stands square to that plane: cut at the
 * axial angle off square, through the point where the square cut meets the strut's axis, the end is parallel to the wall. On
 * the dome's outside the piece is longer by half its diameter times the tangent of that angle, on the inside shorter. A
 * coped end follows the ring's outside as well: beside the axis by y it stands forward by R − √(R² − y²).
 */
final class SawBevels {

    private final Plan plan;
    private final boolean inches;

    SawBevels(Plan plan, boolean inches) {
        this.plan = plan;
        this.inches = inches;
    }

    Grid grid() {
        Job job = plan.job();
        double half = job.strut().stock().od().nominal() / 2;
        List<StrutType> longestFirst = plan.struts().types().stream()
                .sorted(Comparator.comparingDouble((StrutType t) -> -t.cut()).thenComparing(StrutType::id))
                .toList();
        List<List<Cell>> rows = new ArrayList<>();
        for (StrutType type : longestFirst) {
            List<StrutEnd> ends = type.alike() ? List.of(type.a()) : List.of(type.a(), type.b());
            for (StrutEnd end : ends) {
                String name = type.alike()
                        ? type.id() + ", both ends"
                        : type.id() + (end.equals(type.a()) ? ", end a" : ", end b");
                double angle = end.axialAngle();
                rows.add(List.of(
                        Cell.strong(name),
                        Cell.strong(Decimals.fixed(Angles.degrees(angle), 2) + "°"),
                        Cell.of(Decimals.fixed(90 - Angles.degrees(angle), 2) + "°"),
                        Cell.of(size(half * StrictMath.tan(angle)))));
            }
        }
        return new Grid(
                "Bevels, the longest strut first",
                List.of(
                        Column.words("strut"),
                        Column.numbers("saw off square by"),
                        Column.numbers("end to strut's axis"),
                        Column.numbers("longer outside, shorter inside by")),
                rows);
    }

    List<String> notes() {
        Job job = plan.job();
        double half = job.strut().stock().od().nominal() / 2;
        double ring = job.hub().ring().od().nominal() / 2;
        List<String> notes = new ArrayList<>(List.of(
                "Only for those who bevel or cope: all lengths of this job are for square ends, and a square end is what"
                        + " the holes and setbacks were checked with.",
                "The length stays that of the strut's axis: mark the bevel through the point where the square cut meets"
                        + " the axis. The long side goes outside. Both bevels of a strut lie in one plane unless it has a"
                        + " turn between its tie holes; then turn it by that before the second cut.",
                "A minus: the strut leans outward, and the long side goes inside."));
        if (half < ring) {
            double depth = ring - StrictMath.sqrt(ring * ring - half * half);
            notes.add("A coped end also follows the ring, Ø " + size(2 * ring)
                    + ": seen along the hub's axis its sides stand"
                    + " forward of its middle by " + size(depth) + ". Leave the end gap of the job,"
                    + " " + size(job.hub().endGap()) + ", all round.");
        } else {
            notes.add("The strut is wider than the ring: it cannot be coped round it.");
        }
        return notes;
    }

    private String size(double length) {
        String mm = Decimals.fixed(length, 2) + " mm";
        String in = Decimals.fixed(length / 25.4, 3) + " in";
        return inches ? in + " (" + mm + ")" : mm + " (" + in + ")";
    }
}
