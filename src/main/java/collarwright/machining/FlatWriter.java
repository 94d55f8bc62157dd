package collarwright.machining;

import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Writes one task on a strip as a program and as its air cut: first Z up to clear, then X, then Y; one axis at a time.
 */
final class FlatWriter {

    /** A spindle gets at least this long to come up to speed: our choice, no source. */
    private static final double LEAST_DWELL_SECONDS = 1;

    private final FlatSettings settings;
    private final FlatTask task;
    private final int order;
    private final int files;
    private final Grid grid;

    FlatWriter(FlatSettings settings, FlatTask task, int order, int files) {
        this.settings = settings;
        this.task = task;
        this.order = order;
        this.files = files;
        this.grid = settings.grid();
    }

    FlatProgram cut() {
        return file("", 0, moves());
    }

    /** The air cut, if the machine goes up so far. */
    Optional<FlatProgram> air() {
        double lift = lift();
        if (task.heights().clear() + lift > settings.machine().travel().maxZ()) {
            return Optional.empty();
        }
        return Optional.of(file("-air", lift, MoveList.lifted(moves(), lift, grid)));
    }

    /** Brings the deepest point above the strip by the clear gap. */
    double lift() {
        return grid.snapUp(settings.machine().travel().clearGap() - task.deepest());
    }

    private FlatProgram file(String air, double lift, List<Move> moves) {
        double seconds = MotionTime.of(MoveList.expanded(moves, grid), settings.machine())
                .seconds();
        List<Move> whole = new ArrayList<>();
        head(lift, seconds).forEach(l -> whole.add(new Move.Comment(l)));
        whole.addAll(moves);
        String what = task.marks() ? "mark" : ProgramNames.safe(task.cutter().id());
        String front = ProgramNames.safe(task.strip().pattern()) + "-flat-" + order + "-";
        String end = air + "." + settings.machine().post().extension();
        int room = StrictMath.max(1, 40 - front.length() - end.length());
        String name = front + (what.length() > room ? what.substring(0, room) : what) + end;
        return new FlatProgram(name, task, lift, seconds, ProgramPost.print(whole, settings.machine(), grid));
    }

    private List<Move> moves() {
        double clear = task.heights().clear();
        List<Move> moves = new ArrayList<>();
        moves.add(new Move.Setup());
        moves.add(new Move.Rapid(Axis.Z, clear));
        FlatTask.FlatPoint at = task.points().get(0);
        moves.add(new Move.Rapid(Axis.X, at.x()));
        moves.add(new Move.Rapid(Axis.Y, at.y()));
        moves.add(new Move.SpindleOn(task.cut().rpm()));
        moves.add(new Move.Dwell(
                StrictMath.max(LEAST_DWELL_SECONDS, settings.machine().spindle().startSeconds())));
        for (FlatTask.FlatPoint point : task.points()) {
            moves.add(new Move.Comment(point.title()));
            if (!point.equals(at)) {
                moves.add(new Move.Rapid(Axis.X, point.x()));
                moves.add(new Move.Rapid(Axis.Y, point.y()));
            }
            at = point;
            moves.add(cycle(point));
        }
        moves.add(new Move.Rapid(Axis.Z, clear));
        moves.add(new Move.SpindleOff());
        moves.add(new Move.End());
        return moves;
    }

    private Move.Cycle cycle(FlatTask.FlatPoint point) {
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

    private List<String> head(double lift, double seconds) {
        List<String> lines = new ArrayList<>();
        if (lift > 0) {
            lines.add("AIR CUT: every Z is raised by " + length(lift) + ", nothing is cut");
        }
        int made = task.strip().made();
        double unit = settings.cuts().units().millimetres();
        lines.add("JOB " + settings.label().title());
        lines.add("REVISION " + settings.label().revision());
        lines.add("FLAT STRIP of pattern " + task.strip().pattern() + ", FILE " + order + " OF " + files
                + "; run it for " + made + (made == 1 ? " strip" : " strips"));
        lines.add("STRIP " + length(task.strip().length()) + " long, "
                + length(task.strip().body().width()) + " wide, up to "
                + length(task.strip().body().wall().max()) + " thick");
        lines.add("OUTER FACE UP, TOP away from you; rolled afterwards");
        lines.add("UNITS " + settings.cuts().units().symbol());
        lines.add("X0 Y0 lower left corner of the strip, X+ along it, Y+ to TOP");
        lines.add("Z0 upper face of the strip, tip of the cutter");
        lines.add("TOOL " + task.cutter().id() + ", " + task.cutter().kind().title() + " "
                + task.cutter().marked().replace("#", "No. ") + ", tip "
                + length(task.cutter().lead()) + " below its edge");
        lines.add("SPINDLE " + task.cut().rpm() + " rpm, FEED "
                + Decimals.fixed(task.cut().feedMmPerMin() / unit, 2) + " "
                + settings.cuts().units().symbol() + "/min");
        lines.add("CLEAR Z " + length(task.heights().clear() + lift) + ", DEEPEST Z " + length(task.deepest() + lift));
        lines.add("TIME " + Sizes.time(seconds) + ", tool change not counted");
        lines.add("CAUTION run in the air first, single step, hand on stop");
        lines.add("CAUTION clamp the strip beside every hole, board below it");
        lines.add("CAUTION eye protection, no gloves");
        if (!settings.cuts().cutting().caution().isBlank()) {
            lines.add("CAUTION " + settings.cuts().cutting().caution());
        }
        return lines;
    }

    private String length(double length) {
        return Sizes.in(settings.cuts().units(), length);
    }
}
