package collarwright.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The RS274/NGC interpreter that Debian ships in linuxcnc-uspace, as a second opinion on every drill program.
 *
 * <p>It refuses what the language does not allow. It does not see axis limits, a spindle that stands, a missing tool, or
 * a rapid into the work: those are our own rehearsal's.
 *
 * @param tools the tool table; a program that calls any other tool is refused
 */
public record Rs274(List<Tool> tools) {
    private static final Pattern MESSAGE_ENDS_HERE = Pattern.compile("executing\\R?");

    /** Copies the table. */
    public Rs274 {
        tools = List.copyOf(tools);
    }

    /**
     * A line of the tool table.
     *
     * @param number T and H number
     * @param length tool length offset, mm
     * @param diameter mm
     */
    public record Tool(int number, double length, double diameter) {}

    /**
     * What the interpreter made of a program.
     *
     * @param accepted whether it read the program to its end
     * @param complaint what it refused and the block it stood in; empty if accepted
     * @param calls its whole listing
     * @param moves the motions in it
     */
    public record Reading(boolean accepted, String complaint, List<CanonicalCall> calls, List<CanonicalMove> moves) {
        /** Copies the lists. */
        public Reading {
            calls = List.copyOf(calls);
            moves = List.copyOf(moves);
        }

        /** The moves, or a failed test with the complaint. */
        public List<CanonicalMove> movesOrFail() {
            if (!accepted) {
                throw new AssertionError("rs274 refuses the program: " + complaint);
            }
            return moves;
        }

        /** All calls of one name, such as DWELL. */
        public List<CanonicalCall> calls(String name) {
            return calls.stream().filter(call -> call.name().equals(name)).toList();
        }
    }

    /** Reads a program given as text. */
    public Reading read(String program) {
        return inFolder(folder -> {
            Path file = folder.resolve("program.ngc");
            Files.writeString(file, program);
            return read(file, folder);
        });
    }

    /** Reads a program from a file. */
    public Reading read(Path program) {
        return inFolder(folder -> read(program, folder));
    }

    private Reading read(Path program, Path folder) throws IOException {
        Path interpreter = Checker.rs274().orElseThrow();
        Path table = Files.write(
                folder.resolve("tool.tbl"), tools.stream().map(Rs274::line).toList());
        Path variables = Files.writeString(folder.resolve("variables.var"), variables());
        Run run = Run.of(
                List.of(
                        interpreter.toString(),
                        "-g",
                        "-t",
                        table.toString(),
                        "-v",
                        variables.toString(),
                        program.toAbsolutePath().toString()),
                // It keeps its tools in a file of the home folder, which two runs at once would spoil for each other.
                Map.of("LD_LIBRARY_PATH", interpreter.getParent().toString(), "HOME", folder.toString()),
                Duration.ofSeconds(120));
        List<CanonicalCall> calls = run.out()
                .lines()
                .map(CanonicalCall::parse)
                .flatMap(Optional::stream)
                .toList();
        String complaint = MESSAGE_ENDS_HERE.matcher(run.err()).replaceAll("").strip();
        boolean accepted = run.exit() == 0 && complaint.isEmpty() && endsWell(calls);
        return new Reading(accepted, accepted ? "" : complaint + lastBlock(calls), calls, CanonicalMoves.of(calls));
    }

    // A program without M2 or M30 runs off its end with exit code 0.
    private static boolean endsWell(List<CanonicalCall> calls) {
        return calls.stream().anyMatch(call -> call.name().equals("PROGRAM_END"));
    }

    private static String lastBlock(List<CanonicalCall> calls) {
        return calls.stream()
                .flatMap(call -> call.block().stream().boxed())
                .reduce((first, second) -> second)
                .map(block -> " (last block that ran: N" + block + ")")
                .orElse("");
    }

    // The interpreter's machine units are inches, whatever the program says, so the table is in inches.
    private static String line(Tool tool) {
        return String.format(
                Locale.ROOT,
                "T%d P%d Z%.9f D%.9f",
                tool.number(),
                tool.number(),
                tool.length() / 25.4,
                tool.diameter() / 25.4);
    }

    // 5161 to 5169 home, 5220 coordinate system in force, 5221 on its offsets: all zero, G54.
    private static String variables() {
        StringBuilder text = new StringBuilder("5161\t0.0\n5220\t1.0\n");
        for (int number = 5221; number <= 5226; number++) {
            text.append(number).append("\t0.0\n");
        }
        return text.toString();
    }

    private interface Work {
        Reading in(Path folder) throws IOException;
    }

    private static Reading inFolder(Work work) {
        try {
            Path folder = Files.createTempDirectory("rs274");
            try {
                return work.in(folder);
            } finally {
                try (Stream<Path> files = Files.list(folder)) {
                    for (Path file : files.toList()) {
                        Files.delete(file);
                    }
                }
                Files.delete(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
