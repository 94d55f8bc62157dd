package collarwright.rehearsal;

import collarwright.machining.Machine;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/** The spindle turns before it cuts, has time to come up to speed, and stands still at the end. */
final class SpindleRules {

    private static final String OVER_FIRST = "the spindle started over the first hole";

    private SpindleRules() {}

    static List<Fault> check(Proof proof) {
        List<Fault> faults = new ArrayList<>();
        boolean on = false;
        boolean waited = false;
        boolean cutting = false;
        boolean cut = false;
        double x = Double.NaN;
        double startX = Double.NaN;
        int line = 1;
        for (Event event : proof.events()) {
            line = event.line();
            if (event instanceof Event.Spindle spindle) {
                on = spindle.on();
                waited = false;
                cutting = false;
                if (on) {
                    speed(proof, spindle, faults);
                    startX = Double.isNaN(startX) ? x : startX;
                    if (Double.isNaN(x)) {
                        faults.add(new Fault(line, OVER_FIRST, "before X is stated"));
                    }
                }
            } else if (event instanceof Event.Tool) {
                on = false;
                waited = false;
            } else if (event instanceof Event.Dwell dwell) {
                if (on && waited && !cutting) {
                    faults.add(new Fault(line, "one dwell after the spindle starts", "a second one"));
                }
                waited = waited || seconds(proof, dwell) >= leastDwell(proof);
            } else if (event instanceof Event.Stroke stroke && !stroke.feed()) {
                x = stroke.to().x();
            } else if (event instanceof Event.Stroke stroke && stroke.feed()) {
                if (!cut && StrictMath.abs(stroke.to().x() - startX) > proof.tolerance()) {
                    faults.add(new Fault(line, OVER_FIRST, "X " + proof.text(startX)));
                }
                cutting = true;
                cut = true;
                if (!on || !(stroke.drive().rpm() > 0)) {
                    faults.add(new Fault(line, "the spindle running before a cut", "spindle off"));
                } else if (!waited) {
                    faults.add(new Fault(line, "a dwell after the spindle starts", "a cut without one"));
                }
            }
        }
        if (on) {
            faults.add(new Fault(line, "the spindle off at the end", "spindle running"));
        }
        return faults;
    }

    private static void speed(Proof proof, Event.Spindle spindle, List<Fault> faults) {
        Machine.Spindle range = proof.machine().spindle();
        if (spindle.rpm() < range.minRpm() || spindle.rpm() > range.maxRpm()) {
            faults.add(new Fault(
                    spindle.line(),
                    "S between " + rpm(range.minRpm()) + " and " + rpm(range.maxRpm()),
                    rpm(spindle.rpm())));
        }
        proof.file()
                .task()
                .filter(t -> t.cut().rpm() != spindle.rpm())
                .ifPresent(t ->
                        faults.add(new Fault(spindle.line(), rpm(t.cut().rpm()) + " as planned", rpm(spindle.rpm()))));
    }

    private static String rpm(double rpm) {
        return Decimals.trimmed(rpm, 1) + " rpm";
    }

    static double seconds(Proof proof, Event.Dwell dwell) {
        return proof.machine().post().layout().dwellMilliseconds() ? dwell.p() / 1000 : dwell.p();
    }

    /** Printed with two decimals of seconds. */
    static double leastDwell(Proof proof) {
        return StrictMath.max(0.01, proof.machine().spindle().startSeconds() - 0.0051);
    }
}
