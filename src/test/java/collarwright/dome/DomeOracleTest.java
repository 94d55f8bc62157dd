package collarwright.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Domes against published figures; what is from memory or computed says so. */
class DomeOracleTest {
    private static Dome dome(int frequency, int rows) {
        return Dome.of(new DomeSettings(frequency, rows));
    }

    private static Dome sphere(int frequency) {
        return dome(frequency, 3 * frequency);
    }

    // Chords at one of the listed factors, to half the last printed digit; every member has to be at one of them.
    private static Map<String, Integer> counts(Dome dome, String... factors) {
        Map<String, Integer> counts = new TreeMap<>();
        for (int m = 0; m < dome.memberCount(); m++) {
            double chord = dome.chordFactor(m);
            String factor = IntStream.range(0, factors.length)
                    .mapToObj(i -> factors[i])
                    .filter(f -> StrictMath.abs(Double.parseDouble(f) - chord) <= 0.5e-5)
                    .findFirst()
                    .orElse("none of them: " + chord);
            counts.merge(factor, 1, Integer::sum);
        }
        return counts;
    }

    // H. Kenner, Geodesic Math and How to Use It, University of California Press, 1976, chord factor tables, class I
    // (alternate), icosahedron: the five-decimal factors are from memory. The counts are computed from the published
    // rule (J. D. Clinton, NASA CR-1734, 1971: equal divisions of the flat face, pushed out to the sphere).
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
    void chordFactors_wholeSphere_areThePublishedOnes(int frequency, String table) {
        Map<String, Integer> expected = new TreeMap<>();
        for (String entry : table.split(" ")) {
            expected.put(
                    entry.substring(0, entry.indexOf(':')), Integer.valueOf(entry.substring(entry.indexOf(':') + 1)));
        }
        assertThat(counts(sphere(frequency), expected.keySet().toArray(String[]::new)))
                .isEqualTo(expected);
    }

    @Test
    void chordFactors_closedForms_areMet() {
        // Edge of the icosahedron in the unit sphere, 4/√(10 + 2√5); the longer strut of 2v, (√5 − 1)/2: elementary.
        assertThat(sphere(1).chordFactor(0)).isCloseTo(4 / StrictMath.sqrt(10 + 2 * StrictMath.sqrt(5)), within(1e-15));
        assertThat(IntStream.range(0, 120)
                        .mapToDouble(sphere(2)::chordFactor)
                        .max()
                        .orElseThrow())
                .isCloseTo((StrictMath.sqrt(5) - 1) / 2, within(1e-15));
    }

    // A. Šiber, Icosadeltahedral Geometry of Geodesic Domes, Fullerenes and Viruses: A Tutorial on the T-Number,
    // Symmetry 12(4):556, 2020: V = 10T + 2, E = 30T, F = 20T, with T = n² in class I.
    @ParameterizedTest
    @CsvSource({"1", "2", "3", "4", "5", "6", "7", "8", "16", "64"})
    void counts_wholeSphere_followTheTNumber(int frequency) {
        int t = frequency * frequency;
        Dome dome = sphere(frequency);
        assertThat(dome.nodeCount()).isEqualTo(10 * t + 2);
        assertThat(dome.memberCount()).isEqualTo(30 * t);
        assertThat(Faces.of(dome).count()).isEqualTo(20 * t);
    }

    // Wikipedia, "Geodesic grid", table "Parameters", column f_s: volume of the polyhedron of a grid of s divisions
    // over the volume of the sphere. The printed digits of s = 2 to 5 are good to about 5e-8 only, hence 1e-7.
    @ParameterizedTest
    @CsvSource({
        "1, 0.6054613829125257, 1e-15",
        "2, 0.87345315725681, 1e-7",
        "3, 0.9409379804627, 1e-7",
        "4, 0.9661513525328, 1e-7",
        "5, 0.97814560438654, 1e-7"
    })
    void volume_wholeSphere_isThePublishedRatio(int frequency, double ratio, double tolerance) {
        double sphere = 4 * StrictMath.PI / 3;
        assertThat(Faces.of(sphere(frequency)).volume() / sphere).isCloseTo(ratio, within(tolerance));
    }

    // Hubs and struts of the usual portions: figures commonly printed, from memory; 3v 5/9 with 30, 55 and 80 struts of
    // its three lengths. Faces: Euler, V − E + F = 1.
    @ParameterizedTest
    @CsvSource({
        "1, 2, 11, 25, 15",
        "2, 3, 26, 65, 40",
        "3, 4, 46, 120, 75",
        "3, 5, 61, 165, 105",
        "4, 6, 91, 250, 160",
        "6, 9, 196, 555, 360",
        "8, 12, 341, 980, 640"
    })
    void counts_portion_areTheUsualOnes(int frequency, int rows, int hubs, int struts, int faces) {
        Dome dome = dome(frequency, rows);
        assertThat(dome.nodeCount()).isEqualTo(hubs);
        assertThat(dome.memberCount()).isEqualTo(struts);
        assertThat(Faces.of(dome).count()).isEqualTo(faces).isEqualTo(1 - hubs + struts);
    }

    @Test
    void chordFactors_usualPortions_haveTheUsualCounts() {
        assertThat(counts(dome(2, 3), ".54653", ".61803")).isEqualTo(Map.of(".54653", 30, ".61803", 35));
        assertThat(counts(dome(3, 4), ".34862", ".40355", ".41241"))
                .isEqualTo(Map.of(".34862", 30, ".40355", 40, ".41241", 50));
        assertThat(counts(dome(3, 5), ".34862", ".40355", ".41241"))
                .isEqualTo(Map.of(".34862", 30, ".40355", 55, ".41241", 80));
        assertThat(counts(dome(4, 6), ".25318", ".29453", ".29524", ".29859", ".31287", ".32492"))
                .isEqualTo(Map.of(".25318", 30, ".29453", 60, ".29524", 30, ".29859", 30, ".31287", 70, ".32492", 30));
    }

    // Computed from the rule by another program: heights of the lowest and the highest foot node, four decimals.
    @ParameterizedTest
    @CsvSource({"3, 4, 0.1716, 0.1876", "3, 5, -0.1876, -0.1716", "4, 7, -0.2764, -0.2511", "4, 6, 0.0000, 0.0000"})
    void foot_natural_isFlatOnlyAtTheEquator(int frequency, int rows, double least, double most) {
        Dome dome = dome(frequency, rows);
        double highest = IntStream.range(dome.firstOfTier(rows), dome.nodeCount())
                .mapToDouble(dome::z)
                .max()
                .orElseThrow();
        assertThat(dome.lowestZ()).isCloseTo(least, within(0.5e-4));
        assertThat(highest).isCloseTo(most, within(0.5e-4));
    }
}
