package collarwright.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Writes what a tube cutter does to one stick as a program and as its air cut.
 *
 * <p>For each hole: at clear height A, then X to where it pierces, inside the waste; down to the pierce height; on; dwell;
 * down to the cut height; in a straight line to the outline, once round and a little further; off; up. Every stretch of a
 * cut states its own time, so that the speed over the pipe's outside is the asked one, or as slow as the axes have to be.
 *
 * <p>Seen from outside with the tip above, it goes counter-clockwise round a hole: a plasma jet that swirls clockwise leaves
 * its better side outward then (common practice, no source). Cuts all round turn to and fro, so that nothing winds up.
 */
final class TubeWriter {

    private final RotarySettings settings;
    private final TubeCutter tube;
    private final ProgramTask task;
    private final Grid grid;
    private final TubeHeights heights;
    private final double outer;
    private final boolean positive;
    private double x;
    private double a;
    private boolean wound;

    TubeWriter(RotarySettings settings, ProgramTask task) {
        this.settings = settings;
        this.tube = settings.machine().tube().orElseThrow();
        this.task = task;
        this.grid = settings.grid();
        this.heights = TubeHeights.of(settings);
        this.outer = settings.work().body().outerRadius();
        this.positive = settings.machine().rotary().positive();
    }

    ProgramFile cut(ProgramNames names) {
        return file(ProgramFile.Purpose.CUT, 0, moves(), names);
    }

    /** The air cut, if the machine goes up so far: the same moves, higher, and nothing switched on. */
    Optional<ProgramFile> air(ProgramNames names) {
        if (heights.clear() + lift() > settings.machine().travel().maxZ()) {
            return Optional.empty();
        }
        List<Move> cold =
                moves().stream().filter(m -> !(m instanceof Move.Torch)).toList();
        return Optional.of(file(ProgramFile.Purpose.AIR_CUT, lift(), MoveList.lifted(cold, lift(), grid), names));
    }

    /** Brings the lowest point above the highest crown by the clear gap; more than nothing in any case. */
    double lift() {
        double gap = settings.machine().travel().clearGap();
        double highest = outer + settings.work().outOfRound();
        return grid.snapUp(StrictMath.max(highest + gap - task.deepest(), gap));
    }

    private ProgramFile file(ProgramFile.Purpose purpose, double lift, List<Move> moves, ProgramNames names) {
        ProgramFile.Effort effort = effort(moves);
        List<Move> whole = new ArrayList<>();
        new ProgramHead(settings, List.of(task))
                .lines(purpose, "FILE 1 OF 1", lift, effort.seconds())
                .forEach(l -> whole.add(new Move.Comment(l)));
        whole.addAll(moves);
        ProgramNames.Name name =
                names.next(task.load().id(), "-1-", task.cutter().id(), purpose == ProgramFile.Purpose.AIR_CUT);
        return new ProgramFile(
                name.file(),
                purpose,
                Optional.of(task),
                lift,
                effort,
                ProgramPost.print(whole, settings.machine(), new ProgramPost.Sheet(grid, outer, name.number())));
    }

    /** The least turn and travel are those of the cuts themselves. */
    private ProgramFile.Effort effort(List<Move> moves) {
        MotionTime time = MotionTime.of(moves, settings.machine());
        double turned = 0;
        double travelled = 0;
        PostPlace place = new PostPlace();
        for (Move move : moves) {
            if (move instanceof Move.Sweep s) {
                turned += StrictMath.abs(s.angleDegrees() - place.angleDegrees());
                travelled += StrictMath.abs(s.x() - place.x());
            }
            place.follow(move);
        }
        return new ProgramFile.Effort(time.seconds(), time.rotationDegrees(), turned, time.travel(), travelled, 0);
    }

    private List<Move> moves() {
        x = Double.NaN;
        a = Double.NaN;
        wound = false;
        List<Move> moves = new ArrayList<>();
        moves.add(new Move.Setup());
        moves.add(new Move.Rapid(Axis.Z, heights.clear()));
        for (Operation operation : task.operations()) {
            moves.add(new Move.Comment("collar " + operation.place().collar() + ", " + operation.title()));
            if (operation instanceof Operation.Contour contour) {
                contour(moves, contour);
            } else if (operation instanceof Operation.PartOff parting) {
                parting(moves, parting);
            } else {
                spot(moves, operation.place());
            }
            moves.add(new Move.Torch(false));
            moves.add(new Move.Rapid(Axis.Z, heights.clear()));
        }
        moves.add(new Move.End());
        return moves;
    }

    private void go(List<Move> moves, double toX, double toA) {
        if (a != toA) {
            moves.add(new Move.Rapid(Axis.A, toA));
        }
        if (x != toX) {
            moves.add(new Move.Rapid(Axis.X, toX));
        }
        x = toX;
        a = toA;
        moves.add(new Move.Rapid(Axis.Z, heights.pierce()));
        moves.add(new Move.Torch(true));
    }

    private void spot(List<Move> moves, Operation.Place place) {
        go(moves, place.x(), place.angleDegrees());
        moves.add(new Move.Dwell(tube.start().markSeconds()));
    }

    private void pierce(List<Move> moves) {
        moves.add(new Move.Dwell(tube.start().pierceSeconds()));
        if (heights.cut() != heights.pierce()) {
            double feed = StrictMath.min(
                    task.cut().feedMmPerMin(), settings.machine().travel().maxFeedMmPerMin());
            moves.add(new Move.Feed(heights.cut(), grid.snapFeed(feed)));
        }
    }

    /** Half the kerf inside the outline, less what straight stretches and the steps of the program may take off. */
    private double inward() {
        double step = StrictMath.pow(10, -grid.angleDecimals()) / 180 * StrictMath.PI * outer;
        return tube.kerf() / 2 - TubeOutline.CHORD - (grid.step() + step) / 2;
    }

    private void contour(List<Move> moves, Operation.Contour hole) {
        TubeOutline outline =
                new TubeOutline(hole.diameter(), settings.work().body().leastInnerRadius(), outer);
        List<TubeOutline.Point> path = outline.path(inward());
        TubeOutline.Point start = path.get(0);
        double lead = StrictMath.min(tube.start().leadIn(), start.arc());
        TubeOutline.Point pierce = new TubeOutline.Point(start.x(), start.arc() - lead);
        Operation.Place place = hole.place();
        go(moves, grid.snap(place.x() + pierce.x()), angle(place, pierce));
        pierce(moves);
        path.forEach(p -> sweep(moves, place, p));
        double left = tube.start().overcut();
        for (int i = 1; i < path.size() && left > 0; i++) {
            double way = path.get(i - 1).to(path.get(i));
            sweep(moves, place, path.get(i - 1).toward(path.get(i), StrictMath.min(1, left / way)));
            left -= way;
        }
    }

    private double angle(Operation.Place place, TubeOutline.Point point) {
        double degrees = point.arc() / outer / StrictMath.PI * 180;
        return grid.snapDegrees(place.angleDegrees() + (positive ? -degrees : degrees));
    }

    private void sweep(List<Move> moves, Operation.Place place, TubeOutline.Point to) {
        sweep(moves, grid.snap(place.x() + to.x()), angle(place, to));
    }

    private void sweep(List<Move> moves, double toX, double toA) {
        double turn = StrictMath.abs(toA - a);
        double along = StrictMath.abs(toX - x);
        if (turn == 0 && along == 0) {
            return;
        }
        double way = StrictMath.hypot(along, turn / 180 * StrictMath.PI * outer);
        Machine machine = settings.machine();
        double minutes = StrictMath.max(
                way / task.cut().feedMmPerMin(), turn / machine.rotary().rapidDegreesPerMin());
        moves.add(new Move.Sweep(toX, toA, 60 * minutes));
        x = toX;
        a = toA;
    }

    private void parting(List<Move> moves, Operation.PartOff parting) {
        double over = grid.snapDegrees(tube.start().overcut() / outer / StrictMath.PI * 180);
        double cutX = parting.place().x();
        go(moves, cutX, wound ? 360 + over : 0);
        pierce(moves);
        sweep(moves, cutX, wound ? over : 360);
        sweep(moves, cutX, wound ? 0 : 360 + over);
        wound = !wound;
    }
}
