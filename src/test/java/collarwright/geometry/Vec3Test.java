package collarwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import collarwright.testing.Seeds;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class Vec3Test {
    private static final Vec3 X = new Vec3(1, 0, 0);
    private static final Vec3 Y = new Vec3(0, 1, 0);
    private static final Vec3 Z = new Vec3(0, 0, 1);

    @Test
    void cross_axes_areRightHanded() {
        assertThat(X.cross(Y)).isEqualTo(Z);
        assertThat(Y.cross(Z)).isEqualTo(X);
        assertThat(Z.cross(X)).isEqualTo(Y);
    }

    @Test
    void plusMinusTimes_parts_addUp() {
        Vec3 v = X.times(2).plus(Y.times(3)).minus(Z.times(4));
        assertThat(v).isEqualTo(new Vec3(2, 3, -4));
        assertThat(v.dot(new Vec3(1, 10, 100))).isEqualTo(2 + 30 - 400);
        assertThat(new Vec3(2, 3, 6).norm()).isEqualTo(7);
        assertThat(new Vec3(0, 0, -5).unit()).isEqualTo(new Vec3(0, 0, -1));
    }

    @Test
    void cross_drawnVectors_followsLagrange() {
        Seeds.each(500, draw -> {
            Vec3 a = drawn(draw);
            Vec3 b = drawn(draw);
            Vec3 c = a.cross(b);
            assertThat(c.dot(a)).isCloseTo(0, within(1e-9));
            assertThat(c.dot(b)).isCloseTo(0, within(1e-9));
            assertThat(c.dot(c)).isCloseTo(a.dot(a) * b.dot(b) - a.dot(b) * a.dot(b), within(1e-8));
            assertThat(a.unit().norm()).isCloseTo(1, within(1e-15));
        });
    }

    private static Vec3 drawn(Seeds draw) {
        List<Double> parts = draw.numbers(3, -10, 10);
        return new Vec3(parts.get(0), parts.get(1), parts.get(2));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0, -0.0, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1e300, 1e-300})
    void unit_noLength_isRefused(double x) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Vec3(x, 0, 0).unit());
    }
}
