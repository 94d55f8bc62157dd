package collarwright.job;

import collarwright.machining.Machine;
import collarwright.units.Length;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads machines from profile files. A press needs its spindle only; a rotary machine needs everything. */
final class MachineProfiles {

    private MachineProfiles() {}

    /**
     * Reads one machine.
     *
     * @param entry its table with name, title and source
     * @return the machine, or empty after findings
     */
    static Optional<Machine> read(ProfileFile.Entry entry) {
        TableView table = entry.table();
        Map<String, Machine.Kind> kinds = new LinkedHashMap<>();
        kinds.put("press", Machine.Kind.PRESS);
        kinds.put("rotary", Machine.Kind.ROTARY);
        Optional<Machine.Kind> kind =
                table.need("kind", "press or rotary", "kind = \"press\"").word(kinds);
        MachinePart spindlePart = new MachinePart(table, "spindle", "the spindle's speeds");
        Machine.Spindle spindle = spindle(spindlePart);
        if (kind.isEmpty()) {
            return Optional.empty();
        }
        if (kind.get() == Machine.Kind.PRESS) {
            return spindlePart.faulty() ? Optional.empty() : Optional.of(press(entry, spindle));
        }
        MachinePart postPart = new MachinePart(table, "post", "how programs are written");
        MachinePart travelPart = new MachinePart(table, "travel", "how far and how fast the machine moves");
        MachinePart rotaryPart = new MachinePart(table, "rotary", "the rotary axis and its chuck");
        Machine.Rotary rotary = RotaryProfile.read(rotaryPart);
        Machine.Post post = new PostProfile(postPart, spindle, rotary.form()).read();
        Machine.Travel travel = travel(travelPart);
        if (rotary.form().byY() && travel.across().isPresent()) {
            travelPart.conflict(
                    "y",
                    "no travel of Y where a Y word turns the pipe",
                    "rotary.form = " + RotaryProfile.name(rotary.form()),
                    "take travel.y out, or let an A word turn the pipe");
        }
        boolean faulty = spindlePart.faulty() || postPart.faulty() || travelPart.faulty() || rotaryPart.faulty();
        return faulty
                ? Optional.empty()
                : Optional.of(new Machine(
                        entry.name(), entry.title(), kind.get(), post, travel, spindle, rotary, entry.source()));
    }

    private static Machine press(ProfileFile.Entry entry, Machine.Spindle spindle) {
        return new Machine(
                entry.name(),
                entry.title(),
                Machine.Kind.PRESS,
                new Machine.Post(false, Set.of(), 3, 3, 70, "M2", "ngc"),
                new Machine.Travel(0, 0, 0, 0, 0, 0, 0, 0),
                spindle,
                new Machine.Rotary(true, true, 0, 0, 0, 0, 0, 0, 0, 0, 0),
                entry.source());
    }

    private static Machine.Spindle spindle(MachinePart part) {
        double least = part.number("min-rpm", "lowest speed, turns a minute", 1, 200_000);
        double most = part.number("max-rpm", "highest speed, turns a minute", 1, 200_000);
        double start = part.number("start-seconds", "wait after a start or a stop, seconds", 0, 60);
        part.ascending("min-rpm", least, "max-rpm", most);
        boolean controlled = part.flag("control", "whether programs start and stop the spindle", true);
        return new Machine.Spindle(least, most, start, controlled);
    }

    private static Machine.Travel travel(MachinePart part) {
        double[] x = part.span("x");
        double[] z = part.span("z");
        Optional<Machine.Reach> across = Optional.of("y")
                .filter(part::has)
                .map(part::span)
                .filter(s -> s[0] < s[1])
                .map(s -> new Machine.Reach(s[0], s[1]));
        double rapid = part.number("rapid-mm-per-min", "rapid rate, mm a minute", 1, 1e6);
        double feed = part.number("max-feed-mm-per-min", "highest feed, mm a minute", 1, 1e6);
        double acceleration = part.number("acceleration-mm-per-s2", "acceleration, mm/s²", 1, 1e6);
        double gap = part.length("clear-gap", "room above everything when the pipe turns", Length.Zero.REFUSED);
        return new Machine.Travel(x[0], x[1], z[0], z[1], rapid, feed, acceleration, gap, across);
    }
}
