package collarwright.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * Writes the tasks of one file on a strip as a program and as its air cut. For each cutter: first Z up to clear, then X, then
 * Y; one axis at a time.
 */
final class FlatWriter {

    private final FlatSettings settings;
    private final List<FlatTask> tasks;
    private final FlatHead.Place place;
    private final Grid grid;
    private final BenchPrint print;

    FlatWriter(FlatSettings settings, List<FlatTask> tasks, FlatHead.Place place, ProgramNames names) {
        this.settings = settings;
        this.tasks = List.copyOf(tasks);
        this.place = place;
        this.grid = settings.grid();
        this.print = new BenchPrint(settings.machine(), grid, 0, names);
    }

    BenchProgram<FlatTask> cut() {
        return print.cut(work(), this::head);
    }

    /** The air cut, if the machine goes up so far. */
    Optional<BenchProgram<FlatTask>> air() {
        return print.air(work(), this::head);
    }

    /** Brings the deepest point above the strip by the clear gap. */
    double lift() {
        return print.lift(deepest());
    }

    private double deepest() {
        return tasks.stream().mapToDouble(FlatTask::deepest).min().orElseThrow();
    }

    private DoubleFunction<List<String>> head(double lift) {
        return seconds -> new FlatHead(settings, tasks, place).lines(lift, seconds);
    }

    private BenchPrint.Work<FlatTask> work() {
        FlatTask first = tasks.get(0);
        String what = tasks.size() > 1
                ? "all"
                : first.marks() ? "mark" : first.cutter().id();
        double clear =
                tasks.stream().mapToDouble(t -> t.heights().clear()).max().orElseThrow();
        return new BenchPrint.Work<>(
                tasks, first.strip().pattern(), "-flat-" + place.order() + "-", what, moves(), deepest(), clear);
    }

    private List<Move> moves() {
        ControlHabits habits = settings.machine().post().layout().habits();
        List<Move> moves = new ArrayList<>();
        moves.add(new Move.Setup());
        for (int i = 0; i < tasks.size(); i++) {
            FlatTask task = tasks.get(i);
            if (i > 0) {
                moves.add(Move.Dwell.ofSpindle(settings.machine()));
            }
            if (i > 0 || habits.toolChange() == ControlHabits.ToolChange.M6) {
                String zero = "upper face is Z "
                        + Sizes.in(settings.cuts().units(), task.heights().crown());
                moves.add(Move.Tool.change(task.tool(), task.cutter(), zero));
            }
            add(moves, task);
        }
        moves.add(new Move.End());
        return moves;
    }

    private void add(List<Move> moves, FlatTask task) {
        double clear = task.heights().clear();
        moves.add(new Move.Rapid(Axis.Z, clear));
        FlatTask.FlatPoint at = task.points().get(0);
        moves.add(new Move.Rapid(Axis.X, at.x()));
        moves.add(new Move.Rapid(Axis.Y, at.y()));
        moves.add(new Move.SpindleOn(task.cut().rpm()));
        moves.add(Move.Dwell.ofSpindle(settings.machine()));
        PlugStops plugs = new PlugStops(settings.machine(), task.cut().rpm(), settings.plugs(task));
        for (FlatTask.FlatPoint point : task.points()) {
            moves.addAll(plugs.before());
            moves.add(new Move.Comment(point.title()));
            if (!point.equals(at)) {
                moves.add(new Move.Rapid(Axis.X, point.x()));
                moves.add(new Move.Rapid(Axis.Y, point.y()));
            }
            at = point;
            moves.add(cycle(task, point));
        }
        moves.add(new Move.Rapid(Axis.Z, clear));
        moves.add(new Move.SpindleOff());
    }

    private Move.Cycle cycle(FlatTask task, FlatTask.FlatPoint point) {
        Heights heights = task.heights();
        double peck = task.marks()
                ? 0
                : Move.Cycle.peck(heights.retract() - point.bottom(), task.cut().peck(), grid);
        return new Move.Cycle(
                point.x(),
                point.y(),
                heights.retract(),
                point.bottom(),
                peck,
                task.cut().feedMmPerMin(),
                heights.clear());
    }
}
