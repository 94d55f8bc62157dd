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

    private final Machine machine;
    private final OptionalInt planned;
    private final Optional<Proof> overFirst;
    private final List<Fault> faults = new ArrayList<>();
    private boolean on;
    private boolean waited;
    private boolean cutting;
    private boolean cut;
    private double x = Double.NaN;
    private double startX = Double.NaN;
    private Optional<Event.Dwell> tooShort = Optional.empty();

    private SpindleRules(Machine machine, OptionalInt planned, Optional<Proof> overFirst) {
        this.machine = machine;
        this.planned = planned;
        this.overFirst = overFirst;
    }

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
        SpindleRules rules = new SpindleRules(machine, planned, overFirst);
        events.forEach(rules::event);
        if (rules.on) {
            int line = events.isEmpty() ? 1 : events.get(events.size() - 1).line();
            rules.fault(line, "the spindle off at the end", "spindle running");
        }
        return List.copyOf(rules.faults);
    }

    private void event(Event event) {
        if (event instanceof Event.Spindle spindle) {
            spindle(spindle);
        } else if (event instanceof Event.Tool) {
            on = false;
            waited = false;
        } else if (event instanceof Event.Dwell dwell) {
            dwell(dwell);
        } else if (event instanceof Event.Stroke stroke && stroke.feed()) {
            cut(stroke);
        } else if (event instanceof Event.Stroke stroke) {
            x = stroke.to().x();
        }
    }

    private void spindle(Event.Spindle spindle) {
        on = spindle.on();
        waited = false;
        cutting = false;
        tooShort = Optional.empty();
        if (on) {
            speed(machine, spindle, planned, faults);
            startX = Double.isNaN(startX) ? x : startX;
            if (overFirst.isPresent() && Double.isNaN(x)) {
                fault(spindle.line(), OVER_FIRST, "before X is stated");
            }
        }
    }

    private void dwell(Event.Dwell dwell) {
        if (on && waited && !cutting) {
            fault(dwell.line(), "one dwell after the spindle starts", "a second one");
        }
        boolean enough = seconds(machine, dwell) >= leastDwell(machine);
        if (on && !waited && !enough) {
            tooShort = Optional.of(dwell);
        }
        waited = waited || enough;
    }

    private void cut(Event.Stroke stroke) {
        boolean first = !cut;
        double startedAt = startX;
        overFirst
                .filter(p -> first && StrictMath.abs(axis(stroke, p) - startedAt) > p.tolerance())
                .ifPresent(p -> fault(stroke.line(), OVER_FIRST, "X " + p.text(startedAt)));
        boolean told = cutting;
        cutting = true;
        cut = true;
        if (!on || !(stroke.drive().rpm() > 0)) {
            fault(stroke.line(), "the spindle running before a cut", "spindle off");
        } else if (!waited && !told) {
            noDwell(stroke);
        }
    }

    /** Told once for each start of the spindle. */
    private void noDwell(Event.Stroke stroke) {
        String expected = "a dwell after the spindle starts of " + seconds(leastDwell(machine)) + " or more";
        tooShort.ifPresentOrElse(
                d -> fault(d.line(), expected, seconds(seconds(machine, d))),
                () -> fault(stroke.line(), expected, "a cut without one"));
    }

    private static String seconds(double seconds) {
        return Decimals.trimmed(seconds, 2) + " s";
    }

    private void fault(int line, String expected, String found) {
        faults.add(new Fault(line, expected, found));
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
