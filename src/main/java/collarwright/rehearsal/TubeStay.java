package collarwright.rehearsal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What a tube cutter does from leaving the clear height until it comes back to it.
 *
 * @param events in order
 * @param line the line of the first
 */
record TubeStay(List<Event> events, int line) {

    TubeStay {
        events = List.copyOf(events);
    }

    /** What a stay makes, told by its moves alone. */
    enum Kind {
        /** Nothing moves while it is down: a spot. */
        SPOT,
        /** The pipe turns, X does not move: a cut all round. */
        ROUND,
        /** Both move: the outline of a hole. */
        OUTLINE
    }

    /** Gathers the stays of a program; what is left open at the end is one as well. */
    static List<TubeStay> of(Proof proof) {
        List<TubeStay> stays = new ArrayList<>();
        List<Event> open = new ArrayList<>();
        for (Event event : proof.events()) {
            boolean stroke = event instanceof Event.Stroke;
            boolean high = event instanceof Event.Stroke s && proof.atClear(s.to().z());
            boolean down = event instanceof Event.Stroke s && !proof.atClear(s.lowest());
            if (high && !down) {
                close(open, stays);
            } else if (stroke || !open.isEmpty() || event instanceof Event.Spindle) {
                open.add(event);
                if (high) {
                    close(open, stays);
                }
            }
        }
        close(open, stays);
        return stays;
    }

    private static void close(List<Event> open, List<TubeStay> stays) {
        if (!open.isEmpty()) {
            stays.add(new TubeStay(open, open.get(0).line()));
        }
        open.clear();
    }

    /** Its cuts with X or the pipe, in order. */
    List<Event.Stroke> sweeps() {
        return events.stream()
                .filter(e -> e instanceof Event.Stroke s && s.feed() && (s.turns() || s.travels()))
                .map(Event.Stroke.class::cast)
                .toList();
    }

    Kind kind() {
        List<Event.Stroke> sweeps = sweeps();
        if (sweeps.isEmpty()) {
            return Kind.SPOT;
        }
        return sweeps.stream().anyMatch(Event.Stroke::travels) ? Kind.OUTLINE : Kind.ROUND;
    }

    /** Where it goes down. */
    Pose start() {
        return events.stream()
                .filter(Event.Stroke.class::isInstance)
                .map(e -> ((Event.Stroke) e).from())
                .findFirst()
                .orElse(Pose.UNKNOWN);
    }

    /** Where the cuts go, from where the first one starts. */
    List<Pose> track() {
        List<Pose> track = new ArrayList<>();
        for (Event.Stroke sweep : sweeps()) {
            if (track.isEmpty()) {
                track.add(sweep.from());
            }
            track.add(sweep.to());
        }
        return track;
    }

    /** The middle of an outline's reach along X and round the pipe; of anything else where it goes down. */
    Pose middle() {
        if (kind() != Kind.OUTLINE) {
            return start();
        }
        double[] x = reach(Pose::x);
        double[] a = reach(Pose::a);
        return new Pose((x[0] + x[1]) / 2, 0, track().get(0).z(), (a[0] + a[1]) / 2);
    }

    double lowest() {
        return events.stream()
                .filter(Event.Stroke.class::isInstance)
                .mapToDouble(e -> ((Event.Stroke) e).lowest())
                .min()
                .orElse(Double.NaN);
    }

    /** How far an outline reaches along X. */
    double length() {
        double[] x = reach(Pose::x);
        return x[1] - x[0];
    }

    private double[] reach(ToDoubleFunction<Pose> axis) {
        double[] sorted = track().stream().mapToDouble(axis).sorted().toArray();
        return new double[] {sorted[0], sorted[sorted.length - 1]};
    }
}
