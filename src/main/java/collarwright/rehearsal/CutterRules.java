package collarwright.rehearsal;

import collarwright.machining.ControlHabits;
import collarwright.tooling.Cutter;
import java.util.ArrayList;
import java.util.List;

/**
 * The right cutter comes in, and Z counts with its own length: taken from the control's table by one G43, or touched anew,
 * before anything moves.
 */
final class CutterRules {

    private final ControlHabits habits;
    private final List<Event> events;
    private final List<Fault> faults = new ArrayList<>();

    private CutterRules(ControlHabits habits, List<Event> events) {
        this.habits = habits;
        this.events = events;
    }

    /**
     * Holds what a program does with one cutter against that cutter.
     *
     * @param events what is done with it, from its change on
     * @param number its number in the job
     * @param cutter the cutter
     */
    static List<Fault> check(ControlHabits habits, List<Event> events, int number, Cutter cutter) {
        if (!habits.allInOneFile()) {
            return List.of();
        }
        CutterRules rules = new CutterRules(habits, events);
        rules.changes(number);
        rules.titles(number, cutter);
        rules.length(number);
        return List.copyOf(rules.faults);
    }

    /** The same for a program that may have any cutter in. */
    static List<Fault> check(ControlHabits habits, List<Event> events) {
        if (habits.toolChange() != ControlHabits.ToolChange.M6) {
            return List.of();
        }
        CutterRules rules = new CutterRules(habits, events);
        int number = events.stream()
                .flatMap(e -> Section.change(e).stream())
                .map(StopNote.Cutter::number)
                .findFirst()
                .orElse(0);
        rules.changes(number);
        rules.length(number);
        return List.copyOf(rules.faults);
    }

    private void changes(int number) {
        List<Integer> changes = events.stream()
                .flatMap(e -> Section.change(e).stream())
                .map(StopNote.Cutter::number)
                .toList();
        boolean needed = habits.toolChange() == ControlHabits.ToolChange.M6;
        if (!changes.equals(List.of(number)) && (needed || !changes.isEmpty())) {
            fault(start(), "cutter " + number, changes.isEmpty() ? "none" : "cutter " + then(changes));
        } else if (!changes.isEmpty() && lastChange() > firstMove()) {
            fault(events.get(lastChange()).line(), "cutter " + number + " before anything moves", "after a move");
        }
    }

    /** What a change says of the cutter: a hand puts in what it reads. */
    private void titles(int number, Cutter cutter) {
        String title = cutter.id() + ", " + cutter.kind().title() + " "
                + cutter.marked().replace("#", "No. ");
        for (Event event : events) {
            List<String> comments = event instanceof Event.Tool t
                    ? t.comments()
                    : event instanceof Event.Stop s ? s.comments() : List.of();
            for (StopNote note : StopNote.read(comments)) {
                if (note instanceof StopNote.Cutter c
                        && !(c.number() == number && c.title().equals(title))) {
                    fault(event.line(), "CUTTER " + number + ", " + title, "CUTTER " + c.number() + ", " + c.title());
                }
            }
        }
    }

    private void length(int number) {
        List<Event.Offset> offsets = events.stream()
                .filter(Event.Offset.class::isInstance)
                .map(Event.Offset.class::cast)
                .toList();
        int change = lastChange();
        if (habits.lengthTable()) {
            boolean one = offsets.size() == 1 && offsets.get(0).number() == number;
            int at = one ? events.indexOf(offsets.get(0)) : -1;
            if (!one || at < change || at > firstMove()) {
                fault(
                        offsets.isEmpty()
                                ? start()
                                : offsets.get(offsets.size() - 1).line(),
                        "one G43 H" + number + " after its change and before the first move with the cutter",
                        offsets.isEmpty() ? "none" : one ? "another place" : "H" + numbers(offsets));
            }
        } else if (change >= 0) {
            boolean touched = events.subList(change, StrictMath.max(change, firstMove())).stream()
                    .anyMatch(CutterRules::touches);
            if (!touched) {
                fault(
                        events.get(change).line(),
                        "a stop to set Z anew after the change to cutter " + number + ", before anything moves",
                        "none");
            }
        }
    }

    private static String then(List<Integer> numbers) {
        return String.join(
                ", then ", numbers.stream().map(n -> Integer.toString(n)).toList());
    }

    private static String numbers(List<Event.Offset> offsets) {
        return String.join(
                ", H", offsets.stream().map(o -> Integer.toString(o.number())).toList());
    }

    private static boolean touches(Event event) {
        return event instanceof Event.Stop stop
                && StopNote.read(stop.comments()).stream().anyMatch(StopNote.Touch.class::isInstance);
    }

    /** Where the last change is among the events; -1 for none. */
    private int lastChange() {
        int last = -1;
        for (int i = 0; i < events.size(); i++) {
            last = Section.change(events.get(i)).isPresent() ? i : last;
        }
        return last;
    }

    private int firstMove() {
        for (int i = 0; i < events.size(); i++) {
            if (events.get(i) instanceof Event.Stroke) {
                return i;
            }
        }
        return events.size();
    }

    private int start() {
        return events.isEmpty() ? 1 : events.get(0).line();
    }

    private void fault(int line, String expected, String found) {
        faults.add(new Fault(line, expected, found));
    }
}
