package collarwright.rehearsal;

import java.util.ArrayList;
import java.util.List;

/** The rotary direction test only takes a cutter in, lifts Z, goes to A0, stops, turns to A30 and stops again. */
final class DirectionRules {

    private static final List<String> STEPS = List.of("Z", "A0", "stop", "A30", "stop");

    private DirectionRules() {}

    static List<Fault> check(Proof proof) {
        List<Fault> faults = new ArrayList<>(
                CutterRules.check(proof.machine().post().layout().habits(), proof.events()));
        List<String> done = new ArrayList<>();
        List<Integer> lines = new ArrayList<>();
        for (Event event : proof.events()) {
            if (event instanceof Event.Stroke s) {
                done.add(step(proof, s, faults));
                lines.add(s.line());
            } else if (event instanceof Event.Stop stop) {
                if (StopNote.read(stop.comments()).isEmpty()) {
                    done.add("stop");
                    lines.add(stop.line());
                }
            } else if (event instanceof Event.Spindle || event instanceof Event.Dwell) {
                faults.add(new Fault(event.line(), "a test that moves Z and A only", "spindle or dwell"));
            }
        }
        if (!done.equals(STEPS)) {
            faults.add(new Fault(firstOther(done, lines, proof), "Z up, A0, stop, A30, stop", String.join(", ", done)));
        }
        return faults;
    }

    /** The line of the first step that is another one; the last line where one is missing at the end. */
    private static int firstOther(List<String> done, List<Integer> lines, Proof proof) {
        for (int i = 0; i < done.size(); i++) {
            if (i >= STEPS.size() || !done.get(i).equals(STEPS.get(i))) {
                return lines.get(i);
            }
        }
        List<Event> events = proof.events();
        return events.isEmpty() ? 1 : events.get(events.size() - 1).line();
    }

    private static String step(Proof proof, Event.Stroke stroke, List<Fault> faults) {
        if (!proof.atClear(stroke.to().z())) {
            faults.add(new Fault(
                    stroke.line(),
                    "Z " + proof.text(proof.clear()) + " or higher",
                    "Z " + proof.text(stroke.to().z())));
        }
        if (stroke.feed() || stroke.travels()) {
            faults.add(new Fault(stroke.line(), "a test that moves Z and A only", "another move"));
        }
        if (!stroke.turns()) {
            return "Z";
        }
        double a = stroke.to().a();
        double slack = proof.angleToleranceDegrees();
        return StrictMath.abs(a) <= slack ? "A0" : StrictMath.abs(a - 30) <= slack ? "A30" : proof.degrees(a);
    }
}
