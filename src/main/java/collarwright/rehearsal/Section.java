package collarwright.rehearsal;

import collarwright.machining.ControlHabits;
import collarwright.machining.ProgramFile;
import collarwright.machining.ProgramTask;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a program does with one cutter.
 *
 * <p>Where one file holds all cutters of a stick, each cutter starts anew: no axis counts as stated until its own part of
 * the program states it, so that every rule for a program holds for every part.
 *
 * @param file the program with that cutter's task only
 * @param events from the cutter's change on
 */
record Section(ProgramFile file, List<Event> events) {
    Section {
        events = List.copyOf(events);
    }

    /**
     * Takes the events apart; too few changes leave later tasks without an event, too many join the last one.
     *
     * @param byY whether the Y word turns the pipe
     */
    static List<Section> of(ProgramFile file, List<Event> events, boolean byY) {
        List<ProgramFile> views = file.byTask();
        if (views.size() < 2) {
            return List.of(new Section(file, events));
        }
        List<List<Event>> parts = new ArrayList<>();
        parts.add(new ArrayList<>());
        for (Event event : events) {
            boolean used = parts.get(parts.size() - 1).stream().anyMatch(Event.Stroke.class::isInstance);
            if (used && change(event).isPresent() && parts.size() < views.size()) {
                parts.add(new ArrayList<>());
            }
            parts.get(parts.size() - 1).add(event);
        }
        List<Section> sections = new ArrayList<>();
        for (int i = 0; i < views.size(); i++) {
            sections.add(new Section(views.get(i), i < parts.size() ? restated(parts.get(i), byY) : List.of()));
        }
        return sections;
    }

    /** The number of the cutter that comes in. */
    static Optional<Integer> change(Event event) {
        if (event instanceof Event.Tool tool) {
            return Optional.of(tool.number());
        }
        if (event instanceof Event.Stop stop) {
            return StopNote.read(stop.comments()).stream()
                    .filter(StopNote.Cutter.class::isInstance)
                    .map(n -> ((StopNote.Cutter) n).number())
                    .findFirst();
        }
        return Optional.empty();
    }

    private static List<Event> restated(List<Event> events, boolean byY) {
        List<Event> out = new ArrayList<>();
        Pose stated = Pose.UNKNOWN;
        for (Event event : events) {
            if (event instanceof Event.Stroke s) {
                Pose to = new Pose(
                        known(s, "X", stated.x(), s.from().x(), s.to().x()),
                        known(s, byY ? "" : "Y", stated.y(), s.from().y(), s.to().y()),
                        known(s, "Z", stated.z(), s.from().z(), s.to().z()),
                        known(s, byY ? "Y" : "A", stated.a(), s.from().a(), s.to().a()));
                out.add(new Event.Stroke(s.block(), s.kind(), stated, to, s.drive(), s.path()));
                stated = to;
            } else {
                out.add(event);
            }
        }
        return out;
    }

    /** An axis counts once it is named, or changes. */
    private static double known(Event.Stroke s, String letters, double stated, double from, double to) {
        boolean named = s.block().words().stream().anyMatch(w -> letters.indexOf(w.letter()) >= 0);
        boolean hand = s.kind() == Event.Kind.HAND && letters.equals("A");
        return named || hand || from != to || !Double.isNaN(stated) ? to : Double.NaN;
    }

    private static String numbers(List<Integer> numbers) {
        return String.join(
                ", then ", numbers.stream().map(n -> Integer.toString(n)).toList());
    }

    /** The right cutter with its own length, and only where the profile has it so. */
    List<Fault> cutter(ControlHabits habits) {
        List<Fault> faults = new ArrayList<>();
        Optional<ProgramTask> task = file.task();
        if (task.isEmpty() || !habits.allInOneFile()) {
            return faults;
        }
        int number = task.get().tool();
        int line = events.isEmpty() ? 1 : events.get(0).line();
        List<Integer> changes =
                events.stream().flatMap(e -> change(e).stream()).distinct().toList();
        boolean needed = habits.toolChange() == ControlHabits.ToolChange.M6;
        if (!changes.equals(List.of(number)) && (needed || !changes.isEmpty())) {
            faults.add(new Fault(line, "cutter " + number, changes.isEmpty() ? "none" : "cutter " + numbers(changes)));
        }
        if (habits.lengthTable()) {
            Event.Stroke first = events.stream()
                    .filter(Event.Stroke.class::isInstance)
                    .map(Event.Stroke.class::cast)
                    .findFirst()
                    .orElse(null);
            int until = first == null ? events.size() : events.indexOf(first);
            boolean set = events.subList(0, until).stream()
                    .anyMatch(e -> e instanceof Event.Offset o && o.number() == number);
            if (!set) {
                faults.add(new Fault(line, "G43 H" + number + " before the first move with the cutter", "none"));
            }
        }
        return faults;
    }
}
