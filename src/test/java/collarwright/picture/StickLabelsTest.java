package collarwright.picture;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.machining.Load;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Labels of a stick of many collars: who is named, and that nothing crosses a label. */
class StickLabelsTest {

    private static List<StickLabels.Placed> labels(List<String> patterns, double each) {
        Load load = new Load("LA", patterns, 1, 0, each, 1000, Optional.empty(), 1);
        return StickLabels.of(
                load, i -> 20 + (i - 1) * each, i -> 20 + i * each - 0.2, 18, 22 + patterns.size() * each);
    }

    private static List<String> texts(List<StickLabels.Placed> labels) {
        return labels.stream().map(StickLabels.Placed::text).toList();
    }

    @Test
    void seventeenCollars_everyOneIsNamed() {
        List<String> patterns = new ArrayList<>();
        for (int i = 0; i < 17; i++) {
            patterns.add(i < 9 ? "CA" : "CB");
        }
        List<StickLabels.Placed> labels = labels(patterns, 8);
        assertThat(labels).hasSize(17);
        assertThat(texts(labels)).contains("1 CA", "9 CA", "10 CB", "17 CB");
    }

    @Test
    void fortyCollars_stretchesOfAPatternShareALabel() {
        List<String> patterns = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            patterns.add(i < 12 ? "CA" : i < 30 ? "CB" : "CC");
        }
        assertThat(texts(labels(patterns, 3.5))).containsExactlyInAnyOrder("1-12 CA", "13-30 CB", "31-40 CC");
    }

    /** Drawn sticks: labels of a row keep apart, and no line to a label goes through one above it. */
    @Test
    void labels_neverCross_firstAndLastAlwaysThere() {
        Random random = new Random(20261129);
        for (int trial = 0; trial < 200; trial++) {
            int count = 9 + random.nextInt(50);
            double each = Math.min(10.9, 150.0 / count);
            List<String> patterns = new ArrayList<>();
            int kind = 0;
            for (int i = 0; i < count; i++) {
                kind += random.nextInt(4) == 0 ? 1 : 0;
                patterns.add("C" + "ABCDEFGHJKLMNPRTUVWXY".charAt(Math.min(20, kind)));
            }
            List<StickLabels.Placed> labels = labels(patterns, each);
            Set<Integer> named = new HashSet<>();
            for (StickLabels.Placed a : labels) {
                String[] ends = a.text().split(" ")[0].split("-");
                named.add(Integer.parseInt(ends[0]));
                named.add(Integer.parseInt(ends[ends.length - 1]));
                for (StickLabels.Placed b : labels) {
                    boolean apart = Math.abs(a.x() - b.x()) > a.half() + b.half();
                    assertThat(a.equals(b) || a.row() != b.row() || apart)
                            .as(a + " " + b)
                            .isTrue();
                    boolean under = a.row() > b.row() && Math.abs(a.tip() - b.x()) <= b.half();
                    assertThat(under).as(a + " under " + b).isFalse();
                }
            }
            assertThat(named).as("trial " + trial).contains(1, count);
        }
    }
}
