package collarwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.dome.DomeSettings;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.strut.SizeRule;
import collarwright.testing.Jobs;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StockLengthsTest {

    private static Optional<Finding> found(double radius) {
        Plan plan = Planner.plan(
                Jobs.windbreak()
                        .dome(new DomeSettings(3, 5))
                        .size(new SizeRule.Radius(radius))
                        .job(),
                List.of());
        List<Finding> found = Plans.found(plan, Code.STRUT_BEYOND_STOCK);
        assertThat(found).hasSizeLessThan(2);
        assertThat(found).allMatch(f -> f.level() == Level.STOP);
        return found.stream().findFirst();
    }

    // The longest chord factor of frequency 3 is 0.41241 and the shortest 0.34862 (J. D. Clinton, Advanced Structural
    // Geometry Studies, Part I, NASA CR-1734, 1971, table of class I, method 1, from memory): sticks of 3 m give all
    // struts of 7 m radius, at 8 m only the shortest type, and at 10 m none.
    @Test
    void struts_longerThanAnyStick_areStops() {
        assertThat(Jobs.windbreak().job().strut().stock().lengths()).containsExactly(3000.0);
        assertThat(found(7_000)).isEmpty();
        assertThat(found(8_000))
                .hasValueSatisfying(f -> assertThat(f.where().text()).isEqualTo("strut SC and 1 more"));
        assertThat(found(10_000))
                .hasValueSatisfying(f -> assertThat(f.where().text()).isEqualTo("strut SC and 2 more"));
    }
}
