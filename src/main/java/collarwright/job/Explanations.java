package collarwright.job;

import collarwright.finding.Code;
import collarwright.units.Spelling;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Explains every kind of finding: its cause, an example, its cure. */
public final class Explanations {

    private static final String RESOURCE = "/collarwright/explain.toml";

    private final Map<Code, Explanation> explanations = new EnumMap<>(Code.class);

    private Explanations(TomlReader reader) {
        for (Code code : Code.values()) {
            reader.root()
                    .needTable(code.name(), "an explanation")
                    .ifPresent(table -> explanations.put(code, read(code, table)));
        }
        reader.finish();
    }

    private static Explanation read(Code code, TableView table) {
        return new Explanation(code, text(table, "cause"), text(table, "example"), text(table, "cure"));
    }

    private static String text(TableView table, String key) {
        return table.need(key, "a sentence", key + " = \"…\"").text().orElse("");
    }

    /**
     * Reads the explanations that come with the program.
     *
     * @return one for every kind of finding
     */
    public static Explanations bundled() {
        FindingList findings = new FindingList();
        Optional<Explanations> read = TextFile.decode("explain.toml", bytes(), findings)
                .flatMap(text -> TomlReader.open(text, findings))
                .map(Explanations::new);
        if (findings.stopped()) {
            throw new IllegalStateException("the program's explanations: " + findings.sorted());
        }
        return read.orElseThrow();
    }

    private static byte[] bytes() {
        try (InputStream in = Explanations.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("the program has no " + RESOURCE);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Finds an explanation by the name of a kind.
     *
     * @param name such as {@code JOB_SYNTAX}, capitals or not
     * @return the explanation, or empty if there is no such kind
     */
    public Optional<Explanation> find(String name) {
        return Stream.of(Code.values())
                .filter(code -> code.name().equalsIgnoreCase(name.strip()))
                .findFirst()
                .map(this::of);
    }

    /**
     * Returns the explanation of a kind.
     *
     * @param code the kind
     * @return its explanation
     */
    public Explanation of(Code code) {
        return Optional.ofNullable(explanations.get(code)).orElseThrow();
    }

    /**
     * Lists the kinds whose names are near to a word.
     *
     * @param name what was written
     * @return at most three names, the nearest first
     */
    public static List<String> near(String name) {
        return Spelling.nearest(name, Stream.of(Code.values()).map(Code::name).toList(), 3);
    }
}
