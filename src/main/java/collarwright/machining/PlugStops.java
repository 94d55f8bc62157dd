package collarwright.machining;

import java.util.ArrayList;
import java.util.List;

/** Counts the plugs in a hole saw while a program is written, and stops for them before it is full. */
final class PlugStops {

    private final Machine machine;
    private final int rpm;
    private final int most;
    private int inside;

    /**
     * Begins with an empty saw.
     *
     * @param machine the machine; where its profile says that plugs are kept, nothing stops
     * @param rpm speed of the spindle after a stop
     * @param most what the cutter holds; 0 for no hole saw
     */
    PlugStops(Machine machine, int rpm, int most) {
        this.machine = machine;
        this.rpm = rpm;
        this.most = machine.post().layout().habits().keepsPlugs() ? 0 : most;
    }

    /** What has to be done before the next hole; the cutter stands at the clear height. */
    List<Move> before() {
        List<Move> moves = new ArrayList<>();
        if (most > 0 && inside == most) {
            inside = 0;
            moves.add(new Move.SpindleOff());
            moves.add(Move.Dwell.ofSpindle(machine));
            moves.add(new Move.Pause("PLUGS, take all " + most + " out of the saw, the spindle stopped"));
            moves.add(new Move.SpindleOn(rpm));
            moves.add(Move.Dwell.ofSpindle(machine));
        }
        inside++;
        return moves;
    }
}
