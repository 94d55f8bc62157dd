package collarwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class RevisionTest {

    private static final String REVISION = Jobs.job().revision();

    @Test
    void revision_isEightPlainLetters() {
        assertThat(REVISION).matches("[ABCDFGHJKLMNPRTUVWXY]{8}");
    }

    static Stream<Arguments> sameInOtherWords() {
        return Stream.of(
                arguments("[dome]", "[order]\ndomes = 1\nspares = 3\n\n[dome]"),
                arguments("frequency = 3", "frequency = 3\nbase = \"icosahedron\"\nfoot = \"natural\""),
                arguments("\"1.40 m\"", "\"140 cm\""),
                arguments("\"48 mm\"", "48"),
                arguments("\"48 mm\"", "\"48.0 mm\" # a comment"),
                arguments("keep = \"5/9\"", "keep = \"5/8\""),
                arguments("keep = \"5/9\"", "tiers = 5"),
                arguments("[\"metric-twist\"]", "\"metric-twist\""),
                arguments("[\"20.0 mm\", \"20.2 mm\"]", "[20, \"2.02 cm\"]"),
                arguments("ring-width", "fix = \"tie\"\nend-gap = 2\nring-width"));
    }

    @ParameterizedTest
    @MethodSource("sameInOtherWords")
    void revision_sameValuesWrittenOtherwise_isTheSame(String old, String other) {
        assertThat(Jobs.job(old, other).revision()).isEqualTo(REVISION);
    }

    @Test
    void revision_tablesInAnotherOrder_isTheSame() {
        int dome = Jobs.GOOD.indexOf("[dome]");
        int strut = Jobs.GOOD.indexOf("[strut]");
        String moved =
                Jobs.GOOD.substring(0, dome) + Jobs.GOOD.substring(strut) + "\n" + Jobs.GOOD.substring(dome, strut);
        assertThat(Jobs.read(moved).job().orElseThrow().revision()).isEqualTo(REVISION);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "Pea frame        | Bean frame",
                "frequency = 3    | frequency = 6",
                "\"5/9\"          | \"4/9\"",
                "\"1.40 m\"       | \"1.4000001 m\"",
                "radius           | height",
                "from-end = \"9 mm\" | from-end = \"9.5 mm\"",
                "\"20.2 mm\"      | \"20.3 mm\"",
                "\"48 mm\"        | \"49 mm\"",
                "pvc-metric-40x3.0 | pvc-metric-40x4.5",
                "\"metric-twist\" | \"metric-twist\", \"metric-hole-saws\"",
                "machine = \"press\" | machine = \"rotary-plain\"",
                "machine = \"press\" | program-units = \"in\"",
            })
    void revision_anyOtherValue_isAnother(String old, String other) {
        assertThat(Jobs.job(old, other).revision()).isNotEqualTo(REVISION);
    }

    // Bins whose range is that of the measured struts leave every size as it was: only the bins themselves differ.
    @Test
    void revision_choicesThatCameLater_count() {
        String bins = "measured-od = [\"20.0 mm\", \"20.2 mm\"]\nbins = ";
        Set<String> revisions = Set.of(
                REVISION,
                Jobs.job("rack = [", "most-cutters = 2\nrack = [").revision(),
                Jobs.job("rack = [", "most-cutters = 3\nrack = [").revision(),
                Jobs.job("measured-od = [\"20.0 mm\", \"20.2 mm\"]", bins + "2").revision(),
                Jobs.job("measured-od = [\"20.0 mm\", \"20.2 mm\"]", bins + "3").revision(),
                Jobs.job("measured-od = [\"20.0 mm\", \"20.2 mm\"]", bins + "3\nbin = 2")
                        .revision(),
                Jobs.job("[hub]", "caps = true\n[hub]").revision(),
                Jobs.job("[hub]", "plugs = { length = \"30 mm\", diameter = \"15 mm\" }\n[hub]")
                        .revision(),
                Jobs.job("[hub]", "plugs = { length = \"31 mm\", diameter = \"15 mm\" }\n[hub]")
                        .revision(),
                Jobs.job("[hub]", "ends = \"flattened\"\nflat-length = \"20 mm\"\n[hub]")
                        .revision(),
                Jobs.job("[hub]", "ends = \"flattened\"\nflat-length = \"21 mm\"\n[hub]")
                        .revision());
        assertThat(revisions).hasSize(11);
        assertThat(Jobs.job("[hub]", "ends = \"square\"\ncaps = false\n[hub]").revision())
                .isEqualTo(REVISION);
    }

    @Test
    void revision_profilesValue_counts_itsWordingDoesNot() {
        String material = """
                [[material]]
                name = "pvc"
                title = "PVC"
                chlorinated = true
                strain-limit-percent = 1.0
                source = "another book"
                """;
        assertThat(withOwn(material + "density-kg-per-m3 = 1400\n")).isEqualTo(REVISION);
        assertThat(withOwn(material + "density-kg-per-m3 = 1401\n")).isNotEqualTo(REVISION);
        assertThat(withOwn(material.replace("= 1.0", "= 1.1") + "density-kg-per-m3 = 1400\n"))
                .isNotEqualTo(REVISION);
    }

    private static String withOwn(String profiles) {
        Profiles own = Profiles.load(List.of(new BundledProfiles(), OwnProfiles.of("own.toml", profiles)));
        return JobReader.read("elsewhere/other.toml", Jobs.GOOD, own)
                .job()
                .orElseThrow()
                .revision();
    }

    @Test
    void revisions_ofManyJobs_areAllDifferent() {
        Set<String> seen = new HashSet<>();
        for (int radius = 1000; radius < 1100; radius++) {
            assertThat(seen.add(Jobs.job("\"1.40 m\"", radius + "").revision())).isTrue();
        }
    }

    @Test
    void canonical_setsAndTexts_haveOneForm() {
        assertThat(Revisions.canonical(Set.of("b", "a", "c"))).isEqualTo("{\"a\",\"b\",\"c\"}");
        assertThat(Revisions.canonical(List.of("a\",\"b"))).isNotEqualTo(Revisions.canonical(List.of("a", "b")));
        assertThat(Revisions.canonical(Optional.empty())).isEqualTo("none");
        assertThatThrownBy(() -> Revisions.canonical(new ArrayList<Object>(List.of(new Object()))))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
