package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Finding;
import collarwright.machining.BoreSamples;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramFile;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotarySettings;
import collarwright.testing.Checker;
import collarwright.testing.NeedsChecker;
import collarwright.testing.Rs274;
import collarwright.testing.Seeds;
import collarwright.tooling.Cutter;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * Programs that bore, spoilt in every way that programs are spoilt in {@link MutationsTest} and in those of arcs: what the
 * rehearsal does not catch has to make the same moves for rs274 (linuxcnc-uspace, Debian).
 */
@NeedsChecker(Checker.RS274)
class BoreMutationsTest {

    private static final Rs274 CONTROL = new Rs274(List.of());
    private static final int SEEDS = 8;

    private static List<Mutation> ways() {
        List<Mutation> all = new ArrayList<>(Mutation.all());
        all.addAll(Mutation.arcs());
        return all;
    }

    @Test
    void everyBoredProgram_passes_andEverySpoiltOneIsCaught() {
        List<String> missed = new ArrayList<>();
        Set<String> caught = new TreeSet<>();
        int spoiltOnes = 0;
        for (int seed = 1; seed <= SEEDS; seed++) {
            RotarySettings settings = BoreSamples.settings(seed % 2 == 0, seed % 4 < 2);
            ProgramFile file = drawn(Seeds.of(seed), settings);
            assertThat(Rehearsal.rehearse(file, settings)).isEmpty();
            Rs274.Reading good = CONTROL.read(file.text());
            assertThat(good.accepted()).as(good.complaint()).isTrue();
            int number = 0;
            for (Mutation mutation : ways()) {
                Seeds draw = Seeds.of(1000L * seed + number++);
                Mutation.Spoilt spoilt = mutation.apply(draw, file.text()).orElse(null);
                if (spoilt != null) {
                    spoiltOnes++;
                    if (isCaught(file, spoilt.text(), settings)) {
                        caught.add(mutation.name());
                    } else if (!sameMoves(good, spoilt.text())) {
                        missed.add("seed " + seed + ": " + mutation.name() + ", line " + spoilt.line() + ": "
                                + spoilt.before() + " / " + spoilt.after());
                    }
                }
            }
        }
        assertThat(missed).isEmpty();
        assertThat(spoiltOnes).isGreaterThan(300);
        assertThat(caught)
                .containsAll(Mutation.arcs().stream().map(Mutation::name).toList());
    }

    private static ProgramFile drawn(Seeds draw, RotarySettings settings) {
        Cutter mill = BoreSamples.mill(draw.coin() ? 12 : 9.525, 40);
        double small = mill.size() * draw.between(1.2, 1.9);
        double large = mill.size() * draw.between(2.05, 3.5);
        PatternRun run = new PatternRun(BoreSamples.mixed(mill, hundredths(small), hundredths(large)), 2);
        return RotaryJob.plan(settings, List.of(run)).programs().stream()
                .filter(p -> p.purpose() == ProgramFile.Purpose.CUT)
                .filter(p -> p.name().contains("-EM-"))
                .findFirst()
                .orElseThrow();
    }

    private static double hundredths(double size) {
        return Math.ceil(size * 100) / 100;
    }

    private static boolean isCaught(ProgramFile f, String text, RotarySettings settings) {
        ProgramFile file = new ProgramFile(f.name(), f.purpose(), f.task(), f.lift(), f.effort(), text);
        List<Finding> findings = Rehearsal.rehearse(file, settings);
        return !findings.isEmpty();
    }

    private static boolean sameMoves(Rs274.Reading good, String text) {
        Rs274.Reading reading = CONTROL.read(text);
        return reading.accepted() && MutationsTest.canonical(reading).equals(MutationsTest.canonical(good));
    }
}
