package collarwright.rehearsal;

import collarwright.machining.Machine;
import collarwright.machining.ProgramUnits;
import java.util.List;

/** A program's replay with what its rules need, whether the pipe turns or the work lies still. */
interface Replayed {

    Machine machine();

    List<Event> events();

    /** Unit of lengths in the program. */
    ProgramUnits units();

    /** Half a step of a length in the program, and a little for the arithmetic. */
    double tolerance();

    /** The height from where on the tool may travel. */
    double clear();

    /** A length as the shop reads it. */
    String text(double length);

    default boolean atClear(double z) {
        return z >= clear() - tolerance();
    }

    default List<Event.Stroke> strokes() {
        return events().stream()
                .filter(Event.Stroke.class::isInstance)
                .map(Event.Stroke.class::cast)
                .toList();
    }
}
