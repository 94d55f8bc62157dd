package collarwright.hub;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Hubs against figures from outside. */
class HubsOracleTest {
    private static List<Double> gaps(HubType type) {
        return IntStream.range(0, type.struts().size())
                .mapToObj(hole -> StrictMath.toDegrees(type.gapAfter(hole)))
                .toList();
    }

    private static HubType ofNode(Hubs hubs, int tier, int place) {
        return hubs.types().get(hubs.typeOf(hubs.dome().firstOfTier(tier) + place - 1));
    }

    private static void near(List<Double> found, double... expected) {
        assertThat(found).hasSize(expected.length);
        for (int i = 0; i < expected.length; i++) {
            assertThat(found.get(i)).isCloseTo(expected[i], within(0.5e-4));
        }
    }

    // Five equal gaps of 72°: elementary. 63.4349° = arctan 2, the arc of an icosahedron's edge, is the corner of 2v's
    // middle triangle; the other four gaps of that hub are (180° − 63.4349°)/2 = 58.2825°: elementary.
    @Test
    void gaps_twoFrequency_areTheElementaryOnes() {
        Hubs hubs = SomeDomes.hubs(2, 6);
        near(gaps(ofNode(hubs, 0, 1)), 72, 72, 72, 72, 72);
        near(gaps(ofNode(hubs, 1, 1)), 58.2825, 63.4349, 58.2825, 58.2825, 63.4349, 58.2825);
    }

    // Computed by another program from the subdivision rule (corners of the spherical triangles); 60° is elementary.
    @Test
    void gaps_threeFrequency_areTheComputedOnes() {
        Hubs hubs = SomeDomes.hubs(3, 9);
        near(gaps(ofNode(hubs, 1, 1)), 55.6906, 62.1547, 62.1547, 62.1547, 62.1547, 55.6906);
        near(gaps(ofNode(hubs, 2, 2)), 60, 60, 60, 60, 60, 60);
    }

    // Computed by another program; 173.536° and 180° are the open side of foot hubs.
    @Test
    void gaps_footHubs_haveOneOpenSide() {
        List<Double> widest = new ArrayList<>();
        for (HubType type : SomeDomes.hubs(3, 5).types()) {
            gaps(type).stream().filter(gap -> gap > 100).forEach(widest::add);
        }
        widest.sort(Double::compare);
        assertThat(widest).hasSize(3);
        assertThat(widest.get(0)).isCloseTo(173.536, within(0.5e-3));
        assertThat(widest.get(1)).isCloseTo(173.536, within(0.5e-3));
        assertThat(widest.get(2)).isCloseTo(180, within(1e-9));
    }

    // Axial angle = arcsin(chord factor / 2). 2v: 18° and 4v: 9° are exact (a tenth and a twentieth of a turn around
    // the sphere, halved); the others computed by another program.
    @ParameterizedTest
    @CsvSource({"2, 15.8587 18.0000", "3, 10.0384 11.6407 11.9001", "4, 7.2727 8.4685 8.4891 8.5860 9.0000 9.3497"})
    void axialAngles_wholeSphere_areKnown(int frequency, String degrees) {
        List<Double> found = SomeDomes.hubs(frequency, 3 * frequency).strutShapes().stream()
                .map(s -> StrictMath.toDegrees(s.axialA()))
                .toList();
        near(
                found,
                List.of(degrees.split(" ")).stream()
                        .mapToDouble(Double::parseDouble)
                        .toArray());
    }

    // Computed by another program: hubs equal up to a turn, with mirror images apart and merged.
    @ParameterizedTest
    @CsvSource({"2, 3, 4, 3", "3, 5, 6, 5", "4, 6, 8, 7"})
    void types_usualPortions_areAsMany(int frequency, int rows, int apart, int merged) {
        Hubs hubs = SomeDomes.hubs(frequency, rows);
        assertThat(hubs.types()).hasSize(apart);
        Set<String> mirrored = new HashSet<>();
        for (HubType type : hubs.types()) {
            String one = least(type, 1);
            String other = least(type, -1);
            mirrored.add(one.compareTo(other) <= 0 ? one : other);
        }
        assertThat(mirrored).hasSize(merged);
    }

    // The least of all ways to read a hub round one way (+1) or the other (−1), as text.
    private static String least(HubType type, int sense) {
        int size = type.struts().size();
        return IntStream.range(0, size)
                .mapToObj(start -> {
                    StringBuilder text = new StringBuilder();
                    for (int i = 0; i < size; i++) {
                        int hole = StrictMath.floorMod(start + sense * i, size);
                        int gap = sense > 0 ? hole : StrictMath.floorMod(hole - 1, size);
                        text.append(StrictMath.round(1e6 * type.gapAfter(gap)))
                                .append('/')
                                .append(type.struts().get(hole).strutType())
                                .append(' ');
                    }
                    return text.toString();
                })
                .min(String::compareTo)
                .orElseThrow();
    }

    // Counted by hand: five-way hubs 1; the 30 around them 6 (their shortest strut, to the five-way hub, points up;
    // down;
    // up or down to the left or right); face centres 1; the three kinds of foot hubs 1 each.
    @Test
    void turns_threeFrequencyFiveNinths_makeElevenPairs() {
        Hubs hubs = SomeDomes.hubs(3, 5);
        Set<String> pairs = new HashSet<>();
        for (int node = 0; node < hubs.dome().nodeCount(); node++) {
            pairs.add(hubs.typeOf(node) + " " + StrictMath.round(1e7 * hubs.turnOf(node)));
        }
        assertThat(pairs).hasSize(11);
    }
}
