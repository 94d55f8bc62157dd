package collarwright.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.geometry.Vec3;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class SphereNetTest {

    private static SphereNet net(Base base, int b, int c) {
        return new SphereNet(new SphereSettings(base, new Breakdown(b, c), Subdivision.CHORDS, Up.VERTEX));
    }

    // V = aT + 2, E = 3aT: A. Siber, Symmetry 12(4):556, 2020 (icosahedron); Euler's formula V − E + F = 2 with F =
    // 2E/3.
    @ParameterizedTest
    @EnumSource(Base.class)
    void counts_followFromT(Base base) {
        for (int b = 1; b <= 9; b++) {
            for (int c = 0; c <= 9; c++) {
                SphereNet net = net(base, b, c);
                int t = b * b + b * c + c * c;
                assertThat(net.nodeCount()).as("%s (%s, %s)", base, b, c).isEqualTo(base.nodesPerT() * t + 2);
                assertThat(net.edgeCount()).as("%s (%s, %s)", base, b, c).isEqualTo(3 * base.nodesPerT() * t);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "ICOSAHEDRON, 1, 1, 0.6408518 60 0.7136442 30",
        "ICOSAHEDRON, 2, 2, 0.2865052 60 0.3333333 60 0.3568221 120 0.3628433 120",
        "OCTAHEDRON, 2, 0, 0.7653669 24 1.0000000 24",
        "TETRAHEDRON, 2, 0, 0.9194017 12 1.4142136 12"
    })
    void chords(Base base, int b, int c, String expected) {
        SphereNet net = net(base, b, c);
        TreeMap<String, Integer> count = new TreeMap<>();
        IntStream.range(0, net.edgeCount())
                .forEach(e -> count.merge(
                        String.format(
                                java.util.Locale.ROOT,
                                "%.7f",
                                net.node(net.edgeA(e))
                                        .minus(net.node(net.edgeB(e)))
                                        .norm()),
                        1,
                        Integer::sum));
        StringBuilder text = new StringBuilder();
        count.forEach((k, v) -> text.append(k).append(' ').append(v).append(' '));
        assertThat(text.toString().strip()).isEqualTo(expected);
        Vec3 sum = new Vec3(0, 0, 0);
        for (int i = 0; i < net.nodeCount(); i++) {
            sum = sum.plus(net.node(i));
        }
        assertThat(sum.norm()).isCloseTo(0, within(1e-9));
    }
}
