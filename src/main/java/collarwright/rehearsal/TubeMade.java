package collarwright.rehearsal;

import collarwright.machining.Load;
import collarwright.machining.Machine;
import collarwright.machining.ProgramTask;
import collarwright.machining.RotarySettings;
import collarwright.tooling.Cutter;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the texts for a tube cutter make on a stick: spots, holes and partings, as their moves tell. */
final class TubeMade {

    private TubeMade() {}

    /** Whether a machine marks collars. */
    static boolean marks(Machine machine) {
        return machine.tube().filter(t -> t.start().markSeconds() == 0).isEmpty();
    }

    static void add(MadeHoles made, Reading reading, RotarySettings settings, boolean marks) {
        double kerf = settings.machine().tube().orElseThrow().kerf();
        boolean positive = settings.machine().rotary().positive();
        double dimple = settings.mark().cutter().asDrilled().nominal();
        TubeStay.Kind wanted = marks ? TubeStay.Kind.SPOT : TubeStay.Kind.OUTLINE;
        for (TubeStay stay : stays(reading, settings)) {
            if (stay.kind() == wanted) {
                Pose at = stay.middle();
                made.add(at.x(), Wrap.drilled(at.a(), positive), marks ? dimple : stay.length() + kerf);
            }
        }
    }

    private static List<TubeStay> stays(Reading reading, RotarySettings settings) {
        return TubeStay.of(new Proof(
                reading.file(),
                settings,
                reading.blocks().blocks(),
                reading.run().events()));
    }

    /** Where the partings are, if that is not at the edges of the collars; the middle of each cut half a kerf outside. */
    static Optional<String> partings(Reading reading, RotarySettings settings, Load load) {
        Machine machine = settings.machine();
        if (machine.tube().isEmpty()) {
            return Optional.empty();
        }
        double half = machine.tube().get().kerf() / 2;
        double width = settings.work().body().width();
        List<Double> wanted = new ArrayList<>();
        if (machine.tube().get().limits().parts()) {
            wanted.add(load.edge(load.collars()) + width + half);
            for (int collar = load.collars(); collar >= 1; collar--) {
                wanted.add(load.edge(collar) - half);
            }
        }
        List<Double> found = stays(reading, settings).stream()
                .filter(s -> s.kind() == TubeStay.Kind.ROUND)
                .map(s -> s.start().x())
                .toList();
        boolean same = found.size() == wanted.size();
        for (int i = 0; same && i < found.size(); i++) {
            same = StrictMath.abs(found.get(i) - wanted.get(i))
                    <= settings.grid().step();
        }
        return same
                ? Optional.empty()
                : Optional.of("at X "
                        + String.join(
                                ", ",
                                found.stream()
                                        .map(x -> Double.isFinite(x) ? Decimals.fixed(x, 3) : "nowhere")
                                        .toList()));
    }

    /** Everything it makes, with the moment at which it goes down; the events begin at these seconds. */
    static List<Replay.Made> replayed(Proof proof, List<Double> starts) {
        Optional<Cutter> cutter = proof.file().task().map(ProgramTask::cutter);
        Map<Integer, Double> byLine = new HashMap<>();
        for (int i = 0; i < starts.size(); i++) {
            if (proof.events().get(i) instanceof Event.Stroke s) {
                byLine.putIfAbsent(s.line(), starts.get(i));
            }
        }
        List<Replay.Made> made = new ArrayList<>();
        for (TubeStay stay : TubeStay.of(proof)) {
            Pose at = stay.middle();
            double start = byLine.getOrDefault(stay.line(), 0.0);
            boolean spot = stay.kind() == TubeStay.Kind.SPOT;
            made.add(new Replay.Made(
                    made.size() + 1, stay.line(), start, at.x(), at.a(), stay.lowest(), 0, cutter, spot));
        }
        return made;
    }
}
