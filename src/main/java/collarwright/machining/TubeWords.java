package collarwright.machining;

import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/** What the one at a tube cutter has to know, in programs and on setup sheets. */
final class TubeWords {

    private TubeWords() {}

    /** Lines for a program's head. */
    static List<String> tool(RotarySettings settings, ProgramTask task) {
        TubeCutter tube = settings.machine().tube().orElseThrow();
        String unit = settings.units().symbol();
        return List.of(
                "CUTTER " + tube.process().word() + ", kerf " + in(settings, tube.kerf()) + ", M3 on, M5 off",
                "SPEED "
                        + Decimals.fixed(
                                task.cut().feedMmPerMin() / settings.units().millimetres(), 1)
                        + " " + unit + "/min over the outside, PIERCE "
                        + Decimals.fixed(tube.start().pierceSeconds(), 2) + " s at Z "
                        + in(settings, task.heights().retract()) + ", CUT at Z "
                        + in(settings, TubeHeights.of(settings).cut()));
    }

    private static String in(RotarySettings settings, double length) {
        return Sizes.in(settings.units(), length);
    }

    /** Cautions for a program's head. */
    static List<String> cautions(TubeCutter tube) {
        List<String> lines = new ArrayList<>();
        lines.add("CAUTION run in the air first, single step, hand on stop");
        if (tube.process().burns()) {
            lines.add("CAUTION fumes: draw them off. Eyes: shade for this process. Fire: keep a watch");
            lines.add("CAUTION never cut PVC, CPVC or vinyl with it: the gas is toxic");
        } else {
            lines.add("CAUTION a moving blade, keep hands away, eye protection, no gloves");
        }
        lines.add("CAUTION pieces fall inside the pipe and off its end");
        return lines;
    }

    /** Notes for a setup sheet. */
    static List<String> notes(RotarySettings settings) {
        TubeCutter tube = settings.machine().tube().orElseThrow();
        List<String> notes = new ArrayList<>();
        notes.add("Run " + DirectionTest.fileName(settings.machine()) + " once after every change to the machine.");
        notes.add("Run the program in the air first, single step, hand on stop: its air cut switches nothing on.");
        notes.add(
                "The cut points at the pipe's axis: walls of a hole lie toward the axis. Inside it is as wide as drilled,"
                        + " outside it is wider round the pipe; up and down a strut leans as far as in a drilled hole.");
        notes.add("Cut a hole in scrap first and measure it inside: the kerf is allowed for as "
                + Sizes.both(tube.kerf()) + " on the outside. If the hole is too wide, put a larger kerf in the"
                + " profile; if too narrow, a smaller one.");
        notes.add(
                tube.start().markSeconds() > 0
                        ? "Two spots mark each collar near the TOP edge: one on the 0° line, one beside it clockwise as seen from"
                                + " above TOP. Try on scrap that they do not pierce."
                        : "This machine marks nothing: draw the 0° line along the pipe at A0, and write TOP and the pattern on each"
                                + " collar, before the stick leaves the chuck.");
        notes.add(
                tube.limits().parts()
                        ? "Collars are parted off last, from the free end inward: catch them, they are hot or sharp."
                        : "Collars are cut off afterwards, in the middle of the room left between them.");
        if (tube.process().burns()) {
            notes.add("Fumes, light and fire: draw the fumes off, wear eye protection for this process, clear away what"
                    + " burns, keep an extinguisher near, and watch for a while after. Never PVC, CPVC or vinyl. Coated and"
                    + " galvanized pipe gives off toxic fumes. Local rules and the machine's manual count first.");
        } else {
            notes.add(
                    "A moving blade: guards on, hands away, eye protection, no gloves. Local rules and the machine's manual"
                            + " count first.");
        }
        if (!settings.work().measured()) {
            notes.add("The pipe's size is nominal, not measured: measure circumference and wall before cutting.");
        }
        return notes;
    }
}
