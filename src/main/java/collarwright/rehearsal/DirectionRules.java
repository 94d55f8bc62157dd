package collarwright.rehearsal;

import java.util.ArrayList;
import java.util.List;

/** The rotary direction test only takes a cutter in, lifts Z, goes to A0, stops, turns to A30 and stops again. */
final class DirectionRules {

    private DirectionRules() {}

    static List<Fault> check(Proof proof) {
        List<Fault> faults = new ArrayList<>(
                CutterRules.check(proof.machine().post().layout().habits(), proof.events()));
        List<String> done = new ArrayList<>();
        for (Event event : proof.events()) {
            if (event instanceof Event.Stroke s) {
                done.add(step(proof, s, faults));
            } else if (event instanceof Event.Stop stop) {
                if (StopNote.read(stop.comments()).isEmpty()) {
                    done.add("stop");
                }
            } else if (event instanceof Event.Spindle || event instanceof Event.Dwell) {
                faults.add(new Fault(event.line(), "a test that moves Z and A only", "spindle or dwell"));
            }
        }
        if (!done.equals(List.of("Z", "A0", "stop", "A30", "stop"))) {
            faults.add(new Fault(1, "Z up, A0, stop, A30, stop", String.join(", ", done)));
        }
        return faults;
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
