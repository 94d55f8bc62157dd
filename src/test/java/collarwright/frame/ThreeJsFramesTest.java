package collarwright.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.testing.Checker;
import collarwright.testing.NeedsChecker;
import collarwright.testing.NodeScript;
import collarwright.units.LengthUnit;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that three.js' exporters write, text and binary, with every corner once for each of its triangles. */
class ThreeJsFramesTest {

    // A class I icosahedron of frequency 2 has 10 · 4 + 2 nodes and 30 · 4 members: A. Siber, Icosadeltahedral Geometry
    // of Geodesic Domes, Fullerenes and Viruses, Symmetry 12(4):556, 2020. Its chord factors .54653 and .61803, 60 of
    // each: H. Kenner, Geodesic Math and How to Use It, 1976, tables (from memory).
    @Test
    @NeedsChecker(Checker.THREE_JS)
    void read_whatThreeJsWrites_isTheSphere(@TempDir Path folder) throws IOException {
        for (JsonNode name : NodeScript.run("frame-save.mjs", List.of(folder.toString()))) {
            Path file = folder.resolve(name.asText());
            FrameOptions options = new FrameOptions(Optional.of(LengthUnit.MM), 0.01, true);
            FrameReading reading = FrameReader.read(name.asText(), Files.readAllBytes(file), options);
            FrameNet net = reading.frame().orElseThrow(() -> new AssertionError(name + ": " + reading.findings()));
            assertThat(net.nodeCount()).as(name.asText()).isEqualTo(42);
            assertThat(net.memberCount()).as(name.asText()).isEqualTo(120);
            Map<Long, Integer> chords = new TreeMap<>();
            for (int m = 0; m < net.memberCount(); m++) {
                double chord =
                        net.node(net.memberB(m)).minus(net.node(net.memberA(m))).norm();
                chords.merge(StrictMath.round(chord), 1, Integer::sum);
            }
            assertThat(chords).as(name.asText()).isEqualTo(Map.of(547L, 60, 618L, 60));
            for (int node = 0; node < net.nodeCount(); node++) {
                assertThat(net.node(node).norm()).isCloseTo(1000, within(0.01));
            }
        }
    }
}
