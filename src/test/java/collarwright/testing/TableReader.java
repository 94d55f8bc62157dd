package collarwright.testing;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Tables as programs from outside read them: workbooks by Python's openpyxl, separated values by its csv module. */
public final class TableReader {
    private TableReader() {}

    /**
     * A cell of a workbook.
     *
     * @param text its value, a number in the digits of the JSON that Python prints
     * @param number whether the file says that it is a number
     * @param format how a number is shown, or {@code @} for text
     */
    public record Cell(String text, boolean number, String format) {}

    /**
     * A sheet of a workbook.
     *
     * @param name as on its tab
     * @param frozen the first cell that scrolls; empty if nothing is frozen
     * @param heads the first row
     * @param rows every row below as a map from head to cell, without the empty cells
     */
    public record Sheet(String name, String frozen, List<String> heads, List<Map<String, Cell>> rows) {
        /** Copies the lists. */
        public Sheet {
            heads = List.copyOf(heads);
            rows = List.copyOf(rows);
        }
    }

    /**
     * A workbook.
     *
     * @param title of the document
     * @param sheets in their order
     */
    public record Book(String title, List<Sheet> sheets) {
        /** Copies the list. */
        public Book {
            sheets = List.copyOf(sheets);
        }

        /** The sheet of a name. */
        public Sheet sheet(String name) {
            return sheets.stream()
                    .filter(s -> s.name().equals(name))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no sheet " + name));
        }
    }

    /** Reads a workbook; a failed test if openpyxl refuses it. */
    public static Book workbook(Path file) {
        JsonNode told = told(file.toString());
        List<Sheet> sheets = new ArrayList<>();
        for (JsonNode sheet : told.get("sheets")) {
            sheets.add(sheet(sheet));
        }
        return new Book(told.path("title").asText(), sheets);
    }

    private static Sheet sheet(JsonNode told) {
        List<String> heads = new ArrayList<>();
        told.get("rows").get(0).forEach(cell -> heads.add(cell.get(1).asText()));
        List<Map<String, Cell>> rows = new ArrayList<>();
        for (int r = 1; r < told.get("rows").size(); r++) {
            Map<String, Cell> row = new TreeMap<>();
            for (int c = 0; c < heads.size(); c++) {
                String head = heads.get(c);
                cell(told.get("rows").get(r).path(c)).ifPresent(cell -> row.put(head, cell));
            }
            rows.add(row);
        }
        return new Sheet(told.get("name").asText(), told.path("frozen").asText(), heads, rows);
    }

    private static Optional<Cell> cell(JsonNode told) {
        return told.isArray()
                ? Optional.of(new Cell(
                        told.get(1).asText(),
                        told.get(0).asText().equals("n"),
                        told.get(2).asText()))
                : Optional.empty();
    }

    /** Reads separated values, strictly. */
    public static List<List<String>> separated(Path file, char separator) {
        List<List<String>> rows = new ArrayList<>();
        told(file.toString(), Character.toString(separator)).get("rows").forEach(row -> rows.add(Json.texts(row)));
        return rows;
    }

    private static JsonNode told(String... words) {
        List<String> command = new ArrayList<>();
        command.add(Checker.python());
        command.add(ProjectFolder.checkerScript("table-read.py").toString());
        command.addAll(List.of(words));
        return Json.parse(Run.of(command).orFail().out());
    }
}
