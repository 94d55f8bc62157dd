package collarwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class LayersReaderTest {
    private static final String HEAD = "source = \"ours\"\n[[cut-layers]]\nname = \"mine\"\ntitle = \"Mine\"\n";

    /** One file of profiles beside the bundled ones. */
    private record One(String text) implements ProfileSource {
        @Override
        public List<String> names() {
            return List.of("mine.toml");
        }

        @Override
        public byte[] read(String name) {
            return text.getBytes(StandardCharsets.UTF_8);
        }

        @Override
        public String place(String name) {
            return name;
        }
    }

    private static Profiles load(String lines) {
        return Profiles.load(List.of(new BundledProfiles(), new One(HEAD + lines)));
    }

    @Test
    void bundled_roles_areWhatHoldsWithoutAName() {
        CutLayers roles = Jobs.PROFILES.cutLayers("roles").orElseThrow();

        for (CutLayers.Line line : CutLayers.Line.values()) {
            assertThat(roles.of(line)).isEqualTo(line.usual());
        }
        assertThat(roles.cutOnly()).isFalse();
        assertThat(Jobs.PROFILES.cutLayers("cut-only").orElseThrow().cutOnly()).isTrue();
    }

    @Test
    void read_keysLeftOut_areTheUsualOnes() {
        Profiles profiles = load("cut-inside = { layer = \"HOLES\", svg = \"#FF00AA\" }\n");

        assertThat(profiles.findings()).isEmpty();
        CutLayers mine = profiles.cutLayers("mine").orElseThrow();
        assertThat(mine.of(CutLayers.Line.CUT_INSIDE)).isEqualTo(new CutLayers.Style("HOLES", 1, "#ff00aa"));
        assertThat(mine.of(CutLayers.Line.MARK)).isEqualTo(CutLayers.Line.MARK.usual());
    }

    @Test
    void read_everyFault_isToldAtItsPlace() {
        Profiles profiles = load("""
                cut-inside = { layer = "Löcher", aci = 256, svg = "red" }
                mark = { layer = "DEFPOINTS", colour = 3 }
                cut-only = "yes"
                """);

        assertThat(profiles.cutLayers("mine")).isEmpty();
        assertThat(profiles.findings())
                .extracting(Finding::code)
                .containsExactlyInAnyOrder(
                        Code.PROFILE_WRONG,
                        Code.JOB_OUT_OF_RANGE,
                        Code.PROFILE_WRONG,
                        Code.PROFILE_WRONG,
                        Code.JOB_UNKNOWN_KEY,
                        Code.JOB_WRONG_TYPE);
        assertThat(profiles.findings())
                .allSatisfy(f -> assertThat(f.where().text()).startsWith("mine.toml:"));
    }

    @Test
    void read_layersOrColoursTwice_areRefused() {
        Profiles twice = load("cut-inside = { layer = \"CUT\" }\ncut-outside = { layer = \"CUT\" }\n");
        Profiles colours = load("mark = { aci = 1, svg = \"#0000ff\" }\n");
        Profiles alike = load("cut-inside = { aci = 5, svg = \"#0000ff\" }\nmark = { aci = 8, svg = \"#505050\" }\n");

        assertThat(twice.findings()).singleElement().satisfies(f -> {
            assertThat(f.expected()).contains("a layer of its own, for cut-outside");
            assertThat(f.found()).contains("\"CUT\", as cut-inside has it");
        });
        assertThat(colours.findings()).hasSize(2);
        assertThat(colours.findings())
                .allSatisfy(f -> assertThat(f.expected()).contains("that no cut line has, for mark"));
        // Cut lines may share a colour, and so may marks and notes.
        assertThat(alike.findings()).isEmpty();
    }

    @Test
    void read_nameThatALineOfAnotherLayerHas_isRefused() {
        Profiles mine = load("cut-inside = { layer = \"C\" }\ncut-outside = { layer = \"C-1\" }\n");
        Profiles usual = load("mark = { layer = \"CUT-INSIDE-07\" }\n");
        Profiles apart = load("""
                cut-inside = { layer = "C" }
                cut-outside = { layer = "C1" }
                mark = { layer = "C-M1" }
                note = { layer = "C-" }
                """);

        assertThat(mine.findings()).singleElement().satisfies(f -> {
            assertThat(f.expected()).contains("not another's with - and digits").contains("for cut-outside");
            assertThat(f.found()).isEqualTo("\"C-1\", since cut-inside is \"C\"");
        });
        assertThat(usual.findings())
                .singleElement()
                .satisfies(
                        f -> assertThat(f.found()).isEqualTo("\"CUT-INSIDE-07\", since cut-inside is \"CUT-INSIDE\""));
        assertThat(apart.findings()).isEmpty();
    }
}
