package collarwright.rehearsal;

import collarwright.machining.ProgramFile;
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
        List<List<Event>> parts = split(events, views.size(), byY);
        List<Section> sections = new ArrayList<>();
        for (int i = 0; i < views.size(); i++) {
            sections.add(new Section(views.get(i), parts.get(i)));
        }
        return sections;
    }

    /**
     * Takes events apart at changes of the cutter.
     *
     * @param count how many parts are wanted, 1 or more; parts that are lacking are empty
     */
    static List<List<Event>> split(List<Event> events, int count, boolean byY) {
        if (count < 2) {
            return List.of(events);
        }
        List<List<Event>> parts = new ArrayList<>();
        parts.add(new ArrayList<>());
        for (Event event : events) {
            boolean used = parts.get(parts.size() - 1).stream().anyMatch(Event.Stroke.class::isInstance);
            if (used && change(event).isPresent() && parts.size() < count) {
                parts.add(new ArrayList<>());
            }
            parts.get(parts.size() - 1).add(event);
        }
        List<List<Event>> out = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            out.add(i < parts.size() ? restated(parts.get(i), byY) : List.of());
        }
        return out;
    }

    /** The cutter that comes in. */
    static Optional<StopNote.Cutter> change(Event event) {
        if (event instanceof Event.Tool tool) {
            return Optional.of(new StopNote.Cutter(tool.number(), ""));
        }
        if (event instanceof Event.Stop stop) {
            return StopNote.read(stop.comments()).stream()
                    .filter(StopNote.Cutter.class::isInstance)
                    .map(StopNote.Cutter.class::cast)
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
}
