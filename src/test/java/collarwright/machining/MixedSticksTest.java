package collarwright.machining;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.testing.Seeds;
import collarwright.tooling.Pattern;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Orders of several patterns on sticks. */
class MixedSticksTest {

    private static final Pattern CA = RotarySamples.sixWay(RotarySamples.HOLE_SAW_44);
    private static final Pattern CB = RotarySamples.pattern("CB", RotarySamples.TWIST_1_1_8, 0, 120, 240);
    private static final Pattern CC = RotarySamples.pattern("CC", RotarySamples.HOLE_SAW_44, 0, 58.2827, 200);

    private static List<PatternRun> runs(int a, int b) {
        return List.of(new PatternRun(CA, a), new PatternRun(CB, b));
    }

    // By hand: sticks of 12; 20 + 4 = 24 are two sticks, 10 and 2 on each.
    @Test
    void mixed_isAKitStick_withEachCuttersProgramOnce() {
        RotaryPlan plan = RotaryJob.plan(RotarySamples.metric(false), runs(20, 4));

        assertThat(plan.count()).isEqualTo(new StickCount(2, 2, 1, 1));
        assertThat(plan.setups()).singleElement().satisfies(s -> {
            assertThat(s.load().laid()).isEqualTo("1-10 CA, 11-12 CB");
            assertThat(s.load().runs()).isEqualTo(2);
            assertThat(s.steps())
                    .extracting(SetupSheet.Step::file)
                    .containsExactly("LA-1-mark.ngc", "LA-2-TW-1-1_8in.ngc", "LA-3-HS-44.ngc");
        });
        assertThat(plan.programs().get(0).text())
                .contains("(STICK LA, FILE 1 OF 3)", "(COLLARS 1-10 CA, 11-12 CB)", "run it for 2 sticks");
    }

    @Test
    void onePattern_keepsThemApart_andSaysWhatMixingWouldSave() {
        RotaryPlan plan = RotaryJob.plan(RotarySamples.metric(false), runs(20, 4), StickRule.ONE_PATTERN);

        assertThat(plan.count()).isEqualTo(new StickCount(3, 2, 2, 2));
        assertThat(plan.count().fewestSticks()).isFalse();
        assertThat(plan.setups())
                .extracting(s -> s.load().runs() + " x " + s.load().laid())
                .containsExactly("2 x 1-10 CA", "1 x 1-4 CB");
    }

    @Test
    void holesAtNearlyOneAngle_areMadeInOneSweep() {
        // 58.28253 and 58.2827 are 0.00017 apart, less than half a step: one A for both.
        RotaryPlan plan =
                RotaryJob.plan(RotarySamples.metric(false), List.of(new PatternRun(CA, 6), new PatternRun(CC, 6)));
        List<Operation> holes = plan.programs().get(2).task().orElseThrow().operations();

        assertThat(holes)
                .filteredOn(o -> Math.abs(o.place().angleDegrees() - 58.283) < 0.01)
                .hasSize(12)
                .extracting(o -> o.place().angleDegrees())
                .containsOnly(58.283);
        double last = -1;
        for (Operation hole : holes) {
            assertThat(hole.place().angleDegrees()).isGreaterThanOrEqualTo(last);
            last = hole.place().angleDegrees();
        }
    }

    /** Every way to sweep: each angle's holes outward or inward. */
    @Test
    void sweeps_againstEveryChoiceOfWays_travelLeast() {
        Seeds.each(40, draw -> {
            List<PatternRun> order = new ArrayList<>();
            for (int p = 0; p < draw.whole(1, 3); p++) {
                double[] angles = new double[draw.whole(1, 3)];
                for (int i = 1; i < angles.length; i++) {
                    angles[i] = angles[i - 1] + draw.between(5, 100);
                }
                order.add(new PatternRun(
                        RotarySamples.pattern("C" + (char) ('A' + p), RotarySamples.HOLE_SAW_44, angles),
                        draw.whole(1, 4)));
            }
            RotaryPlan plan = RotaryJob.plan(RotarySamples.metric(false), order);
            for (ProgramFile file : plan.programs()) {
                if (file.purpose() == ProgramFile.Purpose.CUT) {
                    assertThat(file.effort().travel())
                            .isCloseTo(
                                    least(file.task().orElseThrow().operations()),
                                    org.assertj.core.api.Assertions.within(1e-6));
                }
            }
        });
    }

    private static double least(List<Operation> operations) {
        Map<Double, double[]> ends = new LinkedHashMap<>();
        for (Operation o : operations) {
            double[] e = ends.computeIfAbsent(o.place().angleDegrees(), a -> new double[] {1e9, -1e9});
            e[0] = Math.min(e[0], o.place().x());
            e[1] = Math.max(e[1], o.place().x());
        }
        List<double[]> all = new ArrayList<>(ends.values());
        double least = Double.MAX_VALUE;
        for (int ways = 0; ways < 1 << all.size(); ways++) {
            double way = 0;
            for (int i = 0; i < all.size(); i++) {
                int from = ways >> i & 1;
                way += all.get(i)[1] - all.get(i)[0];
                way += i == 0 ? 0 : Math.abs(all.get(i)[from] - all.get(i - 1)[1 - (ways >> (i - 1) & 1)]);
            }
            least = Math.min(least, way);
        }
        return least;
    }

    /** Patterns that come in another order take as many sticks and layouts; each is made as often as asked for. */
    @Test
    void drawnOrders_permuted_takeAsManySticks() {
        Seeds.each(120, draw -> {
            Map<String, StickRoom.Span> spans = new HashMap<>();
            List<PatternRun> order = new ArrayList<>();
            for (int p = 0; p < draw.whole(1, 12); p++) {
                String id = collarwright.units.Ids.letters('C', p);
                order.add(new PatternRun(
                        RotarySamples.pattern(id, RotarySamples.HOLE_SAW_44, 0), draw.whole(1, draw.coin() ? 5 : 250)));
                spans.put(id, new StickRoom.Span(5, draw.between(30, 75)));
            }
            RotarySettings settings = RotarySamples.on(
                    RotarySamples.metric(false),
                    RotarySamples.with(
                            RotarySamples.machine(false),
                            new Machine.Travel(-10, draw.between(100, 900), -60, 400, 3000, 1500, 400, 10)));
            StickRoom room = new StickRoom(settings, spans);
            StickPlan plan = StickPlan.plan(room, order, StickRule.MIXED, s -> s.size());
            List<PatternRun> other = new ArrayList<>(order);
            Collections.reverse(other);
            StickPlan reversed = StickPlan.plan(room, other, StickRule.MIXED, s -> s.size());

            assertThat(plan.findings()).isEmpty();
            assertThat(reversed.count()).isEqualTo(plan.count());
            assertThat(plan.count().sticks())
                    .isEqualTo(plan.count().leastSticks())
                    .isEqualTo(fewest(room, order));
            checkPlaces(plan, room, order);
            assertThat(StickPlan.plan(room, order, StickRule.MIXED, s -> s.size()))
                    .isEqualTo(plan);
            StickPlan apart = StickPlan.plan(room, order, StickRule.ONE_PATTERN, s -> s.size());
            checkPlaces(apart, room, order);
            assertThat(apart.loads()).noneMatch(Load::mixed);
            assertThat(apart.count().leastSticks()).isEqualTo(plan.count().sticks());
        });
    }

    private static void checkPlaces(StickPlan plan, StickRoom room, List<PatternRun> order) {
        Map<String, Integer> made = new HashMap<>();
        for (Load load : plan.loads()) {
            for (int collar = 1; collar <= load.collars(); collar++) {
                made.merge(load.pattern(collar), load.runs(), Integer::sum);
                double x = load.edge(collar)
                        + room.spans().get(load.pattern(collar)).most();
                assertThat(x)
                        .isLessThanOrEqualTo(room.settings().machine().travel().maxX());
            }
            assertThat(load.stickLength()).isLessThanOrEqualTo(1200);
        }
        Map<String, Integer> wanted = new HashMap<>();
        order.forEach(r -> wanted.put(r.pattern().id(), r.made()));
        assertThat(made).isEqualTo(wanted);
    }

    /** Counted up: so many sticks hold the order when the far places, filled with what reaches them, take the rest. */
    private static long fewest(StickRoom room, List<PatternRun> order) {
        int near = order.stream()
                .mapToInt(r -> room.capacity(r.pattern().id()))
                .min()
                .orElseThrow();
        int total = order.stream().mapToInt(PatternRun::made).sum();
        int far = order.stream()
                .filter(r -> room.capacity(r.pattern().id()) > near)
                .mapToInt(PatternRun::made)
                .sum();
        long sticks = 1;
        while (sticks * near + Math.min(sticks, far) < total) {
            sticks++;
        }
        return sticks;
    }
}
