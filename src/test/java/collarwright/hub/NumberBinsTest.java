package collarwright.hub;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.testing.Seeds;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class NumberBinsTest {
    private static final double TOLERANCE = 1e-9;

    private static NumberBins bins(List<Double> chords) {
        return new NumberBins(chords.stream().mapToDouble(Double::doubleValue).toArray(), Alike.EXACT.length());
    }

    // The plain way: walk up the sorted chords.
    private static List<Double> firsts(List<Double> chords) {
        List<Double> sorted = new ArrayList<>(chords);
        Collections.sort(sorted);
        List<Double> firsts = new ArrayList<>();
        for (double chord : sorted) {
            if (firsts.isEmpty() || chord > firsts.get(firsts.size() - 1) * (1 + TOLERANCE)) {
                firsts.add(chord);
            }
        }
        return firsts;
    }

    @Test
    void bins_drawnChords_areTheKindsOfASortedWalk() {
        Seeds.each(500, draw -> {
            List<Double> chords = new ArrayList<>();
            int kinds = draw.whole(1, 40);
            for (int kind = 0; kind < kinds; kind++) {
                double chord = draw.coin() ? draw.between(0.01, 1) : draw.between(0.3, 0.3 + 1e-7);
                for (int i = draw.whole(1, 30); i > 0; i--) {
                    chords.add(chord * (1 + draw.between(0, 1) * StrictMath.pow(10, draw.whole(-16, -8))));
                }
            }
            chords = draw.shuffled(chords);
            List<Double> firsts = firsts(chords);
            NumberBins bins = bins(chords);
            assertThat(bins.kinds()).isEqualTo(firsts.size());
            for (int kind = 0; kind < firsts.size(); kind++) {
                assertThat(bins.first(kind)).isEqualTo(firsts.get(kind));
            }
            for (double chord : chords) {
                int kind = bins.kindOf(chord);
                assertThat(chord).isBetween(firsts.get(kind), firsts.get(kind) * (1 + TOLERANCE));
            }
        });
    }

    @Test
    void bins_chainOfSmallSteps_doesNotRunOn() {
        double step = 1 + 0.6 * TOLERANCE;
        NumberBins bins = bins(List.of(0.5, 0.5 * step, 0.5 * step * step, 0.5 * step * step * step));
        assertThat(bins.kinds()).isEqualTo(2);
        assertThat(bins.kindOf(0.5 * step)).isZero();
        assertThat(bins.kindOf(0.5 * step * step)).isEqualTo(1);
    }

    @Test
    void bins_oneChord_isOneKind() {
        assertThat(bins(List.of(0.4)).kinds()).isEqualTo(1);
        assertThat(bins(Collections.nCopies(1000, 0.4)).kindOf(0.4)).isZero();
    }
}
