package collarwright.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * What one run of an outside program left behind.
 *
 * @param exit exit code
 * @param out standard output, read as UTF-8
 * @param err standard error, read as UTF-8
 */
public record Run(int exit, String out, String err) {
    private static final Duration PATIENCE = Duration.ofSeconds(120);

    /** Runs a command with nothing on its standard input, for two minutes at most. */
    public static Run of(List<String> command) {
        return of(command, Map.of(), PATIENCE);
    }

    /**
     * Runs a command with nothing on its standard input.
     *
     * @param command the program and its words
     * @param environment variables set on top of our own
     * @param patience after which the program and its children are ended and an error is thrown
     */
    public static Run of(List<String> command, Map<String, String> environment, Duration patience) {
        try {
            Path folder = Files.createTempDirectory("checker");
            try {
                return run(command, environment, patience, folder);
            } finally {
                for (String name : List.of("in", "out", "err")) {
                    Files.deleteIfExists(folder.resolve(name));
                }
                Files.delete(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Run run(List<String> command, Map<String, String> environment, Duration patience, Path folder)
            throws IOException {
        Path in = Files.createFile(folder.resolve("in"));
        Path out = folder.resolve("out");
        Path err = folder.resolve("err");
        ProcessBuilder builder = new ProcessBuilder(command)
                .redirectInput(in.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().put("LC_ALL", "C.UTF-8");
        builder.environment().putAll(environment);
        Process process = builder.start();
        try {
            if (!process.waitFor(patience.toMillis(), TimeUnit.MILLISECONDS)) {
                throw new AssertionError(String.join(" ", command) + " still ran after " + patience.toSeconds() + " s");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError("interrupted: " + String.join(" ", command), e);
        } finally {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
        }
        return new Run(process.exitValue(), read(out), read(err));
    }

    private static String read(Path file) throws IOException {
        // Not readString, which refuses bytes that are not UTF-8; some programs print file names in other encodings.
        return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    }

    /** This run, or a failed test with everything the program said if its exit code is not 0. */
    public Run orFail() {
        if (exit != 0) {
            throw new AssertionError("exit " + exit + "\n" + out + err);
        }
        return this;
    }
}
