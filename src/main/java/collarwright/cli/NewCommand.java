package collarwright.cli;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Where;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Writes a starter job file with a comment beside every key. */
@Command(name = "new", description = "Write a commented starter job file; it can be made as it is.")
final class NewCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "FILE", description = "The file to write; it must not be there yet.")
    private Path file = Path.of("job.toml");

    NewCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        try {
            Files.writeString(file, starter(), StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
        } catch (FileAlreadyExistsException e) {
            throw refused("a file that is not there yet", "it is there already", "name another file, or move it away");
        } catch (IOException e) {
            throw refused(
                    "a file that can be written", String.valueOf(e.getMessage()), "choose a folder you may write to");
        }
        terminal.print("Wrote " + file + ". Edit it, then: collarwright make " + file + "\n");
        return 0;
    }

    private JobException refused(String expected, String found, String hint) {
        return new JobException(
                List.of(Finding.stop(Code.PACK_NOT_WRITTEN, new Where.Path(file.toString()), expected, found, hint)));
    }

    static String starter() {
        try (InputStream in = NewCommand.class.getResourceAsStream("/collarwright/starter.toml")) {
            if (in == null) {
                throw new IllegalStateException("the starter job is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
