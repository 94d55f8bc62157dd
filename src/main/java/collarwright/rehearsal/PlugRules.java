package collarwright.rehearsal;

import collarwright.machining.ProgramTask;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * A hole saw is emptied before it is full: plug by plug, each as high as the wall is from the crown to its lowest edge, until
 * the next cut would find no room.
 */
final class PlugRules {

    private PlugRules() {}

    static List<Fault> check(Proof proof, ProgramTask task) {
        Cutter cutter = task.cutter();
        if (cutter.kind() != CutterKind.HOLE_SAW) {
            return List.of();
        }
        double radius = cutter.asDrilled().max() / 2;
        double inner = proof.settings().work().body().leastInnerRadius();
        double top = proof.settings().work().body().outerRadius()
                + proof.settings().work().outOfRound() / 2;
        double plug = top - StrictMath.sqrt(StrictMath.max(0, inner * inner - radius * radius));
        return check(
                proof,
                DrilledHole.from(proof),
                cutter,
                new Plug(plug, proof.settings().overtravel()));
    }

    /**
     * What a saw takes out of one hole.
     *
     * @param height how high the plug stands in it
     * @param beyond how far the saw goes beyond the plug
     */
    record Plug(double height, double beyond) {}

    /** Holes in their order; nothing for a cutter that is no hole saw, or a saw that throws its plugs out. */
    static List<Fault> check(Replayed proof, List<DrilledHole> holes, Cutter cutter, Plug plug) {
        if (cutter.kind() != CutterKind.HOLE_SAW
                || proof.machine().post().layout().habits().keepsPlugs()) {
            return List.of();
        }
        NavigableSet<Integer> emptied = proof.events().stream()
                .filter(e -> e instanceof Event.Stop s
                        && StopNote.read(s.comments()).stream().anyMatch(StopNote.Plugs.class::isInstance))
                .map(Event::line)
                .collect(Collectors.toCollection(TreeSet::new));
        List<Fault> faults = new ArrayList<>();
        double inside = 0;
        int last = 0;
        for (DrilledHole hole : holes) {
            int line = hole.line();
            boolean empty = !emptied.subSet(last, false, line, false).isEmpty();
            inside = empty ? 0 : inside;
            double needed = inside + plug.height() + plug.beyond();
            if (inside > 0 && needed > cutter.depth() + 1e-6) {
                faults.add(new Fault(
                        line,
                        "a stop to take the plugs out of the saw, which is " + proof.text(cutter.depth()) + " deep",
                        proof.text(inside) + " of plugs in it before a cut of "
                                + proof.text(plug.height() + plug.beyond())));
                inside = 0;
            }
            inside += plug.height();
            last = line;
        }
        return faults;
    }
}
