package collarwright.machining;

import java.util.ArrayList;
import java.util.List;

/** Lists of canonical moves, changed as a whole. */
final class MoveList {

    private MoveList() {}

    /** Every cycle written out in single moves. */
    static List<Move> expanded(List<Move> moves, Grid grid) {
        List<Move> out = new ArrayList<>();
        double x = Double.NaN;
        for (Move move : moves) {
            if (move instanceof Move.Cycle cycle) {
                out.addAll(cycle.expanded(grid, x));
                x = cycle.x();
            } else {
                out.add(move);
                x = move instanceof Move.Rapid r && r.axis() == Axis.X ? r.to() : x;
            }
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
        return move;
    }
}
