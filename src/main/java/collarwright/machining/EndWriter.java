package collarwright.machining;

import collarwright.hub.StrutTip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * Writes one task on a strut as a program and as its air cut.
 *
 * <p>First motion is Z up to clear, then Y0 where the machine has a Y, then X; then the spindle starts and dwells. Where the
 * strut has to be turned, the drill stands still at clear height beside it, and the program waits.
 */
final class EndWriter {

    private final BedSettings settings;
    private final EndTask task;
    private final Grid grid;
    private final BenchPrint print;

    EndWriter(BedSettings settings, EndTask task, ProgramNames names) {
        this.settings = settings;
        this.task = task;
        this.grid = settings.grid();
        this.print = new BenchPrint(settings.machine(), grid, settings.bar().highest(), names);
    }

    BenchProgram<EndTask> cut() {
        return print.cut(work(), this::head);
    }

    /** The air cut, if the machine goes up so far. */
    Optional<BenchProgram<EndTask>> air() {
        return print.air(work(), this::head);
    }

    /** Brings the deepest point above the highest crown by the clear gap. */
    double lift() {
        return print.lift(task.deepest());
    }

    private DoubleFunction<List<String>> head(double lift) {
        return seconds -> new EndHead(settings, task).lines(lift, seconds);
    }

    private BenchPrint.Work<EndTask> work() {
        String end = task.inLine() ? "ends" : task.atStop() == StrutTip.A ? "E1" : "E2";
        return new BenchPrint.Work<>(
                List.of(task),
                task.stops().type(),
                "-",
                end,
                moves(),
                task.deepest(),
                task.heights().clear());
    }

    private List<Move> moves() {
        double clear = task.heights().clear();
        List<Move> moves = new ArrayList<>();
        moves.add(new Move.Setup());
        if (settings.machine().post().layout().habits().toolChange() == ControlHabits.ToolChange.M6) {
            String zero = "top of the strut is Z "
                    + Sizes.in(settings.cuts().units(), task.heights().crown());
            moves.add(Move.Tool.change(EndTask.TOOL, settings.drill(), zero));
        }
        moves.add(new Move.Rapid(Axis.Z, clear));
        if (settings.machine().travel().across().isPresent()) {
            moves.add(new Move.Rapid(Axis.Y, 0));
        }
        moves.add(new Move.Rapid(Axis.X, task.holes().get(0).x()));
        boolean turning = false;
        for (EndHole hole : task.holes()) {
            if (hole.turn() != 0) {
                if (turning) {
                    stop(moves);
                    turning = false;
                }
                moves.add(new Move.Pause(StrutTurn.words(hole.turn())));
            }
            if (!turning) {
                start(moves);
                turning = true;
            }
            moves.add(new Move.Comment(hole.title()));
            moves.add(cycle(hole));
        }
        moves.add(new Move.Rapid(Axis.Z, clear));
        moves.add(new Move.SpindleOff());
        moves.add(new Move.End());
        return moves;
    }

    private void start(List<Move> moves) {
        moves.add(new Move.SpindleOn(task.cut().rpm()));
        moves.add(dwell());
    }

    private void stop(List<Move> moves) {
        moves.add(new Move.SpindleOff());
        moves.add(dwell());
    }

    private Move dwell() {
        return Move.Dwell.ofSpindle(settings.machine());
    }

    private Move.Cycle cycle(EndHole hole) {
        Heights heights = task.heights();
        double peck =
                Move.Cycle.peck(heights.retract() - hole.bottom(), task.cut().peck(), grid);
        return new Move.Cycle(
                hole.x(), heights.retract(), hole.bottom(), peck, task.cut().feedMmPerMin(), heights.clear());
    }
}
