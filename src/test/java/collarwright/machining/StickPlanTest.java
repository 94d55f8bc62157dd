package collarwright.machining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.collar.CollarBody;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.geometry.Interval;
import collarwright.testing.Seeds;
import collarwright.tooling.Pattern;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class StickPlanTest {

    private static final Pattern PATTERN = RotarySamples.sixWay(RotarySamples.HOLE_SAW_44);
    private static final StickRoom.Span MIDDLE = new StickRoom.Span(5, 75);

    private static RotarySettings settings(double width, List<Double> lengths, double maxStick, double maxX) {
        Machine machine = RotarySamples.machine(false);
        Machine.Rotary r = machine.rotary();
        Machine.Travel t = machine.travel();
        machine = RotarySamples.with(
                RotarySamples.with(machine, new Machine.Rotary(true, true, 3600, 720, 2, 100, 20, 15, 3, 10, maxStick)),
                new Machine.Travel(
                        -10, maxX, -60, 400, t.rapidMmPerMin(), t.maxFeedMmPerMin(), t.accelerationMmPerS2(), 10));
        assertThat(r.maxStick()).isEqualTo(1200);
        Workpiece work = new Workpiece("pipe", new CollarBody(80, Interval.of(5), width), 0, true, lengths);
        return RotarySamples.settings(machine, ProgramUnits.MM, RotarySamples.cutting("pvc", 60), work);
    }

    private static StickPlan plan(RotarySettings settings, int made) {
        return StickPlan.plan(
                new StickRoom(settings, Map.of("CA", MIDDLE)),
                List.of(new PatternRun(PATTERN, made)),
                StickRule.MIXED,
                patterns -> 0);
    }

    // By hand: chuck 100 + clearance 20 + trim 10 = 130; 1200 - 130 = 1070 = 12 x 80 + 11 x 3 + 77 left over.
    @Test
    void plan_fullSticksAndARemainder_countsEveryCollar() {
        StickPlan plan = plan(settings(80, List.of(3000.0), 1200, 2000), 25);

        assertThat(plan.findings()).isEmpty();
        assertThat(plan.loads()).extracting(Load::collars).containsExactly(12, 1);
        assertThat(plan.loads()).extracting(Load::runs).containsExactly(2, 1);
        assertThat(plan.loads()).extracting(Load::stickLength).containsExactly(1123.0, 210.0);
        assertThat(plan.loads()).extracting(Load::sticksPerLength).containsExactly(2, 14);
        assertThat(plan.loads().get(0).edge(12)).isEqualTo(20 + 11 * 83);
        assertThat(plan.count()).isEqualTo(new StickCount(3, 3, 2, 2));
    }

    // 27 on sticks of 12 take three; three equal sticks of 9 take one set of programs.
    @Test
    void plan_countThatDividesEvenly_isOneLayout() {
        StickPlan plan = plan(settings(80, List.of(3000.0), 1200, 2000), 27);

        assertThat(plan.loads()).singleElement().satisfies(load -> {
            assertThat(load.collars()).isEqualTo(9);
            assertThat(load.runs()).isEqualTo(3);
        });
        assertThat(plan.count()).isEqualTo(new StickCount(3, 3, 1, 1));
    }

    @Test
    void plan_countThatFillsSticks_hasNoRemainder() {
        assertThat(plan(settings(80, List.of(), 1200, 2000), 24).loads())
                .extracting(Load::id, Load::collars, Load::runs, Load::fromLength)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("LA", 12, 2, java.util.Optional.empty()));
    }

    @Test
    void plan_fewerThanAStickHolds_isOneShortLoad() {
        StickPlan plan = plan(settings(80, List.of(400.0, 3000.0), 1200, 2000), 3);

        assertThat(plan.loads()).singleElement().satisfies(load -> {
            assertThat(load.collars()).isEqualTo(3);
            assertThat(load.runs()).isEqualTo(1);
            assertThat(load.fromLength()).contains(400.0);
        });
    }

    @Test
    void plan_travelEndsBeforeTheStick_laysFewerCollars() {
        // Last hole of collar n at 20 + 83 (n - 1) + 75: 500 holds 5 (427), not 6 (510).
        assertThat(plan(settings(80, List.of(), 1200, 500), 5).loads())
                .extracting(Load::collars)
                .containsExactly(5);
        assertThat(plan(settings(80, List.of(), 1200, 500), 6).loads())
                .extracting(Load::collars)
                .containsExactly(3);
    }

    @Test
    void plan_kerfWiderThanTheJawClearance_getsItsRoom() {
        RotarySettings base = settings(80, List.of(), 1200, 2000);
        Machine wide = RotarySamples.with(
                base.machine(), new Machine.Rotary(true, true, 3600, 720, 2, 100, 1, 15, 3, 10, 1200));

        assertThat(plan(RotarySamples.on(base, wide), 1).loads())
                .extracting(Load::firstEdge)
                .containsExactly(3.0);
    }

    @Test
    void plan_stockTooShort_saysWhatWouldDo() {
        assertThat(plan(settings(80, List.of(150.0, 200.0), 1200, 2000), 3).findings())
                .singleElement()
                .isEqualTo(Finding.stop(
                        Code.STICK_TOO_SHORT,
                        new collarwright.finding.Where.Part("stick"),
                        "a stick of 210.00 mm (8.268 in) or more: chuck 100.00 mm (3.937 in), jaw clearance 20.00 mm"
                                + " (0.787 in), one collar 80.00 mm (3.150 in), end trim 10.00 mm (0.394 in)",
                        "the longest stock length: 200.00 mm (7.874 in)",
                        "buy the pipe in longer lengths",
                        "make the collars narrower, or hold less pipe in the chuck"));
    }

    @Test
    void plan_machineTooShort_saysSo() {
        assertThat(plan(settings(80, List.of(3000.0), 205, 2000), 3).findings())
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.code()).isEqualTo(Code.STICK_TOO_SHORT);
                    assertThat(f.found()).isEqualTo("the longest stick that mill-plain takes: 205.00 mm (8.071 in)");
                });
    }

    @Test
    void plan_travelShorterThanOneCollar_isAStop() {
        assertThat(plan(settings(80, List.of(3000.0), 1200, 90), 3).findings())
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.code()).isEqualTo(Code.MACHINE_TRAVEL);
                    assertThat(f.found()).isEqualTo("X 25.00 mm (0.984 in) to 95.00 mm (3.740 in)");
                });
    }

    /** The work must not grow with order, stick or travel: counted one by one, this would take years. */
    @Test
    @Timeout(10)
    void plan_endlessStickAndOrder_stopsAt500Collars() {
        StickPlan plan = plan(settings(1e-3, List.of(), 1e300, 1e300), Integer.MAX_VALUE);

        assertThat(plan.findings()).isEmpty();
        assertThat(plan.loads()).extracting(Load::collars).containsExactly(500, Integer.MAX_VALUE % 500);
        assertThat(plan.loads()).extracting(Load::runs).containsExactly(Integer.MAX_VALUE / 500, 1);
    }

    @Test
    @Timeout(10)
    void plan_collarsThatFillTheStickToTheEnd_areAllLaid() {
        // Chuck 100, clearance 20, trim 10: n collars of 0.1 with kerfs of 3 need 130 + 0.1 n + 3 (n - 1) exactly.
        for (int n = 1; n <= 500; n++) {
            double exact = 130 + n * 0.1 + (n - 1) * 3;
            for (double stick : new double[] {exact, exact + 3.1 - 1e-6}) {
                assertThat(plan(settings(0.1, List.of(), stick, 9e9), n).count().sticks())
                        .isEqualTo(1);
                assertThat(plan(settings(0.1, List.of(), stick, 9e9), StrictMath.min(n, 499) + 1)
                                .count()
                                .sticks())
                        .isEqualTo(n == 500 ? 1 : 2);
            }
        }
    }

    /** Against counting: no plan with fewer sticks exists, every collar is made, and each stick adds up. */
    @Test
    void plan_drawnCases_useTheFewestSticksAndAddUp() {
        Seeds.each(500, draw -> {
            List<Double> lengths = draw.numbers(draw.whole(0, 3), 300, 4000);
            RotarySettings settings =
                    settings(draw.between(30, 120), lengths, draw.between(300, 2000), draw.between(300, 2000));
            int made = draw.whole(1, 60);
            StickPlan plan = plan(settings, made);
            assertThat(plan.findings()).isEmpty();

            double width = settings.work().body().width();
            int most = 0;
            for (double length : lengths.isEmpty() ? List.of(9e9) : lengths) {
                int fits = 0;
                while (100 + 20 + 10 + (fits + 1) * width + fits * 3
                                <= Math.min(length, settings.machine().rotary().maxStick())
                        && 20 + fits * (width + 3) + 75
                                <= settings.machine().travel().maxX()) {
                    fits++;
                }
                most = Math.max(most, fits);
            }
            int sticks = plan.loads().stream().mapToInt(Load::runs).sum();
            assertThat(sticks).isEqualTo((made + most - 1) / most);
            assertThat(plan.loads().stream()
                            .mapToInt(l -> l.collars() * l.runs())
                            .sum())
                    .isEqualTo(made);
            for (Load load : plan.loads()) {
                double end = load.edge(load.collars()) + width + 10 + 100;
                assertThat(load.stickLength()).isCloseTo(end, within(1e-9));
                assertThat(load.fromLength().orElse(9e9)).isGreaterThanOrEqualTo(load.stickLength() - 1e-6);
            }
        });
    }
}
