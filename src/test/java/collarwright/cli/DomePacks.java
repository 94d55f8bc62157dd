package collarwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.testing.DomeJobs;
import collarwright.testing.ProjectFolder;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Packs of the jobs in {@code src/test/resources/domes}, made once for all tests into {@code target/dome-packs}. */
final class DomePacks {

    private static final List<Path> MADE = make();

    private DomePacks() {}

    /** Their folders. */
    static List<Path> all() {
        return MADE;
    }

    private static List<Path> make() {
        try {
            Path top = ProjectFolder.target().resolve("dome-packs");
            Files.createDirectories(top);
            List<Path> packs = new ArrayList<>();
            for (Path job : DomeJobs.files()) {
                Path pack = top.resolve(String.valueOf(job.getParent().getFileName()));
                ByteArrayOutputStream said = new ByteArrayOutputStream();
                PrintStream out = new PrintStream(said, true, StandardCharsets.UTF_8);
                int exit = CommandLines.run(
                        new Terminal(out, out, false), "make", job.toString(), "--out", pack.toString(), "--replace");
                assertThat(exit).as(said.toString(StandardCharsets.UTF_8)).isZero();
                packs.add(pack);
            }
            return List.copyOf(packs);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
