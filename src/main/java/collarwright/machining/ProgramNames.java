package collarwright.machining;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Where;
import collarwright.units.PlainText;
import java.util.List;
import java.util.Locale;

/**
 * Names and O numbers of a job's programs, in the order in which they are written.
 *
 * <p>Long names tell pattern, order and cutter, in 40 characters. Short ones have 8 and 3 letters in capitals: up to three
 * of the pattern, four digits that count all programs, and C for a cut or A for an air cut.
 */
final class ProgramNames {

    private static final int LONGEST = 40;

    /** Four digits. */
    private static final int MOST_SHORT = 9999;

    private final Machine machine;
    private int count;

    ProgramNames(Machine machine) {
        this.machine = machine;
    }

    /** A program's name and number. */
    record Name(String file, int number) {}

    /**
     * The next program's name and number.
     *
     * @param id of the stick, strip or strut
     * @param middle what stands behind it in a long name
     * @param what the cutter or the work, cut short where a long name has no room
     * @param air whether it is an air cut
     * @throws JobException MACHINE_UNABLE if there are no more short names
     */
    Name next(String id, String middle, String what, boolean air) {
        count++;
        ControlHabits habits = machine.post().layout().habits();
        String file = habits.shortNames() ? shortName(id, air) : longName(safe(id) + middle, safe(what), air);
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

    private String longName(String start, String what, boolean air) {
        String end = (air ? "-air" : "") + "." + machine.post().extension();
        int room = StrictMath.max(1, LONGEST - end.length() - 1);
        String front = start.length() > room ? start.substring(0, room) : start;
        room = LONGEST - front.length() - end.length();
        return front + (what.length() > room ? what.substring(0, room) : what) + end;
    }

    private String shortName(String id, boolean air) {
        if (count > MOST_SHORT) {
            throw new JobException(List.of(Finding.stop(
                    Code.MACHINE_UNABLE,
                    new Where.Part("machine " + machine.name()),
                    MOST_SHORT + " programs at most with file-names = 8.3",
                    "one more",
                    "let the profile write long file names",
                    "or split the job")));
        }
        String letters = PlainText.ascii(id).replaceAll("[^A-Za-z0-9]", "").toUpperCase(Locale.ROOT);
        String front = letters.substring(0, StrictMath.min(3, letters.length()));
        String digits = String.valueOf(MOST_SHORT + 1 + count).substring(1);
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
