package collarwright.rehearsal;

import collarwright.machining.Machine;
import collarwright.machining.ProgramUnits;
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
    private static final Pattern ARC_INCHES = Pattern.compile("ARC \\d+\\.\\d+ IN, (\\d+\\.\\d+) MM FROM THE 0 LINE");
    private static final Pattern INCHES = Pattern.compile("ARC (\\d+\\.\\d+) IN, .*");

    private final Machine machine;
    private final Hand hand;
    private final List<Fault> faults = new ArrayList<>();
    private boolean on;
    private boolean waited = true;

    /** What a hand turns. */
    sealed interface Hand {}

    /** The pipe, if its profile has no word that turns it. */
    record Pipe(Proof proof) implements Hand {}

    /** The strut on a bed, or nothing. */
    record Bench(boolean struts) implements Hand {}

    private HandRules(Machine machine, Hand hand) {
        this.machine = machine;
        this.hand = hand;
    }

    static List<Fault> check(Proof proof) {
        return check(proof.machine(), proof.events(), new Pipe(proof));
    }

    static List<Fault> check(Machine machine, List<Event> events, Hand hand) {
        HandRules rules = new HandRules(machine, hand);
        events.forEach(rules::event);
        return List.copyOf(rules.faults);
    }

    private void event(Event event) {
        if (event instanceof Event.Spindle spindle) {
            on = spindle.on();
            waited = false;
        } else if (event instanceof Event.Dwell dwell) {
            waited = waited || SpindleRules.seconds(machine, dwell) >= SpindleRules.leastDwell(machine);
        } else if (event instanceof Event.Tool tool) {
            on = false;
            stands(tool.line(), "changes the cutter");
        } else if (event instanceof Event.Stop stop) {
            stop(stop);
        }
    }

    private void stop(Event.Stop stop) {
        List<StopNote> notes = StopNote.read(stop.comments());
        if (stop.comments().isEmpty()) {
            fault(stop.line(), "a stop with a text that says what to do", "M0 alone");
        } else if (hand instanceof Bench bench) {
            bench(bench, stop, notes);
        }
        for (StopNote note : notes) {
            if (note instanceof StopNote.Turn turn) {
                turn(turn, stop);
            } else if (note instanceof StopNote.Cutter) {
                stands(stop.line(), "changes the cutter");
            } else if (note instanceof StopNote.Touch) {
                stands(stop.line(), "sets Z");
            } else if (note instanceof StopNote.Plugs) {
                stands(stop.line(), "takes plugs out of the saw");
            } else if (machine.spindle().controlled()) {
                fault(stop.line(), "a word that starts or stops the spindle", "a hand that does");
            }
        }
    }

    private void turn(StopNote.Turn turn, Event.Stop stop) {
        stands(stop.line(), "turns the pipe");
        if (hand instanceof Pipe pipe) {
            angle(pipe.proof(), stop, turn.degrees());
        }
        if (!machine.rotary().form().byHand()) {
            fault(stop.line(), "a word that turns the pipe", "a hand that does");
        }
    }

    /** A strut is turned by words of one form, and a program waits for nothing else that no note tells. */
    private void bench(Bench bench, Event.Stop stop, List<StopNote> notes) {
        double turned = StrutHole.clockwise(stop);
        if (bench.struts() && !Double.isNaN(turned) && turned != 0) {
            stands(stop.line(), "turns the strut");
        } else if (notes.isEmpty()) {
            fault(
                    stop.line(),
                    bench.struts() ? "words that tell by how much to turn" : "no stop but to change the cutter",
                    "(" + text(stop) + ")");
        }
    }

    private void stands(int line, String what) {
        if (on || !waited) {
            fault(line, "the spindle stopped, and a dwell, before a hand " + what, on ? "spindle running" : "no dwell");
        }
    }

    private void angle(Proof proof, Event.Stop stop, double degrees) {
        double minutes = told(stop, MINUTES, 60).orElse(Double.NaN) / 60;
        if (!(StrictMath.abs(minutes - degrees) <= 0.0051 / 60 + 1e-9)) {
            fault(stop.line(), proof.degrees(degrees) + " also in degrees and minutes", text(stop));
        }
        double radius = proof.settings().work().body().outerRadius();
        double arc = StrictMath.toRadians(degrees) * radius;
        boolean inch = proof.units() == ProgramUnits.INCH;
        double told = told(stop, inch ? ARC_INCHES : ARC, 1).orElse(Double.NaN);
        double inches = inch ? told(stop, INCHES, 1).orElse(Double.NaN) : arc / 25.4;
        if (!(StrictMath.abs(told - arc) <= 0.0051 && StrictMath.abs(inches - arc / 25.4) <= 0.00051)) {
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
