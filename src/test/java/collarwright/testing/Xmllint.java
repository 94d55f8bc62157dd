package collarwright.testing;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The XML parser of libxml2: is a file well formed, and is every id in it used once. */
public final class Xmllint {
    private Xmllint() {}

    /** What is wrong with a file; empty for a sound one. */
    public static List<String> faults(Path file) {
        Run parsed = Run.of(List.of("xmllint", "--noout", "--nonet", file.toString()));
        if (parsed.exit() != 0) {
            return parsed.err().lines().toList();
        }
        // Exit code 10: the path finds nothing.
        Run twice = Run.of(List.of(
                "xmllint",
                "--nonet",
                "--xpath",
                "//@id[. = ../preceding::*/@id or . = ../ancestor::*/@id]",
                file.toString()));
        return Stream.of(twice.out())
                .flatMap(String::lines)
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .map(line -> "used twice: " + line)
                .toList();
    }
}
