package collarwright.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The words of each kind of program, as allow-lists of profiles name them: G and M with their number, else the letter. */
public final class ProgramWords {

    /** What the plain dialect needs. */
    public static final List<String> PLAIN = List.of(
            "G0", "G1", "G4", "G17", "G20", "G21", "G90", "G94", "M0", "M3", "M5", "M2", "X", "Y", "Z", "A", "F", "S",
            "P");

    /** What drilling cycles need beside the plain words. */
    public static final List<String> CYCLES = List.of("G73", "G80", "G81", "G82", "G83", "G98", "G99", "R", "Q");

    /** What arcs in the XY plane need beside the plain words. */
    public static final List<String> ARCS = List.of("G2", "G3", "I", "J");

    /** What turning cuts under inverse time need beside the plain words. */
    public static final List<String> TURNING = List.of("G93");

    /** What tool changes in a program need beside the plain words, with lengths from the control's table. */
    public static final List<String> TOOLS = List.of("T", "M6", "G43", "G49", "H");

    /** Every word that the rehearsal can prove; N and O have keys of their own in a profile. */
    public static final List<String> KNOWN = Stream.of(
                    PLAIN, CYCLES, ARCS, TURNING, TOOLS, List.of("M30", "G91", "L", "N", "O"))
            .flatMap(List::stream)
            .toList();

    private ProgramWords() {}

    /**
     * Lists what the cycles of a program need.
     *
     * @param chipBreak whether pecks are G73 in place of G83
     * @return words
     */
    public static List<String> cycles(boolean chipBreak) {
        return List.of("G80", "G81", chipBreak ? "G73" : "G83", "G98", "R", "Q");
    }

    /**
     * Lists the words of cycles that a profile with cycles allows unless it has a list of its own.
     *
     * @return all of {@link #CYCLES} that leave the tool at the clear height: not G99
     */
    public static List<String> usualCycles() {
        return CYCLES.stream().filter(w -> !w.equals("G99")).toList();
    }

    /**
     * Lists the words of a dialect without cycles.
     *
     * @param form how the pipe turns
     * @param spindle whether the program starts and stops the spindle
     * @param habits how cutters change, and how a dwell is written
     * @return the plain words less those that the machine has no use for, and those of its tool changes
     */
    public static List<String> of(RotaryForm form, boolean spindle, ControlHabits habits) {
        List<String> words = new ArrayList<>(PLAIN);
        if (form.word() != RotaryForm.Word.A) {
            words.remove("A");
        }
        if (!spindle) {
            words.removeAll(List.of("S", "M3", "M5"));
        }
        if (habits.dwellByX()) {
            words.remove("P");
        }
        if (habits.toolChange() == ControlHabits.ToolChange.M6) {
            words.addAll(List.of("T", "M6"));
        }
        if (habits.lengthTable()) {
            words.addAll(List.of("G43", "H"));
        }
        return List.copyOf(words);
    }
}
