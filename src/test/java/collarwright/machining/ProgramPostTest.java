package collarwright.machining;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Code;
import collarwright.finding.Level;
import collarwright.tooling.Pattern;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ProgramPostTest {

    /** Twelve collars of 20 holes in small pecks are some thousand blocks: numbered by 100s they pass N99999. */
    @Test
    void lineNumbersBeyondFiveDigits_stopTheExport() {
        Machine m = RotarySamples.machine(false);
        double[] azimuths = IntStream.range(0, 20).mapToDouble(i -> 18.0 * i).toArray();
        Pattern twenty = RotarySamples.pattern("CA", RotarySamples.twist(12), azimuths);
        List<PatternRun> runs = List.of(new PatternRun(twenty, 12));
        RotarySettings tens = RotarySamples.on(RotarySamples.metric(false), numbered(m, 10));
        RotarySettings hundreds = RotarySamples.on(RotarySamples.metric(false), numbered(m, 100));

        assertThat(RotaryJob.plan(tens, runs).programs()).isNotEmpty();
        assertThat(RotaryJob.plan(hundreds, runs).findings())
                .filteredOn(f -> f.level() == Level.STOP)
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.code()).isEqualTo(Code.MACHINE_UNABLE);
                    assertThat(f.expected()).isEqualTo("line numbers up to N99999");
                });
    }

    private static Machine numbered(Machine m, int step) {
        Machine.Layout layout = new Machine.Layout(step, false, false, false);
        return RotarySamples.with(m, new Machine.Post(false, m.post().words(), 3, 3, 70, "M2", "ngc", layout));
    }
}
