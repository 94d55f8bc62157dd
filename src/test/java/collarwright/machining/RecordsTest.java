package collarwright.machining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import collarwright.collar.CollarBody;
import collarwright.geometry.Interval;
import collarwright.stock.Material;
import collarwright.stock.RoundStock;
import collarwright.testing.Seeds;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RecordsTest {

    private static final CollarBody BODY = RotarySamples.pvc160().body();

    private static void refused(Runnable making) {
        assertThatThrownBy(making::run).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void values_outOfRange_areRefused() {
        refused(() -> new Workpiece("pipe", BODY, -1, true, List.of()));
        refused(() -> new Workpiece("pipe", BODY, BODY.outerRadius(), true, List.of()));
        refused(() -> new Workpiece("pipe", BODY, 0, true, List.of(0.0)));
        refused(() -> new MarkTool(RotarySamples.HOLE_SAW_44, 0));
        refused(() -> new PatternRun(RotarySamples.sixWay(RotarySamples.HOLE_SAW_44), 0));
        refused(() -> new Cut(-1, 1, 1, List.of(), ""));
        refused(() -> new Cut(1, 0, 1, List.of(), ""));
        refused(() -> new Heights(10, 9, 20));
        refused(() -> new Heights(10, 12, 11));
    }

    static List<Double> awkward() {
        return Seeds.AWKWARD;
    }

    @ParameterizedTest
    @MethodSource("awkward")
    void values_awkward_areRefusedOrHarmless(double value) {
        boolean usable = value >= 0 && Double.isFinite(value);
        RotarySettings s = RotarySamples.metric(false);
        if (usable) {
            assertThat(new RotarySettings(s.machine(), s.units(), s.cutting(), s.work(), s.label(), value, s.mark())
                            .overtravel())
                    .isEqualTo(value);
        } else {
            refused(() ->
                    new RotarySettings(s.machine(), s.units(), s.cutting(), s.work(), s.label(), value, s.mark()));
        }
        if (!(value > 0)) {
            refused(() -> new MarkTool(RotarySamples.TWIST_1_1_8, value));
            refused(() -> new Cut(100, value, 1, List.of(), ""));
        }
    }

    @Test
    void file_withAnUnsafeName_isRefused() {
        ProgramFile good = RotaryJob.plan(
                        RotarySamples.metric(false),
                        List.of(new PatternRun(RotarySamples.sixWay(RotarySamples.HOLE_SAW_44), 1)))
                .programs()
                .get(0);
        for (String name : List.of("", "a b.ngc", "../x.ngc", "x/y.ngc", "é.ngc", "x".repeat(41))) {
            refused(() -> new ProgramFile(name, good.purpose(), good.task(), 0, good.effort(), good.text()));
        }
        ProgramTask task = good.task().orElseThrow();
        refused(() -> new ProgramTask(task.load(), task.cutter(), task.cut(), task.heights(), List.of()));
        refused(() ->
                new ProgramTask(task.load(), RotarySamples.HOLE_SAW_44, task.cut(), task.heights(), task.operations()));
    }

    @Test
    void workpiece_ofStock_isMeasuredOnlyIfBothSizesWere() {
        Material pvc = new Material("pvc", "PVC", true, 1400);
        RoundStock stock = new RoundStock(
                "x",
                "PVC pipe",
                pvc,
                Interval.of(160.1),
                Optional.of(Interval.of(5)),
                true,
                false,
                0.6,
                List.of(3000.0, 1000.0),
                "s");

        assertThat(Workpiece.of(stock, BODY))
                .isEqualTo(new Workpiece("PVC pipe", BODY, 0.6, false, List.of(1000.0, 3000.0)));
    }
}
