package collarwright.pack;

import collarwright.job.CsvForm;
import collarwright.paper.PackFile;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** Takes the files of a pack in the order in which a person meets them, and the tables that stand in its workbook too. */
final class Shelf {
    private final CsvForm form;
    private final Map<String, byte[]> files = new LinkedHashMap<>();
    private final List<PackFile> purposes = new ArrayList<>();
    private final List<PackBook.Part> tables = new ArrayList<>();

    Shelf(CsvForm form) {
        this.form = form;
    }

    /** A shelf that somebody fills. */
    static Shelf filled(CsvForm form, Consumer<Shelf> filler) {
        Shelf shelf = new Shelf(form);
        filler.accept(shelf);
        return shelf;
    }

    /** Puts what stands on other shelves behind what is here. */
    void add(List<Shelf> others) {
        for (Shelf other : others) {
            files.putAll(other.files);
            purposes.addAll(other.purposes);
            tables.addAll(other.tables);
        }
    }

    void put(String path, String purpose, byte[] bytes) {
        files.put(path, bytes);
        purposes.add(new PackFile(path, purpose, bytes.length));
    }

    void put(String path, String purpose, String text) {
        put(path, purpose, text.getBytes(StandardCharsets.UTF_8));
    }

    /** A table of its own file, and a sheet of the workbook. */
    void put(String path, String purpose, String sheet, Table table) {
        put(path, purpose, table.csv(form));
        put(sheet, table);
    }

    /** A table for the workbook only. */
    void put(String sheet, Table table) {
        tables.add(new PackBook.Part(sheet, table));
    }

    Map<String, byte[]> files() {
        return files;
    }

    List<PackFile> purposes() {
        return purposes;
    }

    List<PackBook.Part> tables() {
        return tables;
    }
}
