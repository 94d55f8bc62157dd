package collarwright.machining;

import java.util.List;

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

    private ProgramWords() {}
}
