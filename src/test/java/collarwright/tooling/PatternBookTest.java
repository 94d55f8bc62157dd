package collarwright.tooling;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.collar.CollarBody;
import collarwright.dome.Dome;
import collarwright.dome.DomeSettings;
import collarwright.geometry.Interval;
import collarwright.hub.HubStrut;
import collarwright.hub.HubType;
import collarwright.hub.Hubs;
import collarwright.testing.Jobs;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PatternBookTest {
    private static final CollarBody BODY = new CollarBody(80.05, new Interval(6.2, 6.4, 6.6), 80);
    private static final Interval STRUT = new Interval(39.9, 40.05, 40.2);

    private static Hubs hubs(int frequency, int rows) {
        return Hubs.of(Dome.of(new DomeSettings(frequency, rows)));
    }

    private static PatternBook book(Hubs hubs, CollarBody body, double... saws) {
        List<Cutter> cutters = Arrays.stream(saws).mapToObj(Jobs::saw).toList();
        return PatternBook.of(hubs, body, STRUT, new DrillingSettings(cutters, Fit.REACH, 0));
    }

    @Test
    void of_dome_givesEveryHubTypeItsHoles() {
        Hubs hubs = hubs(3, 5);
        PatternBook book = book(hubs, BODY, 42, 42.5, 43);
        assertThat(book.patterns()).hasSameSizeAs(hubs.types());
        for (int i = 0; i < hubs.types().size(); i++) {
            HubType type = hubs.types().get(i);
            Pattern pattern = book.patterns().get(i);
            assertThat(pattern.id()).isEqualTo("C" + "ABCDEF".charAt(i));
            assertThat(pattern.count()).isEqualTo(type.count());
            assertThat(pattern.holes())
                    .extracting(Hole::azimuth)
                    .isEqualTo(type.struts().stream().map(HubStrut::azimuth).toList());
            for (int hole = 0; hole < type.struts().size(); hole++) {
                HoleSize size =
                        book.sizes().get(type.struts().get(hole).strutType()).size();
                assertThat(pattern.holes().get(hole))
                        .isEqualTo(size.at(hole + 1, type.struts().get(hole).azimuth()));
                assertThat(pattern.holes().get(hole).neededLean())
                        .isEqualTo(type.struts().get(hole).axialAngle());
            }
        }
    }

    @Test
    void holesByCutter_dome_countsEveryStrutEnd() {
        Hubs hubs = hubs(3, 5);
        Map<String, Integer> counts = book(hubs, BODY, 41, 42, 42.5, 43).holesByCutter();
        // Strut type SA has 30 struts and the smallest angle, the other two 55 and 80.
        assertThat(counts).isEqualTo(Map.of("HS-42", 2 * 30, "HS-42.5", 2 * (55 + 80)));
        assertThat(List.copyOf(counts.keySet())).isSorted();
    }

    @Test
    void of_oneHoleWithoutACutter_hasNoPatterns() {
        PatternBook book = book(hubs(3, 5), BODY, 42);
        assertThat(book.patterns()).isEmpty();
        assertThat(book.sizes()).hasSize(3);
        assertThat(book.sizes().get(0).size().cutter()).isPresent();
        assertThat(book.sizes().get(2).size().cutter()).isEmpty();
        assertThat(book.sizes().get(2).place()).isEqualTo("hole for strut SC (axial angle 11.90°)");
        assertThat(book.holesByCutter()).isEmpty();
    }

    @Test
    void fingerprint_sameDrillingInAnotherDome_isTheSame() {
        // The five-way hub of 2v and of 3v, drilled with one saw.
        String two = book(hubs(2, 3), BODY, 45).patterns().get(0).fingerprint();
        assertThat(book(hubs(3, 5), BODY, 45).patterns().get(0).fingerprint()).isEqualTo(two);
        assertThat(book(hubs(3, 9), BODY, 45, 60).patterns().get(0).fingerprint())
                .isEqualTo(two);
    }

    @Test
    void fingerprint_otherDrilling_isAnother() {
        Hubs hubs = hubs(3, 5);
        List<Pattern> patterns = book(hubs, BODY, 44).patterns();
        assertThat(patterns).extracting(Pattern::fingerprint).doesNotHaveDuplicates();
        String first = patterns.get(0).fingerprint();
        CollarBody wider = new CollarBody(80.05, BODY.wall(), 81);
        CollarBody larger = new CollarBody(80.06, BODY.wall(), 80);
        CollarBody thicker = new CollarBody(80.05, new Interval(6.2, 6.5, 6.6), 80);
        for (PatternBook other : List.of(
                book(hubs, BODY, 44.5), book(hubs, wider, 44), book(hubs, larger, 44), book(hubs, thicker, 44))) {
            assertThat(other.patterns().get(0).fingerprint()).isNotEqualTo(first);
        }
    }
}
