package collarwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LintCommandTest {
    private static final Path TEMPLATES = Path.of("output-samples/cloche/pack/templates");

    @TempDir
    private Path folder;

    @Test
    void lint_samples_areSound() throws IOException {
        List<String> args;
        try (Stream<Path> files = Files.list(TEMPLATES)) {
            args = Stream.concat(
                            Stream.of("lint"),
                            files.map(Path::toString)
                                    .filter(f -> f.endsWith(".dxf") || f.endsWith(".svg"))
                                    .sorted())
                    .toList();
        }

        CommandRun run = CommandRun.of(args.toArray(String[]::new));

        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out().lines()).hasSize(args.size() - 1).allMatch(line -> line.contains(": sound; "));
    }

    @Test
    void lint_editedFile_isToldByItsLine() throws IOException {
        Path file = folder.resolve("CA.svg");
        Files.writeString(
                file, Files.readString(TEMPLATES.resolve("CA.svg")).replaceFirst("width=\"320mm\"", "width=\"32cm\""));

        CommandRun run = CommandRun.of("lint", file.toString());

        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err())
                .contains(file + ":2:1  SHEET_FAULT")
                .contains("expected  width and height in mm")
                .contains("do        make the pack again");
        assertThat(run.out()).contains("CA.svg: ").contains(" faults; SVG");
    }

    @Test
    void lint_noFileAndNoCutFile_areAllTold() {
        CommandRun run = CommandRun.of("lint", folder.resolve("none.dxf").toString(), folder.toString(), "README.md");

        assertThat(run.code()).isEqualTo(3);
        assertThat(run.err()).contains("no such file", "a folder", "a DXF or an SVG", "3 stops");
    }

    @Test
    void lint_withoutFiles_isAWrongCommandLine() {
        assertThat(CommandRun.of("lint").code()).isEqualTo(2);
    }
}
