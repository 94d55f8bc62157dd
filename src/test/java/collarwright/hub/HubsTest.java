package collarwright.hub;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import collarwright.dome.Dome;
import collarwright.dome.DomeSettings;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HubsTest {
    private static final double TOLERANCE = Alike.EXACT.length().relative();

    @Test
    void strutShapes_shortestFirst_areCounted() {
        Hubs hubs = SomeDomes.hubs(3, 5);
        assertThat(hubs.strutShapes()).extracting(StrutShape::count).containsExactly(30, 55, 80);
        assertThat(hubs.strutShapes()).extracting(StrutShape::chordFactor).isSorted();
        for (StrutShape shape : hubs.strutShapes()) {
            assertThat(2 * StrictMath.sin(shape.axialA())).isCloseTo(shape.chordFactor(), within(1e-15));
        }
    }

    // Members of one kind differ by rounding only, kinds by far more than the tolerance: no choice of it matters.
    static IntStream frequencies() {
        return IntStream.of(1, 2, 3, 5, 8, 13, 21, 32, 45, 63, 64);
    }

    @ParameterizedTest
    @MethodSource("frequencies")
    void strutShapes_wholeSphere_areFarApartAndTightInside(int frequency) {
        Hubs hubs = SomeDomes.hubs(frequency, 3 * frequency);
        Dome dome = hubs.dome();
        List<StrutShape> shapes = hubs.strutShapes();
        double spread = 0;
        for (int m = 0; m < dome.memberCount(); m++) {
            double first = shapes.get(hubs.strutTypeOf(m)).chordFactor();
            spread = StrictMath.max(spread, StrictMath.abs(dome.chordFactor(m) / first - 1));
        }
        double apart = IntStream.range(1, shapes.size())
                .mapToDouble(
                        i -> shapes.get(i).chordFactor() / shapes.get(i - 1).chordFactor() - 1)
                .min()
                .orElse(1);
        assertThat(spread).isLessThan(TOLERANCE / 1000);
        assertThat(apart).isGreaterThan(TOLERANCE * 10);
        assertThat(shapes.stream().mapToInt(StrutShape::count).sum()).isEqualTo(dome.memberCount());
    }

    @Test
    void turn_atThePoles_isToThePlusXMeridian() {
        // The apex' first neighbour lies over +x, so there uphill is a hole; a turn of 0 is the least.
        Hubs hubs = SomeDomes.hubs(2, 6);
        assertThat(hubs.turnOf(0)).isZero();
        // Below, the last tier but one starts half a step from +x: seen from outside, uphill (+x) is 36° from a hole.
        assertThat(hubs.turnOf(hubs.dome().nodeCount() - 1)).isCloseTo(StrictMath.toRadians(36), within(1e-12));
    }

    @Test
    void hubs_everyIndexOutside_isRefused() {
        Hubs hubs = SomeDomes.hubs(2, 3);
        assertThatThrownBy(() -> hubs.typeOf(26)).isInstanceOf(IndexOutOfBoundsException.class);
        assertThatThrownBy(() -> hubs.turnOf(-1)).isInstanceOf(IndexOutOfBoundsException.class);
        assertThatThrownBy(() -> hubs.strutTypeOf(65)).isInstanceOf(IndexOutOfBoundsException.class);
        assertThatThrownBy(() -> hubs.holeAtA(65)).isInstanceOf(IndexOutOfBoundsException.class);
        assertThatThrownBy(() -> hubs.holeAtB(-1)).isInstanceOf(IndexOutOfBoundsException.class);
    }

    @Test
    void hubType_strutsChangedLater_keepsItsOwn() {
        List<HubStrut> struts =
                new ArrayList<>(List.of(new HubStrut(0, StrutTip.A, 0, 0.2), new HubStrut(1, StrutTip.A, 2, 0.2)));
        HubType type = new HubType(struts, 1, 0);
        struts.clear();
        assertThat(type.struts()).hasSize(2);
        assertThat(type.gapAfter(0)).isEqualTo(2);
        assertThat(type.gapAfter(1)).isEqualTo(2 * StrictMath.PI - 2);
    }

    @Test
    void rose_tooFewOrTooManyStruts_isRefused() {
        Dome dome = Dome.of(new DomeSettings(1, 1));
        HubRose rose = new HubRose(dome, StrutKinds.of(dome, Alike.EXACT));
        int[] ends = new int[20];
        assertThatIllegalArgumentException().isThrownBy(() -> rose.aim(0, ends, 0, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> rose.aim(0, ends, 0, HubRose.MOST_STRUTS + 1));
    }

    @Test
    void cycle_otherNumberOfStruts_doesNotMatch() {
        Dome dome = Dome.of(new DomeSettings(1, 1));
        HubRose five = new HubRose(dome, StrutKinds.of(dome, Alike.EXACT));
        // Node 0 is the apex; its five members are the first five, it is their first node.
        five.aim(0, new int[] {0, 2, 4, 6, 8}, 0, 5);
        HubRose four = new HubRose(dome, StrutKinds.of(dome, Alike.EXACT));
        four.aim(0, new int[] {0, 2, 4, 6}, 0, 4);
        HubCycle cycle = HubCycle.from(five, 0, 0, Alike.EXACT.angle());
        assertThat(cycle.matches(five, 0)).isTrue();
        assertThat(cycle.matches(four, 0)).isFalse();
        assertThat(five.strutKey()).isNotEqualTo(four.strutKey());
    }
}
