package collarwright.machining;

import java.util.ArrayList;
import java.util.List;

/** Lists of canonical moves, changed as a whole. */
final class MoveList {

    private MoveList() {}

    /** Every cycle written out in single moves. */
    static List<Move> expanded(List<Move> moves, Grid grid) {
        List<Move> out = new ArrayList<>();
        PostPlace place = new PostPlace();
        for (Move move : moves) {
            if (move instanceof Move.Cycle cycle) {
                out.addAll(cycle.expanded(grid, place.x()));
            } else {
                out.add(move);
            }
            place.follow(move);
        }
        return out;
    }

    /** Every Z raised; for an air cut. */
    static List<Move> lifted(List<Move> moves, double lift, Grid grid) {
        return moves.stream().map(m -> lifted(m, lift, grid)).toList();
    }

    private static Move lifted(Move move, double lift, Grid grid) {
        if (move instanceof Move.Rapid r && r.axis() == Axis.Z) {
            return new Move.Rapid(Axis.Z, grid.snap(r.to() + lift));
        }
        if (move instanceof Move.Feed f) {
            return new Move.Feed(grid.snap(f.z() + lift), f.feedMmPerMin());
        }
        if (move instanceof Move.Cycle c) {
            return new Move.Cycle(
                    c.x(),
                    c.y(),
                    grid.snap(c.retract() + lift),
                    grid.snap(c.bottom() + lift),
                    c.peck(),
                    c.feedMmPerMin(),
                    grid.snap(c.clear() + lift));
        }
        if (move instanceof Move.Arc a) {
            double z = grid.snap(a.z() + lift);
            return new Move.Arc(a.clockwise(), a.x(), a.y(), z, a.centreX(), a.centreY(), a.feedMmPerMin());
        }
        return move;
    }
}
