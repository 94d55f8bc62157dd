package collarwright.pack;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One program of a pack, as its list of programs has it.
 *
 * @param file its path in the pack, such as {@code machine/CA-HS-44.ngc}
 * @param machine the machine profile it is written for
 * @param seconds how long it runs by the machine's rates, 0 or more
 * @param tools ids of the cutters it uses, in their order
 * @param stick the layout of the stick that it is for; empty for strips, strut ends and a test of the machine
 * @param runs how often it is run in the order; 1 for an air cut; empty for a test of the machine
 */
public record ProgramEntry(
        String file, String machine, double seconds, List<String> tools, Optional<String> stick, OptionalInt runs) {
    /** Checks the values and keeps the tools. */
    public ProgramEntry {
        tools = List.copyOf(tools);
        if (file.isBlank()
                || machine.isBlank()
                || !(seconds >= 0 && seconds < Double.POSITIVE_INFINITY)
                || runs.orElse(1) < 1) {
            throw new IllegalArgumentException("no such program: " + file + ", " + machine + ", " + seconds + " s");
        }
    }

    /**
     * A program for no stick that the order does not count.
     *
     * @param file its path in the pack
     * @param machine the machine profile it is written for
     * @param seconds how long it runs
     * @param tools ids of the cutters it uses
     */
    public ProgramEntry(String file, String machine, double seconds, List<String> tools) {
        this(file, machine, seconds, tools, Optional.empty(), OptionalInt.empty());
    }
}
