package collarwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.testing.ThreeJs.Solid;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@NeedsChecker(Checker.THREE_JS)
class ThreeJsTest {
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 8})
    void icosahedron_counts_followFromTheFrequency(int frequency) {
        ThreeJs.Sphere sphere = ThreeJs.sphere(Solid.ICO, frequency);

        // Twenty faces of frequency² triangles, three edges shared by two, and Euler's V - E + F = 2.
        assertThat(sphere.faceCount()).isEqualTo(20 * frequency * frequency);
        assertThat(sphere.edges()).hasSize(30 * frequency * frequency);
        assertThat(sphere.points()).hasSize(10 * frequency * frequency + 2);
    }

    @Test
    void icosahedron_undivided_hasItsEdge() {
        // Edge of the icosahedron in the unit sphere: 4 / sqrt(10 + 2 sqrt 5), elementary.
        assertThat(ThreeJs.sphere(Solid.ICO, 1).factors()).singleElement().satisfies(factor -> {
            assertThat(factor.factor()).isCloseTo(4 / Math.sqrt(10 + 2 * Math.sqrt(5)), within(1e-6));
            assertThat(factor.count()).isEqualTo(30);
        });
    }

    @Test
    void octahedron_halved_hasTwoLengths() {
        // Midpoints of the edges lifted to the sphere: 2 sin 22.5 degrees along the old edges, 1 between midpoints.
        assertThat(ThreeJs.sphere(Solid.OCTA, 2).factors())
                .extracting(factor -> Math.round(factor.factor() * 1e5) / 1e5 + " x " + factor.count())
                .containsExactly("0.76537 x 24", "1.0 x 24");
    }
}
