package collarwright.machining;

import collarwright.units.PlainText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Writes one task as a program and as its air cut: canonical moves first, then the post prints them.
 *
 * <p>First motion is Z up to clear, then Y0, A (a little below its first angle, then up to it, so that play lies always on
 * one side), X; then the spindle starts and dwells. A only rises; the pipe turns only at clear height.
 */
final class ProgramWriter {

    /** A spindle gets at least this long to come up to speed: our choice, no source. */
    private static final double LEAST_DWELL_SECONDS = 1;

    private final RotarySettings settings;
    private final ProgramTask task;
    private final int order;
    private final int files;
    private final Grid grid;

    ProgramWriter(RotarySettings settings, ProgramTask task, int order, int files) {
        this.settings = settings;
        this.task = task;
        this.order = order;
        this.files = files;
        this.grid = settings.grid();
    }

    ProgramFile cut() {
        return file(ProgramFile.Purpose.CUT, 0, moves());
    }

    /** The air cut, if the machine goes up so far. */
    Optional<ProgramFile> air() {
        double lift = lift();
        if (task.heights().clear() + lift > settings.machine().travel().maxZ()) {
            return Optional.empty();
        }
        return Optional.of(file(ProgramFile.Purpose.AIR_CUT, lift, MoveList.lifted(moves(), lift, grid)));
    }

    /** Brings the deepest point above the highest crown by the clear gap. */
    double lift() {
        double highest = task.heights().crown() + settings.work().outOfRound();
        return grid.snapUp(highest + settings.machine().travel().clearGap() - task.deepest());
    }

    private ProgramFile file(ProgramFile.Purpose purpose, double lift, List<Move> moves) {
        MotionTime time = MotionTime.of(MoveList.expanded(moves, grid), settings.machine());
        List<Move> whole = new ArrayList<>();
        ProgramHead head = new ProgramHead(settings, task);
        String place = "FILE " + order + " OF " + files;
        head.lines(purpose, place, lift, time.seconds()).forEach(l -> whole.add(new Move.Comment(l)));
        whole.addAll(moves);
        return new ProgramFile(
                name(purpose),
                purpose,
                Optional.of(task),
                lift,
                effort(time),
                ProgramPost.print(whole, settings.machine(), grid));
    }

    private ProgramFile.Effort effort(MotionTime time) {
        List<List<Operation>> byAngle = byAngle();
        List<Double> angles =
                byAngle.stream().map(g -> g.get(0).place().angleDegrees()).toList();
        return new ProgramFile.Effort(
                time.seconds(),
                time.rotationDegrees(),
                MotionTime.leastRotation(angles),
                time.travel(),
                MotionTime.leastTravel(byAngle));
    }

    private String name(ProgramFile.Purpose purpose) {
        String what = task.marks() ? "mark" : safe(task.cutter().id());
        String air = purpose == ProgramFile.Purpose.AIR_CUT ? "-air" : "";
        String front = safe(task.load().id()) + "-" + order + "-";
        String end = air + "." + settings.machine().post().extension();
        int room = StrictMath.max(1, 40 - front.length() - end.length());
        return front + (what.length() > room ? what.substring(0, room) : what) + end;
    }

    /** Letters, digits and hyphens of a text; anything else becomes an underscore. */
    static String safe(String text) {
        return PlainText.ascii(text).replaceAll("[^A-Za-z0-9-]", "_");
    }

    private List<Move> moves() {
        Heights heights = task.heights();
        List<Move> moves = new ArrayList<>();
        moves.add(new Move.Setup());
        moves.add(new Move.Rapid(Axis.Z, heights.clear()));
        moves.add(new Move.Rapid(Axis.Y, 0));
        Operation first = task.operations().get(0);
        double takeUp = grid.snapDegrees(settings.machine().rotary().takeUpDegrees());
        if (takeUp > 0) {
            moves.add(new Move.Rapid(Axis.A, grid.snapDegrees(first.place().angleDegrees() - takeUp)));
        }
        moves.add(new Move.Rapid(Axis.A, first.place().angleDegrees()));
        moves.add(new Move.Rapid(Axis.X, first.place().x()));
        moves.add(new Move.SpindleOn(task.cut().rpm()));
        moves.add(new Move.Dwell(
                StrictMath.max(LEAST_DWELL_SECONDS, settings.machine().spindle().startSeconds())));
        addOperations(moves);
        moves.add(new Move.Rapid(Axis.Z, heights.clear()));
        moves.add(new Move.SpindleOff());
        moves.add(new Move.End());
        return moves;
    }

    private void addOperations(List<Move> moves) {
        boolean first = true;
        for (List<Operation> group : byAngle()) {
            double angle = group.get(0).place().angleDegrees();
            moves.add(new Move.Comment(heading(group) + " at A" + grid.degrees(angle)));
            if (!first) {
                moves.add(new Move.Rapid(Axis.A, angle));
            }
            first = false;
            group.forEach(o -> moves.add(cycle(o)));
        }
    }

    private String heading(List<Operation> group) {
        return String.join(
                ", ", group.stream().map(this::title).distinct().sorted().toList());
    }

    /** What is done, with its pattern where the stick holds several. */
    private String title(Operation operation) {
        String pattern = task.load().pattern(operation.place().collar());
        return (task.load().mixed() ? pattern + " " : "") + operation.title();
    }

    private Move.Cycle cycle(Operation operation) {
        Heights heights = task.heights();
        double depth = heights.retract() - operation.bottom();
        boolean mark = operation instanceof Operation.Mark;
        double peck = mark ? 0 : Move.Cycle.peck(depth, task.cut().peck(), grid);
        return new Move.Cycle(
                operation.place().x(),
                heights.retract(),
                operation.bottom(),
                peck,
                task.cut().feedMmPerMin(),
                heights.clear());
    }

    private List<List<Operation>> byAngle() {
        List<List<Operation>> groups = new ArrayList<>();
        double angle = Double.NaN;
        for (Operation operation : task.operations()) {
            if (operation.place().angleDegrees() != angle) {
                groups.add(new ArrayList<>());
                angle = operation.place().angleDegrees();
            }
            groups.get(groups.size() - 1).add(operation);
        }
        return groups;
    }
}
