package collarwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@NeedsChecker(Checker.OPENPYXL)
class TableReaderTest {

    @TempDir
    private Path folder;

    private Path written() {
        Path file = folder.resolve("made é.xlsx");
        Run.of(List.of(
                        Checker.python(),
                        "-c",
                        "import sys, openpyxl; b = openpyxl.Workbook(); s = b.active; s.title = 'one'; b.properties.title = 'T';"
                                + "s.append(['id', 'mm']); s.append(['1E5', 2.5]); s.append(['Größe', None]);"
                                + "s['B2'].number_format = '0.000'; s.freeze_panes = 'B2'; b.save(sys.argv[1])",
                        file.toString()))
                .orFail();
        return file;
    }

    @Test
    void workbook_sound_isReadWhole() {
        TableReader.Book book = TableReader.workbook(written());
        assertThat(book.title()).isEqualTo("T");
        assertThat(book.sheet("one").frozen()).isEqualTo("B2");
        assertThat(book.sheet("one").heads()).containsExactly("id", "mm");
        assertThat(book.sheet("one").rows())
                .containsExactly(
                        Map.of(
                                "id", new TableReader.Cell("1E5", false, "General"),
                                "mm", new TableReader.Cell("2.5", true, "0.000")),
                        Map.of("id", new TableReader.Cell("Größe", false, "General")));
    }

    @Test
    void workbook_cutShort_isRefused() throws IOException {
        Path file = written();
        byte[] whole = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(whole, whole.length / 2));
        assertThatThrownBy(() -> TableReader.workbook(file)).isInstanceOf(AssertionError.class);
    }

    @Test
    void separated_quotedCells_areReadWhole() throws IOException {
        Path file = folder.resolve("t.csv");
        Files.writeString(file, "a;b\r\n\"1;5\";\"say \"\"x\"\"\"\r\n");
        assertThat(TableReader.separated(file, ';')).containsExactly(List.of("a", "b"), List.of("1;5", "say \"x\""));
        Files.writeString(file, "a;b\r\n\"1\"x;2\r\n");
        assertThatThrownBy(() -> TableReader.separated(file, ';')).isInstanceOf(AssertionError.class);
    }
}
