package collarwright.job;

import collarwright.machining.Bed;
import collarwright.machining.Machine;
import collarwright.machining.RotaryForm;
import collarwright.units.Length;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads machines from profile files. A press needs its spindle only; all others need what their kind has. */
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
        kinds.put("bed", Machine.Kind.BED);
        kinds.put("flat", Machine.Kind.FLAT);
        kinds.put("tube", Machine.Kind.TUBE);
        Optional<Machine.Kind> kind = table.need("kind", "press, rotary, bed, flat or tube", "kind = \"press\"")
                .word(kinds);
        if (kind.filter(k -> k == Machine.Kind.TUBE).isPresent()) {
            return TubeProfile.read(entry);
        }
        if (kind.isEmpty()) {
            // What the machine has depends on its kind: nothing of it is unknown before that is put right.
            List.of("spindle", "post", "travel", "rotary", "bed", "table", "tube")
                    .forEach(table::key);
            return Optional.empty();
        }
        MachinePart spindlePart = new MachinePart(table, "spindle", "the spindle's speeds");
        Machine.Spindle spindle = spindle(spindlePart);
        if (kind.get() == Machine.Kind.PRESS) {
            return spindlePart.faulty() ? Optional.empty() : Optional.of(press(entry, spindle));
        }
        return kind.get() == Machine.Kind.ROTARY
                ? rotary(entry, spindle, spindlePart.faulty())
                : lying(entry, kind.get(), spindle, spindlePart.faulty());
    }

    private static Optional<Machine> rotary(ProfileFile.Entry entry, Machine.Spindle spindle, boolean spindleFaulty) {
        TableView table = entry.table();
        MachinePart postPart = new MachinePart(table, "post", "how programs are written");
        MachinePart travelPart = new MachinePart(table, "travel", "how far and how fast the machine moves");
        MachinePart rotaryPart = new MachinePart(table, "rotary", "the rotary axis and its chuck");
        Machine.Rotary rotary = RotaryProfile.read(rotaryPart);
        Machine.Travel travel = travel(travelPart);
        boolean bores = travel.across().isPresent() && !rotary.form().byY();
        Machine.Post post = new PostProfile(postPart, spindle, rotary.form()).read(true, true, bores);
        if (rotary.form().byY() && travel.across().isPresent()) {
            travelPart.conflict(
                    "y",
                    "no travel of Y where a Y word turns the pipe",
                    "rotary.form = " + RotaryProfile.name(rotary.form()),
                    "take travel.y out, or let an A word turn the pipe");
        }
        boolean faulty = spindleFaulty || postPart.faulty() || travelPart.faulty() || rotaryPart.faulty();
        return faulty
                ? Optional.empty()
                : Optional.of(new Machine(
                        entry.name(),
                        entry.title(),
                        Machine.Kind.ROTARY,
                        post,
                        travel,
                        spindle,
                        rotary,
                        entry.source()));
    }

    /** A bed or a flat machine: the work lies still. */
    private static Optional<Machine> lying(
            ProfileFile.Entry entry, Machine.Kind kind, Machine.Spindle spindle, boolean spindleFaulty) {
        TableView table = entry.table();
        boolean flat = kind == Machine.Kind.FLAT;
        MachinePart postPart = new MachinePart(table, "post", "how programs are written");
        MachinePart travelPart = new MachinePart(table, "travel", "how far and how fast the machine moves");
        MachinePart bedPart = flat
                ? new MachinePart(table, "table", "the flat table")
                : new MachinePart(table, "bed", "the stop and the seat of the struts");
        Machine.Travel travel = travel(travelPart);
        if (flat && !travelPart.has("y")) {
            travelPart.span("y"); // asks for it
        }
        boolean across = travel.across().isPresent();
        Machine.Post post = new PostProfile(postPart, spindle, RotaryForm.plain()).read(false, across);
        Bed bed = flat ? flatTable(bedPart) : bed(bedPart);
        boolean faulty = spindleFaulty || postPart.faulty() || travelPart.faulty() || bedPart.faulty();
        return faulty
                ? Optional.empty()
                : Optional.of(new Machine(
                        entry.name(),
                        entry.title(),
                        kind,
                        post,
                        travel,
                        spindle,
                        new Machine.Rotary(true, true, 0, 0, 0, 0, 0, 0, 0, 0, 0),
                        entry.source(),
                        Optional.of(bed),
                        Optional.empty()));
    }

    private static Bed flatTable(MachinePart part) {
        double height = part.length("clamp-height", "how far clamps stand out above a sheet", Length.Zero.ALLOWED);
        double board = part.length("board", "how deep the board below a sheet may be cut", Length.Zero.ALLOWED);
        return new Bed(height, 0, board);
    }

    private static Bed bed(MachinePart part) {
        double height = part.length("clamp-height", "how far clamps stand out above a strut", Length.Zero.ALLOWED);
        double clear = part.length("stop-clear", "from the drill's side to the stop", Length.Zero.ALLOWED);
        double under = part.length("under", "room below a strut for the drill", Length.Zero.ALLOWED);
        return new Bed(height, clear, under);
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
        double least = part.number("min-rpm", "lowest speed, turns a minute", 1, 200_000, 400);
        double most = part.number("max-rpm", "highest speed, turns a minute", 1, 200_000, 4000);
        double start = part.number("start-seconds", "wait after a start or a stop, seconds", 0, 60, 3);
        part.ascending("min-rpm", least, "max-rpm", most, "rpm");
        boolean controlled = part.flag("control", "whether programs start and stop the spindle", true);
        return new Machine.Spindle(least, most, start, controlled);
    }

    static Machine.Travel travel(MachinePart part) {
        double[] x = part.span("x");
        double[] z = part.span("z");
        Optional<Machine.Reach> across = Optional.of("y")
                .filter(part::has)
                .map(part::span)
                .filter(s -> s[0] < s[1])
                .map(s -> new Machine.Reach(s[0], s[1]));
        double rapid = part.number("rapid-mm-per-min", "rapid rate, mm a minute", 1, 1e6, 2000);
        double feed = part.number("max-feed-mm-per-min", "highest feed, mm a minute", 1, 1e6, 1000);
        double acceleration = part.number("acceleration-mm-per-s2", "acceleration, mm/s²", 1, 1e6, 100);
        double gap = part.length("clear-gap", "room above everything when the pipe turns", Length.Zero.REFUSED);
        return new Machine.Travel(x[0], x[1], z[0], z[1], rapid, feed, acceleration, gap, across);
    }
}
