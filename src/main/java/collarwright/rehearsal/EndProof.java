package collarwright.rehearsal;

import collarwright.machining.BedSettings;
import collarwright.machining.EndProgram;
import collarwright.machining.Machine;
import collarwright.machining.ProgramUnits;
import collarwright.units.Decimals;
import java.util.List;
import java.util.Map;

/**
 * A printed program for the end of a strut beside what it is held against; heights are worked out anew, seat by seat.
 *
 * @param file the program with its plan
 * @param settings machine, strut, drill
 * @param events what its text does
 * @param notes the comment that stands in front of a line, by line
 */
record EndProof(EndProgram file, BedSettings settings, List<Event> events, Map<Integer, String> notes) {

    Machine machine() {
        return settings.machine();
    }

    /** Half a step of a length in the program, and a little for the arithmetic. */
    double tolerance() {
        return settings.grid().step() / 2 + 1e-9;
    }

    /** Where the drill may travel: above the highest strut in the worst seat, clamps, gap and its own point. */
    double clear() {
        double crown = SeatedStrut.all(settings.bar().stock()).stream()
                .mapToDouble(SeatedStrut::crown)
                .max()
                .orElseThrow();
        return crown
                + settings.bed().clampHeight()
                + machine().travel().clearGap()
                + settings.drill().lead()
                + file.lift();
    }

    boolean atClear(double z) {
        return z >= clear() - tolerance();
    }

    String text(double length) {
        if (!Double.isFinite(length)) {
            return "nowhere stated";
        }
        ProgramUnits units = settings.cuts().units();
        return Decimals.fixed(length / units.millimetres(), settings.grid().decimals()) + " " + units.symbol();
    }

    List<Event.Stroke> strokes() {
        return events.stream()
                .filter(Event.Stroke.class::isInstance)
                .map(Event.Stroke.class::cast)
                .toList();
    }

    List<DrilledHole> holes() {
        return DrilledHole.from(strokes(), this::atClear);
    }
}
