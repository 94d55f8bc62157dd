package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.machining.Machine;
import collarwright.machining.ProgramFile;
import collarwright.testing.Checker;
import collarwright.testing.NeedsChecker;
import collarwright.testing.Rs274;
import collarwright.testing.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * Programs for a tube cutter, spoilt in every way that programs are spoilt in {@link MutationsTest}: what the rehearsal does
 * not catch has to make the same moves for rs274 (linuxcnc-uspace, Debian), but for a corner of an outline that is off by
 * three thousandths: an outline may be off by 0.05 mm.
 */
@NeedsChecker(Checker.RS274)
class TubeMutationsTest {

    private static final Rs274 CONTROL = new Rs274(List.of());
    private static final int SEEDS = 4;

    @Test
    void everyProgram_passes_andEverySpoiltOneIsCaught() {
        List<String> missed = new ArrayList<>();
        Set<String> caught = new TreeSet<>();
        int spoiltOnes = 0;
        for (int seed = 1; seed <= SEEDS; seed++) {
            Machine machine =
                    seed == 4 ? TubeSamples.with(TubeSamples.plain(), TubeSamples.laser()) : TubeSamples.plain();
            ProfileJobs job = ProfileJobs.draw(Seeds.of(seed), machine);
            assertThat(job.programs()).as("seed " + seed).isNotEmpty();
            ProgramFile file = job.programs().get(0);
            assertThat(Rehearsal.rehearse(file, job.settings())).isEmpty();
            Rs274.Reading good = CONTROL.read(file.text());
            assertThat(good.accepted()).as(good.complaint()).isTrue();
            int number = 0;
            for (Mutation mutation : Mutation.all()) {
                Seeds draw = Seeds.of(1000L * seed + number++);
                Mutation.Spoilt spoilt = mutation.apply(draw, file.text()).orElse(null);
                if (spoilt != null) {
                    spoiltOnes++;
                    if (!Rehearsal.rehearse(TubeSamples.with(file, spoilt.text()), job.settings())
                            .isEmpty()) {
                        caught.add(mutation.name());
                    } else if (!(mutation.name().contains("a little")
                                    && spoilt.before().matches("G1 X.* A.*"))
                            && !sameMoves(good, spoilt.text())) {
                        missed.add("seed " + seed + ": " + mutation.name() + ", line " + spoilt.line() + ": "
                                + spoilt.before() + " / " + spoilt.after());
                    }
                }
            }
        }
        assertThat(missed).as(missed.size() + " missed").isEmpty();
        assertThat(spoiltOnes).isGreaterThan(150);
        assertThat(caught).hasSizeGreaterThan(40);
    }

    private static boolean sameMoves(Rs274.Reading good, String text) {
        Rs274.Reading reading = CONTROL.read(text);
        return reading.accepted() && MutationsTest.canonical(reading).equals(MutationsTest.canonical(good));
    }
}
