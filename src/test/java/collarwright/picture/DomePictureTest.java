package collarwright.picture;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.plan.Plan;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class DomePictureTest {

    private static List<String> words(Picture picture) {
        return Bitmaps.paint(picture, Bitmaps.blank(picture)).stream()
                .map(Written::text)
                .toList();
    }

    @Test
    void sizes_areThoseOfTheNodes() {
        Plan plan = TrialPlans.windbreak();
        var dome = plan.hubs().dome();
        double floor = IntStream.range(0, dome.nodeCount())
                .filter(n -> dome.tierOf(n) == 5)
                .mapToDouble(n -> 2600 * Math.hypot(dome.x(n), dome.y(n)))
                .max()
                .orElseThrow();
        double lowest =
                IntStream.range(0, dome.nodeCount()).mapToDouble(dome::z).min().orElseThrow();
        assertThat(words(new DomePicture(plan, 180)))
                .contains("floor Ø " + Math.round(2 * floor) + " mm", Math.round(2600 * (1 - lowest)) + " mm");
    }

    @Test
    void key_hasEveryStrutTypeWithItsCountAndLength() {
        // 3v 5/9: 30, 55 and 80 struts of chord factors 0.34862, 0.40355, 0.41241 (H. Kenner, Geodesic Math and How to
        // Use
        // It, 1976, from memory).
        assertThat(words(new DomePicture(TrialPlans.windbreak(), 180)))
                .contains("SA", "SB", "SC")
                .anyMatch(w -> w.startsWith("30 × "))
                .anyMatch(w -> w.startsWith("55 × "))
                .anyMatch(w -> w.startsWith("80 × "));
    }

    @Test
    void wholeSphere_hasNoFloor() {
        Picture picture = new DomePicture(TrialPlans.dome(2, 6), 180);
        assertThat(words(picture)).noneMatch(w -> w.contains("floor")).contains("5200 mm");
        assertThat(picture.describe()).contains("diameter 5200 mm");
    }
}
