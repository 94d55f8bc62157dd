package collarwright.rehearsal;

import collarwright.machining.ProgramTask;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import java.util.ArrayList;
import java.util.List;

/**
 * A hole saw is emptied before it is full: plug by plug, each as high as the wall is from the crown to its lowest edge, until
 * the next cut would find no room.
 */
final class PlugRules {

    private PlugRules() {}

    static List<Fault> check(Proof proof, ProgramTask task) {
        Cutter cutter = task.cutter();
        boolean stops = !proof.machine().post().layout().habits().keepsPlugs();
        if (cutter.kind() != CutterKind.HOLE_SAW || !stops) {
            return List.of();
        }
        List<Integer> emptied = proof.events().stream()
                .filter(e -> e instanceof Event.Stop s
                        && StopNote.read(s.comments()).stream().anyMatch(StopNote.Plugs.class::isInstance))
                .map(Event::line)
                .toList();
        double radius = cutter.asDrilled().max() / 2;
        double inner = proof.settings().work().body().leastInnerRadius();
        double top = proof.settings().work().body().outerRadius()
                + proof.settings().work().outOfRound() / 2;
        double plug = top - StrictMath.sqrt(StrictMath.max(0, inner * inner - radius * radius));
        List<Fault> faults = new ArrayList<>();
        double inside = 0;
        int last = 0;
        for (DrilledHole hole : DrilledHole.from(proof)) {
            int before = last;
            boolean empty = emptied.stream().anyMatch(l -> l > before && l < hole.line());
            inside = empty ? 0 : inside;
            double needed = inside + plug + proof.settings().overtravel();
            if (inside > 0 && needed > cutter.depth() + 1e-6) {
                faults.add(new Fault(
                        hole.line(),
                        "a stop to take the plugs out of the saw, which is " + proof.text(cutter.depth()) + " deep",
                        proof.text(inside) + " of plugs in it before a cut of "
                                + proof.text(plug + proof.settings().overtravel())));
                inside = 0;
            }
            inside += plug;
            last = hole.line();
        }
        return faults;
    }
}
