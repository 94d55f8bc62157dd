package collarwright.pack;

import collarwright.job.CsvForm;
import collarwright.paper.PackFile;
import collarwright.units.Together;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Takes the files of a pack in the order in which a person meets them, and the tables that stand in its workbook too. */
final class Shelf {
    private final CsvForm form;
    private final Map<String, byte[]> files = new LinkedHashMap<>();
    private final List<PackFile> purposes = new ArrayList<>();
    private final List<PackBook.Part> tables = new ArrayList<>();

    Shelf(CsvForm form) {
        this.form = form;
    }

    /**
     * Fills a shelf on all processors; whatever is done first, files stand in the order of the fillers.
     *
     * @param form how tables are printed
     * @param fillers each puts its files on a shelf of its own, and shares nothing with another that changes
     * @return all of their files
     */
    static Shelf fill(CsvForm form, List<Consumer<Shelf>> fillers) {
        List<Supplier<Shelf>> tasks = new ArrayList<>();
        for (Consumer<Shelf> filler : fillers) {
            tasks.add(() -> {
                Shelf own = new Shelf(form);
                filler.accept(own);
                return own;
            });
        }
        Shelf all = new Shelf(form);
        Together.all(tasks).forEach(all::add);
        return all;
    }

    private void add(Shelf other) {
        files.putAll(other.files);
        purposes.addAll(other.purposes);
        tables.addAll(other.tables);
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
