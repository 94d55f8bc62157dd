package collarwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.collar.Heights;
import collarwright.tooling.SharingLimits;
import org.junit.jupiter.api.Test;

class SharingReaderTest {

    @Test
    void read_sharedPatterns_takeTheirLimits() {
        assertThat(Jobs.job("[shop]", "[limits]\nextra-lean = 2\nmiss = \"4 mm\"\n[shop]")
                        .drilling()
                        .shared())
                .isEmpty();
        Job job = Jobs.job(
                "[drilling]", "[limits]\nextra-lean = \"0.5 deg\"\nmiss = \"4 mm\"\n[drilling]\npatterns = \"shared\"");
        assertThat(job.drilling().shared().orElseThrow().miss()).isEqualTo(4);
        assertThat(job.drilling().shared().orElseThrow().extraLean()).isCloseTo(StrictMath.PI / 360, within(1e-15));
        assertThat(Jobs.job("[drilling]", "[drilling]\npatterns = \"shared\"")
                        .drilling()
                        .shared())
                .contains(SharingLimits.USUAL);
    }

    @Test
    void read_heights_areTaken() {
        assertThat(Jobs.job("[hub]", "[hub]\nheights = \"converging\"").hub().heights())
                .isEqualTo(Heights.CONVERGING);
        assertThat(Jobs.job("[hub]", "[hub]").hub().heights()).isEqualTo(Heights.MIDPLANE);
    }
}
