package collarwright.rehearsal;

import collarwright.machining.Operation;
import collarwright.machining.ProgramTask;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Where a cutter may go down at all, and from where on it has to look out. */
final class Ground {

    private final String work;
    private final double floor;
    private final double angleSlack;
    private final boolean turns;
    /** From the least X to the greatest, so that only those near a tool need a look. */
    private final Place[] places;

    private final double widest;

    /**
     * Sorts the places.
     *
     * @param work what a cutter would run into, such as {@code the pipe}
     * @param floor Z below which nothing may move but at a hole's place: the R plane over the highest that the work may
     *     stand, raised for an air cut
     * @param places where holes and dimples are planned
     * @param angleSlack degrees
     */
    private Ground(String work, double floor, List<Place> places, double angleSlack) {
        this.work = work;
        this.floor = floor;
        this.angleSlack = angleSlack;
        this.turns = places.stream().noneMatch(p -> Double.isNaN(p.angleDegrees()));
        this.places =
                places.stream().sorted(Comparator.comparingDouble(Place::x)).toArray(Place[]::new);
        this.widest = places.stream().mapToDouble(Place::way).max().orElse(0);
    }

    String work() {
        return work;
    }

    double floor() {
        return floor;
    }

    /** Whether the work turns under the tool. */
    boolean turns() {
        return turns;
    }

    Place place(int number) {
        return places[number];
    }

    /**
     * A planned hole or dimple.
     *
     * @param x along the work
     * @param y across it
     * @param angleDegrees the A word; NaN where nothing turns
     * @param way how far the cutter's middle may go from the hole's axis while it cuts; 0 for all that is drilled
     */
    record Place(double x, double y, double angleDegrees, double way) {

        boolean bored() {
            return way > 0;
        }
    }

    static Ground of(Proof proof, ProgramTask task) {
        List<Place> places = new ArrayList<>();
        for (Operation operation : task.operations()) {
            double way = operation instanceof Operation.Bore bore
                    ? (bore.diameter() - bore.cutter().size()) / 2
                    : 0;
            Operation.Place at = operation.place();
            places.add(new Place(at.x(), 0, at.angleDegrees(), way));
        }
        double floor = StrictMath.max(task.heights().retract(), proof.highestCrown())
                + proof.file().lift();
        return new Ground("the pipe", floor, places, 2 * proof.angleToleranceDegrees());
    }

    static Ground of(BenchProof proof, String work) {
        BenchProof.Levels levels = proof.levels();
        List<Place> places = proof.points().stream()
                .map(p -> new Place(p.x(), p.y(), Double.NaN, 0))
                .toList();
        return new Ground(work, StrictMath.max(levels.retract(), levels.top()) + levels.lift(), places, 0);
    }

    /** The planned place nearest to where a tool stands, its number; −1 if it stands at none. */
    int at(Pose pose, double slack) {
        int nearest = -1;
        double least = Double.POSITIVE_INFINITY;
        double reach = widest + slack;
        for (int i = from(pose.x() - reach); i < places.length && places[i].x() <= pose.x() + reach; i++) {
            Place place = places[i];
            double off = off(pose, place);
            if (off <= place.way() + slack && off < least && turned(pose, place)) {
                nearest = i;
                least = off;
            }
        }
        return nearest;
    }

    /** The first place that is not short of an X. */
    private int from(double x) {
        int low = 0;
        int high = places.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (places[middle].x() < x) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** A machine without a linear Y states none. */
    private static double off(Pose pose, Place place) {
        return StrictMath.hypot(pose.x() - place.x(), Double.isNaN(pose.y()) ? 0 : pose.y() - place.y());
    }

    private boolean turned(Pose pose, Place place) {
        if (Double.isNaN(place.angleDegrees())) {
            return true;
        }
        double off = StrictMath.IEEEremainder(pose.a() - place.angleDegrees(), 360);
        return StrictMath.abs(off) <= angleSlack;
    }
}
