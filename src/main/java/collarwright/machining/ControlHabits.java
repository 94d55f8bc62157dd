package collarwright.machining;

/**
 * What controls differ in beyond words, numbers and line ends.
 *
 * @param toolChange how the next cutter comes into the spindle
 * @param lengthTable whether the control adds the cutter's length from its table (G43 H); else Z is touched anew
 * @param dwellByX whether the time of a dwell stands in an X word in place of P
 * @param programNumber O number of the first program, one more for each program after it; 0 for none
 * @param chipBreak whether pecks are G73 (chips are broken) in place of G83 (the drill comes out)
 * @param shortNames whether file names have 8 letters and 3, in capitals
 * @param keepsPlugs whether programs do not stop for an operator to empty a hole saw that is full
 */
public record ControlHabits(
        ToolChange toolChange,
        boolean lengthTable,
        boolean dwellByX,
        int programNumber,
        boolean chipBreak,
        boolean shortNames,
        boolean keepsPlugs) {

    /** Largest O number: common practice, no source. */
    public static final int LARGEST_PROGRAM = 9999;

    /** Checks the program number, and that lengths come from a table only where the program changes cutters. */
    public ControlHabits {
        if (programNumber < 0 || programNumber > LARGEST_PROGRAM) {
            throw new IllegalArgumentException("program numbers are 1 to 9999, or 0 for none");
        }
        if (lengthTable && toolChange != ToolChange.M6) {
            throw new IllegalArgumentException("lengths come from a table only with M6");
        }
    }

    /**
     * Habits that stop for a full hole saw.
     *
     * @param toolChange how the next cutter comes into the spindle
     * @param lengthTable whether the control adds the cutter's length from its table
     * @param dwellByX whether the time of a dwell stands in an X word
     * @param programNumber O number of the first program; 0 for none
     * @param chipBreak whether pecks are G73
     * @param shortNames whether file names have 8 letters and 3
     */
    public ControlHabits(
            ToolChange toolChange,
            boolean lengthTable,
            boolean dwellByX,
            int programNumber,
            boolean chipBreak,
            boolean shortNames) {
        this(toolChange, lengthTable, dwellByX, programNumber, chipBreak, shortNames, false);
    }

    /** How the next cutter comes into the spindle. */
    public enum ToolChange {
        /** One file for each cutter. */
        FILE,
        /** One file for each stick; it stops (M0) for a hand to change the cutter. */
        PAUSE,
        /** One file for each stick, with T and M6. */
        M6
    }

    /**
     * The plainest habits.
     *
     * @return one file a cutter, Z touched, dwell by P, no O number, G83, long names, stops for a full hole saw
     */
    public static ControlHabits plain() {
        return new ControlHabits(ToolChange.FILE, false, false, 0, false, false);
    }

    /**
     * Tells whether one file holds all cutters of a stick.
     *
     * @return true for a pause and for M6
     */
    public boolean allInOneFile() {
        return toolChange != ToolChange.FILE;
    }
}
