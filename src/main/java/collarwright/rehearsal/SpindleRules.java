package collarwright.rehearsal;

import collarwright.machining.Machine;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** The spindle turns before it cuts, has time to come up to speed, and stands still at the end. */
final class SpindleRules {

    private static final String OVER_FIRST = "the spindle started over the first hole";

    private SpindleRules() {}

    static List<Fault> check(Proof proof) {
        OptionalInt planned =
                proof.file().task().stream().mapToInt(t -> t.cut().rpm()).findFirst();
        return check(proof.machine(), proof.events(), planned, Optional.of(proof));
    }

    /** The same for work that lies still, where the spindle may start anywhere at clear height. */
    static List<Fault> check(Machine machine, List<Event> events, OptionalInt planned) {
        return check(machine, events, planned, Optional.empty());
    }

    private static List<Fault> check(
            Machine machine, List<Event> events, OptionalInt planned, Optional<Proof> overFirst) {
        List<Fault> faults = new ArrayList<>();
        boolean on = false;
        boolean waited = false;
        boolean cutting = false;
        boolean cut = false;
        double x = Double.NaN;
        double startX = Double.NaN;
        int line = 1;
        for (Event event : events) {
            line = event.line();
            if (event instanceof Event.Spindle spindle) {
                on = spindle.on();
                waited = false;
                cutting = false;
                if (on) {
                    speed(machine, spindle, planned, faults);
                    startX = Double.isNaN(startX) ? x : startX;
                    if (overFirst.isPresent() && Double.isNaN(x)) {
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
                waited = waited || seconds(machine, dwell) >= leastDwell(machine);
            } else if (event instanceof Event.Stroke stroke && !stroke.feed()) {
                x = stroke.to().x();
            } else if (event instanceof Event.Stroke stroke && stroke.feed()) {
                double startedAt = startX;
                boolean first = !cut;
                overFirst
                        .filter(p -> first && StrictMath.abs(axis(stroke, p) - startedAt) > p.tolerance())
                        .ifPresent(p -> faults.add(new Fault(stroke.line(), OVER_FIRST, "X " + p.text(startedAt))));
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

    /** Where the first cut is; to bore, the cutter goes out from the hole's axis. */
    private static double axis(Event.Stroke stroke, Proof proof) {
        return proof.bores() ? stroke.from().x() : stroke.to().x();
    }

    private static void speed(Machine machine, Event.Spindle spindle, OptionalInt planned, List<Fault> faults) {
        Machine.Spindle range = machine.spindle();
        if (spindle.rpm() < range.minRpm() || spindle.rpm() > range.maxRpm()) {
            faults.add(new Fault(
                    spindle.line(),
                    "S between " + rpm(range.minRpm()) + " and " + rpm(range.maxRpm()),
                    rpm(spindle.rpm())));
        }
        planned.stream()
                .filter(rpm -> rpm != spindle.rpm())
                .forEach(rpm -> faults.add(new Fault(spindle.line(), rpm(rpm) + " as planned", rpm(spindle.rpm()))));
    }

    private static String rpm(double rpm) {
        return Decimals.trimmed(rpm, 1) + " rpm";
    }

    static double seconds(Machine machine, Event.Dwell dwell) {
        return machine.post().layout().dwellMilliseconds() ? dwell.p() / 1000 : dwell.p();
    }

    /** Printed with two decimals of seconds. */
    static double leastDwell(Machine machine) {
        return StrictMath.max(0.01, machine.spindle().startSeconds() - 0.0051);
    }
}
