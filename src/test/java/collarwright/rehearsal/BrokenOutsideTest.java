package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.testing.Checker;
import collarwright.testing.NeedsChecker;
import collarwright.testing.Rs274;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.provider.Arguments;

/**
 * Every broken program of {@link BrokenProgramTest} through rs274: the table tells which are errors there too. The others are
 * good RS274 that a shop must not run all the same (a hole moved, a spindle that stands, a pipe that turns under the tool) or
 * words that other controls refuse.
 */
@NeedsChecker(Checker.RS274)
class BrokenOutsideTest {

    private static final Set<String> REFUSED_OUTSIDE_TOO = Set.of(
            "CYCLES: A in a cycle",
            "CYCLES: no F",
            "CYCLES: no Q",
            "CYCLES: no R",
            "CYCLES: no Z",
            "PLAIN: a byte order mark",
            "PLAIN: a decimal comma",
            "PLAIN: a tool change",
            "PLAIN: an arc",
            "PLAIN: an empty text",
            "PLAIN: an exponent",
            "PLAIN: an open bracket",
            "PLAIN: feed 0",
            "PLAIN: half a program",
            "PLAIN: motion without a motion word",
            "PLAIN: nested brackets",
            "PLAIN: no end",
            "PLAIN: no feed on the first cut",
            "PLAIN: tool length");

    @Test
    void brokenPrograms_thatAreErrorsInTheLanguage_areRefusedByRs274() {
        Set<String> refused = new TreeSet<>();
        int all = 0;
        Rs274 control = new Rs274(List.of());
        try (Stream<Arguments> programs = BrokenProgramTest.programs()) {
            for (Arguments broken : programs.toList()) {
                BrokenProgramTest.Text text = (BrokenProgramTest.Text) broken.get()[1];
                String changed = breaking(broken).apply(text.file().text());
                if (!control.read(changed).accepted()) {
                    refused.add(text + ": " + broken.get()[0]);
                }
                all++;
            }
        }
        assertThat(all).isGreaterThan(100);
        assertThat(refused).isEqualTo(new TreeSet<>(REFUSED_OUTSIDE_TOO));
    }

    @SuppressWarnings("unchecked")
    private static UnaryOperator<String> breaking(Arguments broken) {
        return (UnaryOperator<String>) broken.get()[2];
    }
}
