package collarwright.testing;

import java.nio.file.Path;
import java.util.List;

/** The structure of a PDF file by qpdf. */
public final class Qpdf {
    private Qpdf() {}

    /** What {@code qpdf --check} warns of or refuses; empty for a sound file. */
    public static List<String> faults(Path file) {
        Run run = Run.of(List.of("qpdf", "--check", file.toString()));
        return run.exit() == 0 ? List.of() : (run.out() + run.err()).lines().toList();
    }
}
