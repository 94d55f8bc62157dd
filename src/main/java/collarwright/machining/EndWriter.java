package collarwright.machining;

import collarwright.hub.StrutTip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Writes one task on a strut as a program and as its air cut.
 *
 * <p>First motion is Z up to clear, then Y0 where the machine has a Y, then X; then the spindle starts and dwells. Where the
 * strut has to be turned, the drill stands still at clear height beside it, and the program waits.
 */
final class EndWriter {

    /** A spindle gets at least this long to come up to speed: our choice, no source. */
    private static final double LEAST_DWELL_SECONDS = 1;

    private final BedSettings settings;
    private final EndTask task;
    private final Grid grid;

    EndWriter(BedSettings settings, EndTask task) {
        this.settings = settings;
        this.task = task;
        this.grid = settings.grid();
    }

    EndProgram cut() {
        return file("", 0, moves());
    }

    /** The air cut, if the machine goes up so far. */
    Optional<EndProgram> air() {
        double lift = lift();
        if (task.heights().clear() + lift > settings.machine().travel().maxZ()) {
            return Optional.empty();
        }
        return Optional.of(file("-air", lift, MoveList.lifted(moves(), lift, grid)));
    }

    /** Brings the deepest point above the highest crown by the clear gap. */
    double lift() {
        double gap = settings.machine().travel().clearGap();
        return grid.snapUp(settings.bar().highest() + gap - task.deepest());
    }

    private EndProgram file(String air, double lift, List<Move> moves) {
        double seconds = MotionTime.of(MoveList.expanded(moves, grid), settings.machine())
                .seconds();
        List<Move> whole = new ArrayList<>();
        new EndHead(settings, task).lines(lift, seconds).forEach(l -> whole.add(new Move.Comment(l)));
        whole.addAll(moves);
        String end = task.inLine() ? "ends" : task.atStop() == StrutTip.A ? "E1" : "E2";
        return new EndProgram(
                ProgramNames.safe(task.stops().type()) + "-" + end + air + "."
                        + settings.machine().post().extension(),
                task,
                lift,
                seconds,
                ProgramPost.print(whole, settings.machine(), grid));
    }

    private List<Move> moves() {
        double clear = task.heights().clear();
        List<Move> moves = new ArrayList<>();
        moves.add(new Move.Setup());
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
        return new Move.Dwell(
                StrictMath.max(LEAST_DWELL_SECONDS, settings.machine().spindle().startSeconds()));
    }

    private Move.Cycle cycle(EndHole hole) {
        Heights heights = task.heights();
        double peck =
                Move.Cycle.peck(heights.retract() - hole.bottom(), task.cut().peck(), grid);
        return new Move.Cycle(
                hole.x(), heights.retract(), hole.bottom(), peck, task.cut().feedMmPerMin(), heights.clear());
    }
}
