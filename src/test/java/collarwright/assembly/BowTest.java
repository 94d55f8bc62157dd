package collarwright.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * The two bows against their curves, drawn point by point. Deflection of a simple beam with a load in the middle, v = P·x·(3L² −
 * 4x²)/(48·E·I) for x up to L/2, and the half sine of a pinned column: J. M. Gere and S. P. Timoshenko, Mechanics of Materials,
 * table of deflections of simple beams, and the chapter on columns (from memory, no page).
 */
class BowTest {

    private static final double LENGTH = 1200;
    private static final int PIECES = 20_000;

    private final Bow bow = new Bow(40, LENGTH, 12);

    @Test
    void rise_ofBothCurves_shortensAsAsked() {
        double pushed = bow.riseWhenPushed();
        DoubleUnaryOperator sine = x -> pushed * StrictMath.sin(StrictMath.PI * x / LENGTH);
        assertThat(shortening(sine)).isCloseTo(12, within(0.15));
        double pulled = bow.riseWhenPulled();
        assertThat(shortening(beam(pulled))).isCloseTo(12, within(0.15));
        // The formulas are for small bows: at a hundredth of the shortening they are exact to a thousandth.
        Bow flat = new Bow(40, LENGTH, 0.12);
        assertThat(shortening(beam(flat.riseWhenPulled()))).isCloseTo(0.12, within(1.5e-4));
    }

    private static DoubleUnaryOperator beam(double rise) {
        return x -> {
            double near = StrictMath.min(x, LENGTH - x);
            return rise * near * (3 * LENGTH * LENGTH - 4 * near * near) / (LENGTH * LENGTH * LENGTH);
        };
    }

    // Length along the curve less the distance of its ends.
    private static double shortening(DoubleUnaryOperator curve) {
        double step = LENGTH / PIECES;
        double along = 0;
        for (int i = 0; i < PIECES; i++) {
            along += StrictMath.hypot(step, curve.applyAsDouble((i + 1) * step) - curve.applyAsDouble(i * step));
        }
        return along - LENGTH;
    }

    @Test
    void strain_ofBothCurves_isHalfTheDiameterTimesTheCurvature() {
        double pushed = bow.riseWhenPushed();
        DoubleUnaryOperator sine = x -> pushed * StrictMath.sin(StrictMath.PI * x / LENGTH);
        assertThat(bow.strainWhenPushed()).isCloseTo(20 * curvature(sine), within(1e-6));
        assertThat(bow.strainWhenPulled()).isCloseTo(20 * curvature(beam(bow.riseWhenPulled())), within(1e-4));
        assertThat(bow.strain()).isEqualTo(StrictMath.max(bow.strainWhenPushed(), bow.strainWhenPulled()));
    }

    private static double curvature(DoubleUnaryOperator curve) {
        double step = 0.5;
        double middle = LENGTH / 2;
        return -(curve.applyAsDouble(middle - step)
                        - 2 * curve.applyAsDouble(middle)
                        + curve.applyAsDouble(middle + step))
                / (step * step);
    }

    @Test
    void bow_impossible_isRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Bow(0, 1, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Bow(1, 1, -1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Bow(1, Double.NaN, 0));
    }
}
