package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.machining.Operation;
import collarwright.machining.ProgramFile;
import collarwright.machining.RotarySettings;
import collarwright.units.Decimals;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A tube cutter's program that somebody edited: what was moved, left out or added is named, once, at its place. */
class TubeComparisonTest {

    private static final RotarySettings SETTINGS = TubeSamples.settings(TubeSamples.plain(), false);
    private static final ProgramFile GOOD = TubeSamples.cut(TubeSamples.plan(SETTINGS));
    private static final RotarySettings MARKED =
            TubeSamples.settings(TubeSamples.with(TubeSamples.plain(), TubeSamples.laser()), false);
    private static final ProgramFile SPOTS = TubeSamples.cut(TubeSamples.plan(MARKED));

    private static List<Finding> compared(String text) {
        assertThat(text).isNotEqualTo(GOOD.text());
        return Comparison.of(GOOD, text, "edited.nc", SETTINGS).findings();
    }

    private static Operation planned(String title) {
        return GOOD.task().orElseThrow().operations().stream()
                .filter(o -> NamedDifferences.name(o).equals(title))
                .findFirst()
                .orElseThrow();
    }

    /** The lines of one cut, from its comment to the next. */
    private static String block(String text, String title) {
        int start = text.indexOf("(" + title + ")");
        int next = text.indexOf("(collar", start + 1);
        assertThat(start).as(title).isPositive();
        return text.substring(start, next < 0 ? text.indexOf("\nM2") + 1 : next);
    }

    private static String changed(String block, char letter, DoubleUnaryOperator by) {
        return Pattern.compile(letter + "(-?[0-9.]+)")
                .matcher(block)
                .replaceAll(m -> letter + Decimals.fixed(by.applyAsDouble(Double.parseDouble(m.group(1))), 3));
    }

    private static String edited(String title, char letter, double by) {
        String block = block(GOOD.text(), title);
        return GOOD.text().replace(block, changed(block, letter, v -> v + by));
    }

    @Test
    void untouched_isTheSame() {
        assertThat(Comparison.of(GOOD, GOOD.text(), "good.nc", SETTINGS).findings())
                .isEmpty();
        assertThat(Comparison.of(SPOTS, SPOTS.text(), "good.nc", MARKED).findings())
                .isEmpty();
    }

    @Test
    void holeMovedAlong_isNamedWithWhereAndHowFar() {
        for (double by : new double[] {0.4, -1.25}) {
            assertThat(compared(edited("collar 2, hole 2", 'X', by)))
                    .singleElement()
                    .satisfies(f -> {
                        assertThat(f.level()).isEqualTo(Level.STOP);
                        assertThat(f.expected())
                                .isEqualTo("collar 2, hole 2 at X "
                                        + Decimals.fixed(
                                                planned("collar 2, hole 2")
                                                        .place()
                                                        .x(),
                                                3) + " mm");
                        assertThat(f.found())
                                .isEqualTo("collar 2, hole 2: X "
                                        + (by > 0 ? "0.4 mm toward the free end" : "1.25 mm toward the chuck"));
                    });
        }
    }

    // TOP faces the chuck and A turns as RS274 has it: more A is clockwise from above; 1.5 degrees of a circle by hand.
    @Test
    void holeTurned_isNamedWithSenseAndArc() {
        double arc = Math.PI * 2 * SETTINGS.work().body().outerRadius() * 1.5 / 360;
        assertThat(compared(edited("collar 1, hole 3", 'A', 1.5)))
                .singleElement()
                .satisfies(f -> assertThat(f.found())
                        .startsWith("collar 1, hole 3: turned 1.5° too far clockwise as seen from above TOP, ")
                        .contains(", " + Decimals.fixed(arc, 3) + " mm on the outside"));
    }

    @Test
    void holeLeftOut_isNamedWithItsPlace() {
        String block = block(GOOD.text(), "collar 3, hole 2");
        Operation hole = planned("collar 3, hole 2");
        assertThat(compared(GOOD.text().replace(block, ""))).singleElement().satisfies(f -> {
            assertThat(f.found()).isEqualTo("collar 3, hole 2: missing");
            assertThat(f.expected())
                    .isEqualTo("collar 3, hole 2 at X "
                            + Decimals.fixed(hole.place().x(), 3) + " mm, A "
                            + Decimals.fixed(hole.place().angleDegrees(), 3));
        });
    }

    @Test
    void holeAdded_isToldWithItsPlace_atItsLine() {
        String block = block(GOOD.text(), "collar 2, hole 2");
        String more = changed(block, 'A', a -> a + 25);
        Operation hole = planned("collar 2, hole 2");
        String text = GOOD.text().replace(block, block + more);
        assertThat(compared(text)).singleElement().satisfies(f -> {
            assertThat(f.expected()).isEqualTo("only what the plan has");
            assertThat(f.found())
                    .startsWith(
                            "a hole: added at X " + Decimals.fixed(hole.place().x(), 2))
                    .contains(", A " + Decimals.fixed(hole.place().angleDegrees() + 25, 1));
            int line = (int) text.substring(0, text.indexOf(more)).lines().count();
            assertThat(f.where())
                    .isInstanceOfSatisfying(
                            Where.Text.class,
                            t -> assertThat(t.line())
                                    .isBetween(line, line + (int) more.lines().count()));
        });
    }

    /** One corner alone is no moved hole: the outline's own rules say what is wrong, and of which hole. */
    @Test
    void cornerMoved_namesTheHole() {
        String block = block(GOOD.text(), "collar 1, hole 2");
        List<String> lines = block.lines().toList();
        int corner = lines.size() / 2;
        String broken = block.replace(lines.get(corner), changed(lines.get(corner), 'X', x -> x + 2));
        assertThat(compared(GOOD.text().replace(block, broken)))
                .isNotEmpty()
                .filteredOn(f -> !f.expected().contains("within 2 %"))
                .allSatisfy(f -> assertThat(f.expected()).startsWith("collar 1, hole 2: "));
    }

    @Test
    void partingMoved_isNamed() {
        assertThat(compared(edited("collar 2, part collar 2 off", 'X', -0.5)))
                .anySatisfy(
                        f -> assertThat(f.found()).isEqualTo("collar 2, part collar 2 off: X 0.5 mm toward the chuck"));
    }

    @Test
    void spotMovedOrLeftOut_isNamed() {
        String block = block(SPOTS.text(), "collar 2, TOP dimple");
        String turned = SPOTS.text().replace(block, changed(block, 'X', x -> x + 1));
        assertThat(Comparison.of(SPOTS, turned, "edited.nc", MARKED).findings())
                .singleElement()
                .satisfies(f -> assertThat(f.found()).isEqualTo("collar 2, TOP dimple: X 1 mm toward the free end"));
        assertThat(Comparison.of(SPOTS, SPOTS.text().replace(block, ""), "edited.nc", MARKED)
                        .findings())
                .singleElement()
                .satisfies(f -> assertThat(f.found()).isEqualTo("collar 2, TOP dimple: missing"));
    }
}
