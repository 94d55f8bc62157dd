package collarwright.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Writes the tasks of one file as a program and as its air cut: canonical moves first, then the post prints them.
 *
 * <p>For each cutter: first motion is Z up to clear, then Y0 (where there is a linear Y), A (a little below its first angle,
 * then up to it, so that play lies always on one side), X; then the spindle starts and dwells. A only rises; the pipe turns
 * only at clear height. Before a hand turns the pipe or changes the cutter, the spindle stops and the program dwells.
 */
final class ProgramWriter {

    private final RotarySettings settings;
    private final List<ProgramTask> tasks;
    private final ProgramTask first;
    private final int order;
    private final int files;
    private final Grid grid;

    ProgramWriter(RotarySettings settings, List<ProgramTask> tasks, int order, int files) {
        this.settings = settings;
        this.tasks = List.copyOf(tasks);
        this.first = tasks.get(0);
        this.order = order;
        this.files = files;
        this.grid = settings.grid();
    }

    ProgramFile cut(ProgramNames names) {
        return file(ProgramFile.Purpose.CUT, 0, moves(), names);
    }

    /** The air cut, if the machine goes up so far. */
    Optional<ProgramFile> air(ProgramNames names) {
        double lift = lift();
        double clear =
                tasks.stream().mapToDouble(t -> t.heights().clear()).max().orElseThrow();
        if (clear + lift > settings.machine().travel().maxZ()) {
            return Optional.empty();
        }
        return Optional.of(file(ProgramFile.Purpose.AIR_CUT, lift, MoveList.lifted(moves(), lift, grid), names));
    }

    /** Brings the deepest point above the highest crown by the clear gap. */
    double lift() {
        double highest = first.heights().crown() + settings.work().outOfRound();
        double deepest = tasks.stream().mapToDouble(ProgramTask::deepest).min().orElseThrow();
        return grid.snapUp(highest + settings.machine().travel().clearGap() - deepest);
    }

    /** Time, turns and travel of one task of the file, without what the others do. */
    ProgramFile.Effort effort(ProgramTask task) {
        List<Move> moves = new ArrayList<>();
        add(moves, task);
        return effort(moves, List.of(task));
    }

    private ProgramFile file(ProgramFile.Purpose purpose, double lift, List<Move> moves, ProgramNames names) {
        ProgramFile.Effort effort = effort(moves, tasks);
        List<Move> whole = new ArrayList<>();
        ProgramHead head = new ProgramHead(settings, tasks);
        String place = "FILE " + order + " OF " + files;
        head.lines(purpose, place, lift, effort.seconds()).forEach(l -> whole.add(new Move.Comment(l)));
        whole.addAll(moves);
        String what = tasks.size() > 1
                ? "all"
                : first.marks() ? "mark" : first.cutter().id();
        ProgramNames.Name name =
                names.next(first.load().id(), "-" + order + "-", what, purpose == ProgramFile.Purpose.AIR_CUT);
        double radius = settings.work().body().outerRadius();
        return new ProgramFile(
                name.file(),
                purpose,
                Optional.of(first),
                lift,
                effort,
                ProgramPost.print(whole, settings.machine(), new ProgramPost.Sheet(grid, radius, name.number())),
                tasks.subList(1, tasks.size()));
    }

    private ProgramFile.Effort effort(List<Move> moves, List<ProgramTask> of) {
        MotionTime time = MotionTime.of(MoveList.expanded(moves, grid), settings.machine());
        double rotation = 0;
        double travel = 0;
        for (ProgramTask task : of) {
            List<List<Operation>> byAngle = byAngle(task);
            rotation += MotionTime.leastRotation(
                    byAngle.stream().map(g -> g.get(0).place().angleDegrees()).toList());
            travel += MotionTime.leastTravel(byAngle);
        }
        return new ProgramFile.Effort(
                time.seconds(), time.rotationDegrees(), rotation, time.travel(), travel, time.handTurns());
    }

    private List<Move> moves() {
        ControlHabits habits = settings.machine().post().layout().habits();
        List<Move> moves = new ArrayList<>();
        moves.add(new Move.Setup());
        for (int i = 0; i < tasks.size(); i++) {
            ProgramTask task = tasks.get(i);
            boolean start = i == 0;
            if (!start) {
                moves.add(dwell());
            }
            if (!start || habits.toolChange() == ControlHabits.ToolChange.M6) {
                moves.add(Move.Tool.change(task.tool(), task.cutter(), zero(settings)));
            }
            add(moves, task);
        }
        moves.add(new Move.End());
        return moves;
    }

    /** What the tip is set on. */
    static String zero(RotarySettings settings) {
        double crown = settings.work().body().outerRadius();
        return "crown is Z " + Sizes.in(settings.units(), crown);
    }

    private void add(List<Move> moves, ProgramTask task) {
        Heights heights = task.heights();
        RotaryForm form = settings.machine().rotary().form();
        moves.add(new Move.Rapid(Axis.Z, heights.clear()));
        if (!form.byY()) {
            moves.add(new Move.Rapid(Axis.Y, 0));
        }
        Operation.Place place = task.operations().get(0).place();
        double takeUp =
                form.byHand() ? 0 : grid.snapDegrees(settings.machine().rotary().takeUpDegrees());
        if (takeUp > 0) {
            moves.add(new Move.Rapid(Axis.A, grid.snapDegrees(place.angleDegrees() - takeUp)));
        }
        moves.add(new Move.Rapid(Axis.A, place.angleDegrees()));
        moves.add(new Move.Rapid(Axis.X, place.x()));
        moves.add(new Move.SpindleOn(task.cut().rpm()));
        moves.add(dwell());
        addOperations(moves, task);
        moves.add(new Move.Rapid(Axis.Z, heights.clear()));
        moves.add(new Move.SpindleOff());
    }

    private Move.Dwell dwell() {
        return Move.Dwell.ofSpindle(settings.machine());
    }

    private void addOperations(List<Move> moves, ProgramTask task) {
        boolean start = true;
        PlugStops plugs = new PlugStops(
                settings.machine(),
                task.cut().rpm(),
                SawPlugs.most(settings.work(), task.cutter(), settings.overtravel()));
        double at = task.operations().get(0).place().x();
        for (List<Operation> group : byAngle(task)) {
            double angle = group.get(0).place().angleDegrees();
            moves.add(new Move.Comment(heading(task, group) + " at A" + grid.degrees(angle)));
            if (!start) {
                turn(moves, task, angle);
            }
            start = false;
            for (Operation operation : group) {
                if (operation instanceof Operation.Bore bore) {
                    BorePath path = new BorePath(bore, grid);
                    if (bore.place().x() != at) {
                        moves.add(new Move.Rapid(Axis.X, bore.place().x()));
                    }
                    moves.addAll(path.moves(task));
                    at = path.end();
                } else {
                    moves.addAll(plugs.before());
                    moves.add(cycle(task, operation));
                }
            }
        }
    }

    /** A hand turns the pipe only while the spindle stands. */
    private void turn(List<Move> moves, ProgramTask task, double angle) {
        boolean hand = settings.machine().rotary().form().byHand();
        if (hand) {
            moves.add(new Move.SpindleOff());
            moves.add(dwell());
        }
        moves.add(new Move.Rapid(Axis.A, angle));
        if (hand) {
            moves.add(new Move.SpindleOn(task.cut().rpm()));
            moves.add(dwell());
        }
    }

    private static String heading(ProgramTask task, List<Operation> group) {
        boolean mixed = task.load().mixed();
        return String.join(
                ", ",
                group.stream()
                        .map(o -> title(task, o, mixed))
                        .distinct()
                        .sorted()
                        .toList());
    }

    /** What is done, with its pattern where the stick holds several. */
    private static String title(ProgramTask task, Operation operation, boolean mixed) {
        return (mixed ? task.load().pattern(operation.place().collar()) + " " : "") + operation.title();
    }

    private Move.Cycle cycle(ProgramTask task, Operation operation) {
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

    private static List<List<Operation>> byAngle(ProgramTask task) {
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
