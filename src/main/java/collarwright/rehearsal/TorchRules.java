package collarwright.rehearsal;

import collarwright.machining.ProgramFile;
import collarwright.machining.TubeCutter;
import java.util.ArrayList;
import java.util.List;

/**
 * What a tube cutter cuts with is switched on where it pierces, waits, cuts, and is switched off before anything else moves;
 * in an air cut it is never switched on.
 */
final class TorchRules {

    private final Proof proof;
    private final TubeCutter tube;
    private final boolean air;
    private final List<Fault> faults = new ArrayList<>();
    private boolean on;
    private boolean cutting;
    private int waits;
    private Pose at = Pose.UNKNOWN;

    private TorchRules(Proof proof) {
        this.proof = proof;
        this.tube = proof.machine().tube().orElseThrow();
        this.air = proof.file().purpose() == ProgramFile.Purpose.AIR_CUT;
    }

    static List<Fault> check(Proof proof) {
        TorchRules rules = new TorchRules(proof);
        proof.events().forEach(rules::event);
        return List.copyOf(rules.faults);
    }

    private void event(Event event) {
        if (event instanceof Event.Spindle torch) {
            torch(torch);
        } else if (event instanceof Event.Dwell dwell) {
            dwell(dwell);
        } else if (event instanceof Event.Stroke stroke) {
            stroke(stroke);
            at = stroke.to();
        } else if (event instanceof Event.End && on) {
            fault(event, "it switched off at the end", "still on");
        } else if (event instanceof Event.Stop) {
            fault(event, "no stop in a program that cuts tubes", "M0");
        }
    }

    private void torch(Event.Spindle torch) {
        if (air) {
            fault(torch, "an air cut that switches nothing", torch.on() ? "M3" : "M5");
        } else if (torch.on() == on) {
            fault(torch, on ? "M5 before the next M3" : "M3 before M5", "a second one");
        }
        double pierce =
                proof.settings().work().body().outerRadius() + tube.heights().pierce();
        boolean placed = StrictMath.abs(at.z() - pierce) <= 2 * proof.tolerance() && !Double.isNaN(at.x() + at.a());
        if (torch.on() && !air && !placed) {
            fault(torch, "it switched on at Z " + proof.text(pierce) + ", where it pierces", "Z " + proof.text(at.z()));
        }
        if (!torch.on() && waits == 0 && !air) {
            fault(torch, "a dwell between M3 and M5", "none");
        }
        on = torch.on();
        waits = 0;
        cutting = false;
    }

    private void dwell(Event.Dwell dwell) {
        double seconds = SpindleRules.seconds(proof.machine(), dwell);
        boolean pierce = StrictMath.abs(seconds - tube.start().pierceSeconds()) <= 0.0051;
        boolean mark = tube.start().markSeconds() > 0
                && StrictMath.abs(seconds - tube.start().markSeconds()) <= 0.0051;
        if (!pierce && !mark) {
            fault(dwell, "a dwell of " + tube.start().pierceSeconds() + " s to pierce", seconds + " s");
        }
        waits++;
        if (waits > 1 && !air) {
            fault(dwell, "one dwell after M3", "a second one");
        }
        if (!air && (!on || cutting)) {
            fault(dwell, "a dwell right after M3", on ? "while it cuts" : "nothing is on");
        }
    }

    private void stroke(Event.Stroke stroke) {
        if (!stroke.feed()) {
            if (on) {
                fault(stroke, "it switched off before a rapid", "on");
            }
            waits = 0;
            return;
        }
        cutting = true;
        if (!air && !on) {
            fault(stroke, "it switched on while it cuts", "off");
        } else if (waits == 0) {
            fault(stroke, "a dwell before the cut, to pierce", "none");
        }
    }

    private void fault(Event event, String expected, String found) {
        faults.add(new Fault(event.line(), expected, found));
    }
}
