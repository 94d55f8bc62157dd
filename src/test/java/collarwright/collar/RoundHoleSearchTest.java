package collarwright.collar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.testing.Seeds;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The tilt limit beside a search in space that knows no formula: {@link TiltSearch}. */
class RoundHoleSearchTest {
    private static final double ALLOWED = StrictMath.toRadians(0.002);

    /** A strut in a hole of a collar. */
    private record Case(double strut, double hole, double inner, double outer) {
        static Case drawn(Seeds draw) {
            double inner = draw.between(15, 120);
            double outer = inner * (1 + StrictMath.pow(10, draw.between(-2.2, -0.5)));
            double strut = 2 * inner * draw.between(0.08, 0.85);
            double widest = StrictMath.min(2 * inner * 0.98, strut * 1.5);
            double hole = strut + (widest - strut) * StrictMath.pow(10, draw.between(-2, 0));
            return new Case(strut, hole, inner, outer);
        }

        double limit() {
            return RoundHole.tiltLimit(strut, hole, inner, outer);
        }

        double searched() {
            return new TiltSearch(strut, hole, inner, outer).limit();
        }

        boolean onMidPlane() {
            double lean = limit();
            return StrictMath.cos(lean) / hole + StrictMath.sin(lean) / 2 / inner <= 1 / strut;
        }
    }

    @Test
    void tiltLimit_drawnCollars_isWhatTheSearchFinds() {
        List<Boolean> onMidPlane = new ArrayList<>();
        Seeds.each(120, draw -> {
            Case c = Case.drawn(draw);
            onMidPlane.add(c.onMidPlane());
            assertThat(c.limit()).as("%s", c).isCloseTo(c.searched(), within(ALLOWED));
        });
        if (onMidPlane.size() > 1) {
            assertThat(onMidPlane.stream().filter(on -> on).count())
                    .as("contacts on the mid-plane; the others are beside it")
                    .isBetween(30L, 90L);
        }
    }

    @Test
    void tiltLimit_extremeCollars_isWhatTheSearchFinds() {
        for (Case c : List.of(
                new Case(40, 42, 50, 50.05),
                new Case(40, 40.02, 50, 55),
                new Case(40, 40.02, 50, 50.2),
                new Case(60, 99.5, 50, 52),
                new Case(98, 99.5, 50, 52),
                new Case(98, 99.5, 50, 80),
                new Case(5, 95, 50, 55),
                new Case(1, 1.1, 50, 55),
                new Case(40, 60, 50, 100))) {
            assertThat(c.limit()).as("%s", c).isCloseTo(c.searched(), within(ALLOWED));
        }
    }

    @Test
    void search_strutMovedSideways_hasNoMoreRoom() {
        // The formula takes the strut in the middle of its hole; nothing is gained beside it.
        Seeds.each(12, draw -> {
            Case c = Case.drawn(draw);
            TiltSearch search = new TiltSearch(c.strut, c.hole, c.inner, c.outer);
            double lean = c.limit();
            double play = (c.hole - c.strut) / 2;
            for (double part : new double[] {-0.5, -0.1, 0.02, 0.3}) {
                assertThat(search.room(lean, part * play)).as("%s", c).isLessThanOrEqualTo(1e-6);
            }
        });
    }
}
