package collarwright.rehearsal;

import collarwright.machining.Machine;
import collarwright.machining.ProgramFile;
import collarwright.machining.ProgramTask;
import collarwright.machining.RotarySettings;
import collarwright.tooling.Cutter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What a program's text does, step by step, with the time of each.
 *
 * <p>Read from the text alone, by the same interpreter as the rehearsal. Frame and zero: as in {@code
 * collarwright.machining}. Every move starts and ends at rest; pauses take no time; the stretch to the first stated
 * position of an axis is not known and not counted.
 *
 * @param holes what was cut, in order
 * @param path every move with both ends known in X and A
 * @param seconds running time
 */
public record Replay(List<Made> holes, List<Leg> path, double seconds) {
    /** Keeps the lists. */
    public Replay {
        holes = List.copyOf(holes);
        path = List.copyOf(path);
    }

    /**
     * A hole or a dimple as it was made.
     *
     * @param order from 1
     * @param line line of its first cut, from 1
     * @param startSeconds when that cut began
     * @param x where along the pipe
     * @param angleDegrees the A it was made at
     * @param bottom Z of the lowest point
     * @param bored how wide it is bored by arcs; 0 for a hole as wide as its cutter
     * @param cutter the cutter; empty where no plan names one
     * @param dimple whether it is only a mark
     */
    public record Made(
            int order,
            int line,
            double startSeconds,
            double x,
            double angleDegrees,
            double bottom,
            double bored,
            Optional<Cutter> cutter,
            boolean dimple) {

        /**
         * Returns how wide it is.
         *
         * @return bored, or the cutter's as-drilled size; 0 where neither is known
         */
        public double diameter() {
            return bored > 0 ? bored : cutter.map(c -> c.asDrilled().nominal()).orElse(0.0);
        }
    }

    /**
     * A straight move.
     *
     * @param line the line that made it, from 1
     * @param cut whether it cuts; a rapid if not
     * @param startSeconds when it began
     * @param fromX X of its start
     * @param fromAngleDegrees A of its start
     * @param toX X of its end
     * @param toAngleDegrees A of its end
     * @param toZ Z of its end
     */
    public record Leg(
            int line,
            boolean cut,
            double startSeconds,
            double fromX,
            double fromAngleDegrees,
            double toX,
            double toAngleDegrees,
            double toZ) {}

    /**
     * Replays a program.
     *
     * @param file the program; its text is what is run
     * @param settings machine and pipe
     * @return what it does; words that are not known do nothing
     */
    public static Replay of(ProgramFile file, RotarySettings settings) {
        BlockReader reader = BlockReader.read(file.text());
        Interpreter.Run run = Interpreter.run(reader.blocks(), Pose.UNKNOWN, Interpreter.Dialect.of(settings));
        return of(new Proof(file, settings, reader.blocks(), run.events()));
    }

    static Replay of(Proof proof) {
        if (proof.machine().tube().isPresent()) {
            return of(proof.machine(), proof.events(), starts -> TubeMade.replayed(proof, starts));
        }
        List<Part> parts = new ArrayList<>();
        boolean byY = proof.machine().rotary().form().byY();
        for (Section section : Section.of(proof.file(), proof.events(), byY)) {
            Proof part = new Proof(section.file(), proof.settings(), proof.blocks(), section.events());
            Optional<ProgramTask> task = section.file().task();
            parts.add(new Part(
                    section.events(),
                    DrilledHole.from(part),
                    task.map(ProgramTask::cutter),
                    task.filter(ProgramTask::marks).isPresent()));
        }
        return of(proof.machine(), proof.events(), starts -> made(parts, starts));
    }

    /** The same for work that lies still: A is nowhere stated. */
    static Replay of(List<Event> events, List<BenchProof> proofs) {
        List<Part> parts = proofs.stream()
                .map(p -> new Part(
                        p.events(),
                        p.holes(),
                        Optional.of(p.tool().cutter()),
                        p.tool().dimples()))
                .toList();
        return of(proofs.get(0).machine(), events, starts -> made(parts, starts));
    }

    /** What one cutter does, with its own clear height and size; all parts together have all events in their order. */
    private record Part(List<Event> events, List<DrilledHole> holes, Optional<Cutter> cutter, boolean dimple) {}

    /** What is made follows from the seconds at which the events begin. */
    private static Replay of(Machine machine, List<Event> events, Function<List<Double>, List<Made>> making) {
        Clock clock = new Clock(machine);
        List<Leg> path = new ArrayList<>();
        List<Double> starts = new ArrayList<>();
        for (Event event : events) {
            double start = clock.seconds;
            clock.add(event);
            starts.add(start);
            if (event instanceof Event.Stroke s) {
                leg(s, start, path);
            }
        }
        return new Replay(making.apply(starts), path, clock.seconds);
    }

    private static List<Made> made(List<Part> parts, List<Double> starts) {
        List<Made> holes = new ArrayList<>();
        int before = 0;
        for (Part part : parts) {
            made(part, starts.subList(before, before + part.events().size()), holes);
            before += part.events().size();
        }
        return holes;
    }

    private static void made(Part part, List<Double> starts, List<Made> holes) {
        for (DrilledHole hole : part.holes()) {
            Pose at = hole.at();
            double start = starts.get(indexOf(part.events(), hole.cuts().get(0)));
            double bored =
                    hole.bored(part.cutter().map(Cutter::size).orElse(0.0)).orElse(0);
            holes.add(new Made(
                    holes.size() + 1, hole.line(), start, at.x(), at.a(), at.z(), bored, part.cutter(), part.dimple()));
        }
    }

    /** By identity: the same words may be there twice. */
    private static int indexOf(List<Event> events, Event.Stroke wanted) {
        for (int i = 0; i < events.size(); i++) {
            if (isSame(events.get(i), wanted)) {
                return i;
            }
        }
        throw new IllegalStateException("a hole without its cut");
    }

    @SuppressWarnings("ReferenceEquality") // the stroke itself is meant, not one like it
    private static boolean isSame(Event a, Event b) {
        return a == b;
    }

    private static void leg(Event.Stroke s, double start, List<Leg> path) {
        Pose from = s.from();
        Pose to = s.to();
        boolean known = !Double.isNaN(from.x() + from.a() + to.x() + to.a());
        if (known && !from.equals(to)) {
            path.add(new Leg(s.line(), s.feed(), start, from.x(), from.a(), to.x(), to.a(), to.z()));
        }
    }

    private static final class Clock {
        private final Machine machine;
        private double seconds;

        Clock(Machine machine) {
            this.machine = machine;
        }

        void add(Event event) {
            if (event instanceof Event.Dwell dwell) {
                double p = StrictMath.max(0, dwell.p());
                seconds += machine.post().layout().dwellMilliseconds() ? p / 1000 : p;
            } else if (event instanceof Event.Stroke s) {
                // Stretches of an outline follow one another without a stop, in the time that they state.
                boolean sweep = s.feed() && s.turns();
                seconds += sweep ? s.drive().seconds() : StrictMath.max(linear(s), turn(s));
            }
        }

        private double linear(Event.Stroke s) {
            Machine.Travel travel = machine.travel();
            double rate = s.feed() ? s.drive().feedMmPerMin() : travel.rapidMmPerMin();
            return restToRest(length(s), rate, travel.accelerationMmPerS2());
        }

        private static double length(Event.Stroke s) {
            double z = way(s.from().z(), s.to().z());
            if (s.path() instanceof Swept.Arc arc) {
                double radius =
                        StrictMath.hypot(s.from().x() - arc.centreX(), s.from().y() - arc.centreY());
                return StrictMath.hypot(radius * arc.turn(), z);
            }
            double x = way(s.from().x(), s.to().x());
            double y = way(s.from().y(), s.to().y());
            return StrictMath.hypot(StrictMath.hypot(x, y), z);
        }

        private double turn(Event.Stroke s) {
            Machine.Rotary rotary = machine.rotary();
            if (rotary.form().byHand()) {
                return 0;
            }
            return restToRest(
                    way(s.from().a(), s.to().a()), rotary.rapidDegreesPerMin(), rotary.accelerationDegreesPerS2());
        }

        private static double way(double from, double to) {
            double way = StrictMath.abs(to - from);
            return Double.isNaN(way) ? 0 : way;
        }

        /** Speeding up and slowing down take 2 v / a and v² / a of the way; the rest goes at v. */
        private static double restToRest(double way, double ratePerMin, double acceleration) {
            if (way == 0 || !(ratePerMin > 0)) {
                return 0;
            }
            double top = StrictMath.min(ratePerMin / 60, StrictMath.sqrt(way * acceleration));
            return 2 * top / acceleration + (way - top * top / acceleration) / top;
        }
    }
}
