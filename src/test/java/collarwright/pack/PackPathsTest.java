package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PackPathsTest {

    @ParameterizedTest
    @ValueSource(strings = {"plan.json", "machine/CA HS-44.ngc", "a/b/c.txt", ".hidden", "con-1.txt", "x.con", "a.b.c"})
    void allowed_plainPath_isAllowed(String path) {
        assertThat(PackPaths.allowed(path)).isTrue();
    }

    // Names of devices: Microsoft, "Naming Files, Paths, and Namespaces".
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "/",
                "/a",
                "a/",
                "a//b",
                ".",
                "..",
                "a/../b",
                "./a",
                "a\\b",
                "a:b",
                "a*",
                "a?",
                "a\"b",
                "a<b",
                "a>b",
                "a|b",
                "a\tb",
                "a\nb",
                "Größe",
                "con",
                "CON.txt",
                "a/aux",
                "nul.tar.gz",
                "Com1",
                "lpt9.ngc",
                "con .txt",
                "conin$",
                "a.",
                "a ",
                " a",
                "a./b",
                "x/ y"
            })
    void allowed_pathThatSomeDiskRefuses_isNotAllowed(String path) {
        assertThat(PackPaths.allowed(path)).isFalse();
    }

    @Test
    void allowed_length_endsAt120() {
        assertThat(PackPaths.allowed("a/" + "b".repeat(118))).isTrue();
        assertThat(PackPaths.allowed("a/" + "b".repeat(119))).isFalse();
    }

    @Test
    void faults_severalPaths_areAllNamed() {
        assertThat(PackPaths.faults(List.of("plan.json", "a/one.txt", "a/two.txt")))
                .isEmpty();
        assertThat(PackPaths.faults(List.of("a/x.txt", "A/y.txt", "b", "B", "c", "c/d", "e:")))
                .containsExactlyInAnyOrder(
                        "differ by capitals only: a and A",
                        "differ by capitals only: b and B",
                        "both a file and a folder: c",
                        "not a path for every disk: e:");
    }
}
