package collarwright.pack;

import java.util.List;

/**
 * One program of a pack, as its list of programs has it.
 *
 * @param file its path in the pack, such as {@code machine/CA-HS-44.ngc}
 * @param machine the machine profile it is written for
 * @param seconds how long it runs by the machine's rates, 0 or more
 * @param tools ids of the cutters it uses, in their order
 */
public record ProgramEntry(String file, String machine, double seconds, List<String> tools) {
    /** Checks the values and keeps the tools. */
    public ProgramEntry {
        tools = List.copyOf(tools);
        if (file.isBlank() || machine.isBlank() || !(seconds >= 0 && seconds < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("no such program: " + file + ", " + machine + ", " + seconds + " s");
        }
    }
}
