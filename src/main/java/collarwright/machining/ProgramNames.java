package collarwright.machining;

import collarwright.units.PlainText;
import java.util.Locale;

/**
 * Names and O numbers of a job's programs, in the order in which they are written.
 *
 * <p>Long names tell pattern, order and cutter, in 40 characters. Short ones have 8 and 3 letters in capitals: up to three
 * of the pattern, four digits that count all programs, and C for a cut or A for an air cut.
 */
final class ProgramNames {

    private static final int LONGEST = 40;

    private final Machine machine;
    private int count;

    ProgramNames(Machine machine) {
        this.machine = machine;
    }

    /** A program's name and number. */
    record Name(String file, int number) {}

    Name next(ProgramTask task, ProgramFile.Purpose purpose, int order, boolean all) {
        count++;
        boolean air = purpose == ProgramFile.Purpose.AIR_CUT;
        ControlHabits habits = machine.post().layout().habits();
        String file = habits.shortNames() ? shortName(task, air) : longName(task, air, order, all);
        return new Name(file, number());
    }

    Name directionTest() {
        count++;
        return new Name(DirectionTest.fileName(machine), number());
    }

    /** 0 if the profile has none; one too large is found when it is printed. */
    private int number() {
        int first = machine.post().layout().habits().programNumber();
        return first == 0 ? 0 : first + count - 1;
    }

    private String longName(ProgramTask task, boolean air, int order, boolean all) {
        String what = all ? "all" : task.marks() ? "mark" : safe(task.cutter().id());
        String front = safe(task.load().id()) + "-" + order + "-";
        String end = (air ? "-air" : "") + "." + machine.post().extension();
        int room = StrictMath.max(1, LONGEST - front.length() - end.length());
        return front + (what.length() > room ? what.substring(0, room) : what) + end;
    }

    private String shortName(ProgramTask task, boolean air) {
        String letters =
                PlainText.ascii(task.load().id()).replaceAll("[^A-Za-z0-9]", "").toUpperCase(Locale.ROOT);
        String front = letters.substring(0, StrictMath.min(3, letters.length()));
        String digits = String.valueOf(10_000 + count).substring(1);
        return front + digits + (air ? "A." : "C.") + extension(machine);
    }

    /** The ending, in three capitals where names are short. */
    static String extension(Machine machine) {
        String extension = machine.post().extension();
        return machine.post().layout().habits().shortNames()
                ? extension.substring(0, StrictMath.min(3, extension.length())).toUpperCase(Locale.ROOT)
                : extension;
    }

    /** Letters, digits and hyphens of a text; anything else becomes an underscore. */
    static String safe(String text) {
        return PlainText.ascii(text).replaceAll("[^A-Za-z0-9-]", "_");
    }
}
