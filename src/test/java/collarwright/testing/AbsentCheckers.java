package collarwright.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.stream.Collectors;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestPlan;

/**
 * Ends a run with one line that lists the outside checkers it went without, also in {@code target/checkers-skipped.txt}.
 */
public final class AbsentCheckers implements TestExecutionListener {
    private static final Set<Checker> NOTED = new ConcurrentSkipListSet<>();

    static void note(Checker checker) {
        NOTED.add(checker);
    }

    /** The line for some checkers; empty for none. */
    static String line(Set<Checker> absent) {
        if (absent.isEmpty()) {
            return "";
        }
        String names = absent.stream()
                .map(checker -> checker.shownName() + " (" + checker.absence().orElse("") + ")")
                .collect(Collectors.joining(", "));
        return "Tests skipped for want of outside checkers: " + names + ". .ci/install-checkers installs them.\n";
    }

    @Override
    public void testPlanExecutionFinished(TestPlan plan) {
        String line = line(NOTED);
        Path file = ProjectFolder.target().resolve("checkers-skipped.txt");
        try {
            Files.createDirectories(ProjectFolder.target());
            Files.writeString(file, line);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        System.out.print(line);
    }
}
