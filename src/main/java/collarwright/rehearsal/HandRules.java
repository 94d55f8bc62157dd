package collarwright.rehearsal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where a hand turns the pipe or changes the cutter: the spindle stands and had time to run out, and the angle that is
 * told three ways (degrees, degrees and minutes, arc) is one angle.
 */
final class HandRules {

    private static final Pattern MINUTES = Pattern.compile("THAT IS (\\d+) DEG (\\d+\\.\\d+) MIN");
    private static final Pattern ARC = Pattern.compile("ARC (\\d+\\.\\d+) MM FROM THE 0 LINE");

    private final Proof proof;
    private final List<Fault> faults = new ArrayList<>();
    private boolean on;
    private boolean waited = true;

    private HandRules(Proof proof) {
        this.proof = proof;
    }

    static List<Fault> check(Proof proof) {
        HandRules rules = new HandRules(proof);
        proof.events().forEach(rules::event);
        return List.copyOf(rules.faults);
    }

    private void event(Event event) {
        if (event instanceof Event.Spindle spindle) {
            on = spindle.on();
            waited = false;
        } else if (event instanceof Event.Dwell dwell) {
            waited = waited || SpindleRules.seconds(proof.machine(), dwell) >= SpindleRules.leastDwell(proof.machine());
        } else if (event instanceof Event.Tool tool) {
            on = false;
            stands(tool.line(), "changes the cutter");
        } else if (event instanceof Event.Stop stop) {
            stop(stop);
        }
    }

    private void stop(Event.Stop stop) {
        boolean byHand = proof.machine().rotary().form().byHand();
        if (stop.comments().isEmpty()) {
            fault(stop.line(), "a stop with a text that says what to do", "M0 alone");
        }
        for (StopNote note : StopNote.read(stop.comments())) {
            if (note instanceof StopNote.Turn turn) {
                stands(stop.line(), "turns the pipe");
                angle(stop, turn.degrees());
                if (!byHand) {
                    fault(stop.line(), "a word that turns the pipe", "a hand that does");
                }
            } else if (note instanceof StopNote.Cutter) {
                stands(stop.line(), "changes the cutter");
            } else if (note instanceof StopNote.Plugs) {
                stands(stop.line(), "takes plugs out of the saw");
            } else if (proof.machine().spindle().controlled()) {
                fault(stop.line(), "a word that starts or stops the spindle", "a hand that does");
            }
        }
    }

    private void stands(int line, String what) {
        if (on || !waited) {
            fault(line, "the spindle stopped, and a dwell, before a hand " + what, on ? "spindle running" : "no dwell");
        }
    }

    private void angle(Event.Stop stop, double degrees) {
        double minutes = told(stop, MINUTES, 60).orElse(Double.NaN) / 60;
        if (!(StrictMath.abs(minutes - degrees) <= 0.0051 / 60 + 1e-9)) {
            fault(stop.line(), proof.degrees(degrees) + " also in degrees and minutes", text(stop));
        }
        double radius = proof.settings().work().body().outerRadius();
        double arc = told(stop, ARC, 1).orElse(Double.NaN);
        if (!(StrictMath.abs(arc - StrictMath.toRadians(degrees) * radius) <= 0.0051)) {
            fault(stop.line(), proof.degrees(degrees) + " also as an arc from the 0 line", text(stop));
        }
    }

    /** The first number, times a factor, and the second. */
    private static Optional<Double> told(Event.Stop stop, Pattern form, double factor) {
        for (String comment : stop.comments()) {
            Matcher matcher = form.matcher(comment);
            if (matcher.matches()) {
                double second = matcher.groupCount() > 1 ? Double.parseDouble(matcher.group(2)) : 0;
                return Optional.of(Double.parseDouble(matcher.group(1)) * factor + second);
            }
        }
        return Optional.empty();
    }

    private static String text(Event.Stop stop) {
        return stop.comments().isEmpty() ? "nothing" : String.join("; ", stop.comments());
    }

    private void fault(int line, String expected, String found) {
        faults.add(new Fault(line, expected, found));
    }
}
