package collarwright.testing;

import collarwright.testing.CanonicalMove.Kind;
import collarwright.testing.CanonicalMove.Spindle;
import collarwright.testing.CanonicalMove.State;
import java.util.ArrayList;
import java.util.List;

/** Follows a listing of the outside interpreter from call to call and gathers the moves with what was in force. */
final class CanonicalMoves {
    private final List<CanonicalMove> moves = new ArrayList<>();
    private State state = State.START;
    private boolean inch;

    private CanonicalMoves() {}

    static List<CanonicalMove> of(List<CanonicalCall> calls) {
        CanonicalMoves followed = new CanonicalMoves();
        calls.forEach(followed::follow);
        return List.copyOf(followed.moves);
    }

    private void follow(CanonicalCall call) {
        switch (call.name()) {
            case "USE_LENGTH_UNITS" -> inch = call.words().get(0).contains("INCH");
            case "SET_FEED_RATE" -> state = state.withFeed(call.number(0));
            case "SET_FEED_MODE" -> state = state.withFeedPerRevolution(call.number(1) == 1);
            case "SET_SPINDLE_SPEED" -> state = state.withSpindleRpm(call.number(1));
            case "START_SPINDLE_CLOCKWISE" -> state = state.withSpindle(Spindle.CLOCKWISE);
            case "START_SPINDLE_COUNTERCLOCKWISE" -> state = state.withSpindle(Spindle.COUNTERCLOCKWISE);
            case "STOP_SPINDLE_TURNING" -> state = state.withSpindle(Spindle.OFF);
            case "CHANGE_TOOL" -> state = state.withTool((int) call.number(0));
            case "USE_TOOL_LENGTH_OFFSET" -> state = state.withLengthOffset(call.number(2));
            case "STRAIGHT_TRAVERSE" -> move(call, Kind.TRAVERSE, 0);
            case "STRAIGHT_FEED" -> move(call, Kind.FEED, 0);
            case "ARC_FEED" -> arc(call);
            default -> {
                // Comments, modes and stops don't move anything.
            }
        }
    }

    private void move(CanonicalCall call, Kind kind, int first) {
        moves.add(new CanonicalMove(
                call.block(),
                kind,
                call.number(first),
                call.number(first + 1),
                call.number(first + 2),
                call.number(first + 3),
                inch,
                state));
    }

    private void arc(CanonicalCall call) {
        // In the XY plane: end x, end y, centre x, centre y, turns, end z, a.
        moves.add(new CanonicalMove(
                call.block(), Kind.ARC, call.number(0), call.number(1), call.number(5), call.number(6), inch, state));
    }
}
