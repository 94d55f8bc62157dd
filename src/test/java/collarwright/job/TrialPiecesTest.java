package collarwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.collar.TrialPiece;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.geometry.Interval;
import collarwright.tooling.Cutter;
import java.util.List;
import org.junit.jupiter.api.Test;

class TrialPiecesTest {

    private static final String GOOD = """
            [[trial-piece]]
            name = "shed-110"
            title = "Trial piece from the shed"
            source = "measured by us"
            stock = "pvc-metric-110x8.2"
            material = "pvc"
            bearing-wall = { value = "1.2 mm", low = "0.9 mm", high = "1.5 mm" }
            oversize = { value = "0.15 mm", low = "-0.05 mm", high = "0.2 mm" }
            readings = 18
            rms = "0.31 deg"
            """;

    private static Profiles profiles(String text) {
        return Profiles.load(List.of(new BundledProfiles(), OwnProfiles.of("mine.toml", text)));
    }

    private static JobReading job(String text, String... pieces) {
        return JobReader.read("job.toml", Jobs.with(pieces), profiles(text));
    }

    private static JobReading tried(String text) {
        return job(text, "width = \"48 mm\"", "width = \"48 mm\"\ntrial-piece = \"shed-110\"");
    }

    @Test
    void piece_writtenAndRead_isTheSame() {
        TrialPiece piece = new TrialPiece(
                "our-90",
                "Größe \"90\" \\ new",
                "pvc-metric-90x6.7",
                "pvc",
                new Interval(0, 0.123, 1.5),
                new Interval(-0.04, 0.15, 0.2),
                18,
                StrictMath.toRadians(0.312),
                "by\tus");
        Profiles read = profiles(TrialPieces.toml(piece));

        assertThat(read.findings()).isEmpty();
        TrialPiece again = read.trialPiece("our-90").orElseThrow();
        assertThat(again.title()).isEqualTo(piece.title());
        assertThat(again.source()).isEqualTo(piece.source());
        assertThat(again.bearingWall()).isEqualTo(piece.bearingWall());
        assertThat(again.oversize()).isEqualTo(piece.oversize());
        assertThat(TrialPieces.toml(again)).isEqualTo(TrialPieces.toml(piece));
    }

    @Test
    void job_withATrialPiece_countsOnItAndOnItsOversize() {
        JobReading reading = tried(GOOD);
        Job job = reading.job().orElseThrow(() -> new AssertionError(reading.findings()));
        Job plain = Jobs.job();

        assertThat(reading.findings()).isEmpty();
        assertThat(job.hub().body().bearing()).isEqualTo(new Interval(0.9, 1.2, 1.5));
        assertThat(job.hub().body().wall()).isEqualTo(plain.hub().body().wall());
        assertThat(job.revision()).isNotEqualTo(plain.revision());
        Cutter before = plain.drilling().cutters().get(30);
        Cutter after = job.drilling().cutters().get(30);
        assertThat(after.id()).isEqualTo(before.id());
        assertThat(after.asDrilled().nominal()).isEqualTo(before.asDrilled().nominal() + 0.15);
        assertThat(after.asDrilled().min()).isEqualTo(before.asDrilled().min() - 0.05);
        assertThat(after.asDrilled().max()).isEqualTo(before.asDrilled().max() + 0.2);
    }

    @Test
    void job_measuredCutter_keepsItsSize() {
        JobReading reading = job(
                GOOD,
                "width = \"48 mm\"",
                "width = \"48 mm\"\ntrial-piece = \"shed-110\"",
                "rack = [\"metric-twist\"]",
                "rack = [\"metric-twist\"]\nadd = [{ kind = \"twist\", size = 22, as-drilled = 22.05 }]");
        List<Cutter> cutters = reading.job().orElseThrow().drilling().cutters();
        assertThat(cutters)
                .filteredOn(c -> c.id().equals("TW-22"))
                .extracting(c -> c.asDrilled().nominal())
                .containsExactly(22.05);
        assertThat(cutters)
                .isSortedAccordingTo(
                        java.util.Comparator.comparingDouble(c -> c.asDrilled().nominal()));
    }

    @Test
    void job_pieceOfAnotherPipe_isWarned() {
        JobReading other = tried(GOOD.replace("110x8.2", "160x6.2"));
        assertThat(other.findings()).singleElement().satisfies(f -> {
            assertThat(f.level()).isEqualTo(Level.WARN);
            assertThat(f.code()).isEqualTo(Code.TRIAL_PIECE);
            assertThat(f.expected()).endsWith("a trial piece of the collar's own pipe, pvc-metric-110x8.2");
            assertThat(f.found()).isEqualTo("shed-110 was cut from pvc-metric-160x6.2 (pvc)");
        });
        JobReading steel = tried(GOOD.replace("\"pvc\"", "\"steel\""));
        assertThat(steel.findings())
                .singleElement()
                .satisfies(f -> assertThat(f.expected()).endsWith("a trial piece of the collar's own material, pvc"));
    }

    @Test
    void job_unknownPieceOrRimsBeside_isRefused() {
        assertThat(job(GOOD, "width = \"48 mm\"", "width = \"48 mm\"\ntrial-piece = \"shed-111\"")
                        .findings())
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.code()).isEqualTo(Code.PROFILE_UNKNOWN);
                    assertThat(f.hints()).contains("did you mean shed-110?");
                });
        assertThat(job(GOOD, "width = \"48 mm\"", "width = \"48 mm\"\nrims = 1\ntrial-piece = \"shed-110\"")
                        .findings())
                .extracting(Finding::code)
                .containsExactly(Code.JOB_CONFLICT);
    }

    @Test
    void piece_wrongValues_areAllTold() {
        String wrong = GOOD.replace("low = \"0.9 mm\"", "low = \"1.9 mm\"")
                .replace("high = \"0.2 mm\"", "high = \"5 mm\"")
                .replace("readings = 18", "readings = 0")
                .replace("rms = \"0.31 deg\"", "rms = \"60 deg\"");
        assertThat(profiles(wrong).findings())
                .extracting(f -> f.where().text() + " " + f.code())
                .containsExactly(
                        "mine/mine.toml:7:16 JOB_CONFLICT",
                        "mine/mine.toml:8:12 JOB_OUT_OF_RANGE",
                        "mine/mine.toml:9:12 JOB_OUT_OF_RANGE",
                        "mine/mine.toml:10:7 JOB_OUT_OF_RANGE");
        assertThat(profiles(GOOD.replace("oversize = {", "oversize = 3 #")).findings())
                .extracting(Finding::code)
                .containsExactly(Code.JOB_WRONG_TYPE);
        assertThat(profiles("[[trial-piece]]\nname = \"a\"\n").findings()).hasSizeGreaterThan(6);
    }
}
