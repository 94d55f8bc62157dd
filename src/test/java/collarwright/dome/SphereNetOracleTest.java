package collarwright.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.geometry.Vec3;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Whole sphere nets against published figures; what is from memory or computed says so. */
class SphereNetOracleTest {

    // Every edge at one of the listed factors, to half the last digit; the rest are named.
    private static Map<String, Integer> counts(SphereNet net, List<String> factors) {
        Map<String, Integer> counts = new TreeMap<>();
        for (int edge = 0; edge < net.edgeCount(); edge++) {
            double chord = chord(net, edge);
            String factor = factors.stream()
                    .filter(f -> StrictMath.abs(Double.parseDouble(f) - chord) <= halfLastDigit(f))
                    .findFirst()
                    .orElse("none of them: " + chord);
            counts.merge(factor, 1, Integer::sum);
        }
        return counts;
    }

    private static double halfLastDigit(String figure) {
        return 0.5 * StrictMath.pow(10, figure.indexOf('.') + 1 - figure.length()) + 1e-12;
    }

    private static double chord(SphereNet net, int edge) {
        return net.node(net.edgeA(edge)).minus(net.node(net.edgeB(edge))).norm();
    }

    private static void hasTable(Base base, int b, int c, String table) {
        Map<String, Integer> expected = new TreeMap<>();
        for (String entry : table.split(" ")) {
            expected.put(
                    entry.substring(0, entry.indexOf(':')), Integer.valueOf(entry.substring(entry.indexOf(':') + 1)));
        }
        assertThat(counts(new SphereNet(base, new Breakdown(b, c)), List.copyOf(expected.keySet())))
                .isEqualTo(expected);
    }

    // H. Kenner, Geodesic Math and How to Use It, University of California Press, 1976, chord factor tables, class I
    // (alternate), icosahedron: the five-decimal factors are from memory. The counts are computed from the published
    // rule
    // (J. D. Clinton, Advanced Structural Geometry Studies, Part I, NASA CR-1734, 1971: method 1, from memory).
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2 | .54653:60 .61803:60",
                "3 | .34862:60 .40355:90 .41241:120",
                "4 | .25318:60 .29453:120 .29524:60 .29859:60 .31287:120 .32492:60",
                "5 | .19815:60 .22569:120 .23160:60 .23179:60 .24509:120 .24535:30 .24724:120 .25517:120 .26160:60",
                "6 | .16257:60 .18191:120 .18738:60 .19048:60 .19801:120 .20282:180 .20591:240 .21535:120 .21663:120"
            })
    void chords_icosahedronClassOne_areThePublishedOnes(int frequency, String table) {
        hasTable(Base.ICOSAHEDRON, frequency, 0, table);
    }

    // Computed from the published rule (as above) by a program of its own, not published.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "OCTAHEDRON | 1 | 1.414214:12",
                "OCTAHEDRON | 2 | 0.765367:24 1.000000:24",
                "OCTAHEDRON | 3 | 0.459506:24 0.632456:36 0.671421:48",
                "OCTAHEDRON | 4 | 0.320364:24 0.438871:48 0.447214:24 0.459506:24 0.517638:48 0.577350:24",
                "OCTAHEDRON | 5 | 0.244367:24 0.314152:48 0.341345:24 0.342997:24 0.388586:48 0.392232:12 0.400334:48"
                        + " 0.436958:48 0.471405:24",
                "OCTAHEDRON | 6 | 0.197075:24 0.241970:48 0.265466:24 0.277350:24 0.296031:48 0.320364:72 0.331930:96"
                        + " 0.377964:48 0.385175:48",
                "TETRAHEDRON | 1 | 1.632993:6",
                "TETRAHEDRON | 2 | 0.919402:12 1.414214:12",
                "TETRAHEDRON | 3 | 0.509140:12 0.852803:18 0.977514:24",
                "TETRAHEDRON | 4 | 0.338204:12 0.517638:24 0.577350:12 0.605811:12 0.765367:24 1.000000:12"
            })
    void chords_otherBasesClassOne_areThoseOfTheRule(Base base, int frequency, String table) {
        hasTable(base, frequency, 0, table);
    }

    // Two-frequency triacon, .64085 and .71364: from memory. The rest is computed from the published rule (as above) by
    // a
    // program of its own, not published.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 | 0.64085:60 0.71364:30",
                "1 | 0.6408518:60 0.7136442:30",
                "2 | 0.2865052:60 0.3333333:60 0.3568221:120 0.3628433:120",
                "3 | 0.1810595:60 0.2119742:60 0.2212519:60 0.2284056:120 0.2305248:30 0.2327907:240 0.2467690:120"
                        + " 0.2486993:120",
                "4 | 0.1319706:60 0.1548027:60 0.1552713:60 0.1645905:120 0.1656775:120 0.1683203:120 0.1693843:60"
                        + " 0.1759256:120 0.1791310:240 0.1812668:240 0.1875925:120 0.1884306:120"
            })
    void chords_icosahedronClassTwo_areThoseOfTheRule(int b, String table) {
        hasTable(Base.ICOSAHEDRON, b, b, table);
    }

    // Textbook: the edge of a dodecahedron of circumradius 1 is 4/(√3·(1 + √5)); its corners are the nodes of six
    // struts.
    @Test
    void chords_icosahedronOneOne_areTheDodecahedronsEdges() {
        SphereNet net = new SphereNet(Base.ICOSAHEDRON, new Breakdown(1, 1));
        double edge = 4 / (StrictMath.sqrt(3) * (1 + StrictMath.sqrt(5)));
        NetWalk walk = new NetWalk(net);
        List<Integer> corners = walk.withStruts(6);
        assertThat(corners).hasSize(20);
        for (int e = 0; e < net.edgeCount(); e++) {
            if (corners.contains(net.edgeA(e)) && corners.contains(net.edgeB(e))) {
                assertThat(chord(net, e)).isCloseTo(edge, within(1e-15));
            }
        }
    }

    // Wikipedia, "Geodesic grid", table of parameters, f_s: volume of the polyhedron over the sphere's. The last digits
    // printed there are off by up to 2e-8, hence 1e-7.
    @ParameterizedTest
    @CsvSource({
        "1, 0.6054613829125257",
        "2, 0.87345315725681",
        "3, 0.9409379804627",
        "4, 0.9661513525328",
        "5, 0.97814560438654"
    })
    void volume_icosahedronClassOne_isThePublishedOne(int frequency, double share) {
        SphereNet net = new SphereNet(Base.ICOSAHEDRON, new Breakdown(frequency, 0));
        double volume = 0;
        for (List<Integer> face : new NetWalk(net).faces()) {
            Vec3 a = net.node(face.get(0));
            volume += a.dot(net.node(face.get(1)).cross(net.node(face.get(2)))) / 6;
        }
        assertThat(volume / (4 * StrictMath.PI / 3)).isCloseTo(share, within(1e-7));
    }

    // Wikipedia, "Geodesic grid", table of parameters, a_s: the edge of an equal-arc division.
    @ParameterizedTest
    @CsvSource({
        "1, 1.051462224238267",
        "2, 0.5465330578253433",
        "3, 0.3669588160039673",
        "4, 0.2759044842552674",
        "5, 0.2209776477808279"
    })
    void arcs_alongTheIcosahedronsEdges_areThePublishedOnes(int frequency, double edge) {
        SphereNet net = new SphereNet(Base.ICOSAHEDRON, new Breakdown(frequency, 0), Subdivision.ARCS, Up.VERTEX);
        edgesAreParted(net, 5, frequency, edge);
        assertThat(edge)
                .isCloseTo(
                        2 * StrictMath.sin(StrictMath.acos(1 / StrictMath.sqrt(5)) / (2 * frequency)), within(1e-15));
    }

    // An edge of the octahedron spans 90°, one of the tetrahedron arccos(−1/3), of the icosahedron arccos(1/√5):
    // textbook.
    @ParameterizedTest
    @CsvSource({"ICOSAHEDRON, 5, 63.43494882292201", "OCTAHEDRON, 4, 90", "TETRAHEDRON, 3, 109.47122063449069"})
    void arcs_alongEveryEdgeOfAnyBase_areEqual(Base base, int strutsAtCorner, double spanDegrees) {
        double span = StrictMath.toRadians(spanDegrees);
        for (Up up : Up.values()) {
            for (int n : new int[] {1, 2, 3, 4, 7, 10, 31}) {
                SphereNet net = new SphereNet(base, new Breakdown(n, 0), Subdivision.ARCS, up);
                edgesAreParted(net, strutsAtCorner, n, 2 * StrictMath.sin(span / (2 * n)));
            }
        }
    }

    // Straight on from every corner, n equal steps to the next one.
    private static void edgesAreParted(SphereNet net, int strutsAtCorner, int n, double chord) {
        NetWalk walk = new NetWalk(net);
        List<Integer> corners = walk.withStruts(strutsAtCorner);
        for (int corner : corners) {
            for (int first : walk.neighbours(corner)) {
                int from = corner;
                int at = first;
                for (int step = 1; step <= n; step++) {
                    assertThat(net.node(from).minus(net.node(at)).norm()).isCloseTo(chord, within(1e-15));
                    assertThat(corners.contains(at)).isEqualTo(step == n);
                    if (step < n) {
                        int next = walk.onward(from, at, 0);
                        from = at;
                        at = next;
                    }
                }
            }
        }
    }

    // The rule of the three crossings, drawn flat: seen from the sphere's centre on the plane of a triangle, great
    // circles
    // are straight lines.
    @ParameterizedTest
    @EnumSource
    void arcs_innerNodes_areTheMeanOfTheCrossingsDrawnFlat(Base base) {
        for (int n = 3; n <= 12; n++) {
            SphereNet net = new SphereNet(base, new Breakdown(n, 0), Subdivision.ARCS, Up.FACE);
            NodeFinder finder = new NodeFinder(net, 1e-13);
            List<Vec3> corners = Up.FACE.turned(base);
            for (int[] face : base.faces()) {
                FlatFace flat = new FlatFace(corners.get(face[0]), corners.get(face[1]), corners.get(face[2]), n);
                for (int i = 1; i < n - 1; i++) {
                    for (int j = 1; i + j < n; j++) {
                        assertThat(finder.at(flat.node(i, j, n - i - j)))
                                .as("%s, %s: %s %s", base, n, i, j)
                                .isNotNegative();
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void arcs_frequencyTwo_isTheSameAsChords(Base base) {
        SphereNet arcs = new SphereNet(base, new Breakdown(2, 0), Subdivision.ARCS, Up.VERTEX);
        SphereNet chords = new SphereNet(base, new Breakdown(2, 0));
        for (int node = 0; node < arcs.nodeCount(); node++) {
            assertThat(arcs.node(node).minus(chords.node(node)).norm()).isLessThan(1e-15);
        }
    }
}
