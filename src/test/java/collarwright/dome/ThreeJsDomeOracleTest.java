package collarwright.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.testing.Checker;
import collarwright.testing.NeedsChecker;
import collarwright.testing.ThreeJs;
import collarwright.testing.ThreeJs.Solid;
import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every edge of a whole sphere beside those of IcosahedronGeometry (three.js, npm package three), which counts in floats. */
@NeedsChecker(Checker.THREE_JS)
class ThreeJsDomeOracleTest {
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void chordFactors_wholeSphere_areThoseOfThreeJs(int frequency) {
        Dome dome = Dome.of(new DomeSettings(frequency, 3 * frequency));
        ThreeJs.Sphere theirs = ThreeJs.sphere(Solid.ICO, frequency);

        double[] ours = new double[dome.memberCount()];
        Arrays.setAll(ours, dome::chordFactor);
        Arrays.sort(ours);
        double[] edges =
                theirs.edges().stream().mapToDouble(theirs::length).sorted().toArray();

        assertThat(theirs.points()).hasSize(dome.nodeCount());
        assertThat(ours).hasSameSizeAs(edges).containsExactly(edges, within(1e-6));
    }
}
