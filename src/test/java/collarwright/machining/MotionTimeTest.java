package collarwright.machining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.testing.Seeds;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class MotionTimeTest {

    /** Another method: the axis is driven in steps of 10 µs, as fast as it may be so that it still stops at the end. */
    private static double simulated(double way, double ratePerMin, double acceleration) {
        double step = 1e-5;
        double top = ratePerMin / 60;
        double at = 0;
        double speed = 0;
        long steps = 0;
        while (at < way - 1e-9) {
            double room = way - at;
            double brake = Math.sqrt(2 * acceleration * room);
            speed = Math.min(Math.min(speed + acceleration * step, top), brake);
            at += Math.max(speed * step, 1e-10);
            steps++;
        }
        return steps * step;
    }

    @Test
    void seconds_drawnMoves_agreeWithAStepByStepDrive() {
        Seeds.each(40, draw -> {
            double way = draw.between(0.5, 400);
            double rate = draw.between(200, 6000);
            double acceleration = draw.between(50, 1000);

            double seconds = MotionTime.seconds(way, rate, acceleration);

            assertThat(seconds).isCloseTo(simulated(way, rate, acceleration), within(0.01 * seconds));
        });
    }

    @Test
    void program_wholeFile_agreesWithAStepByStepDrive() {
        RotarySettings settings = RotarySamples.metric(true);
        RotaryPlan plan =
                RotaryJob.plan(settings, List.of(new PatternRun(RotarySamples.sixWay(RotarySamples.HOLE_SAW_44), 2)));
        ProgramFile plain = RotaryJob.plan(
                        RotarySamples.metric(false),
                        List.of(new PatternRun(RotarySamples.sixWay(RotarySamples.HOLE_SAW_44), 2)))
                .programs()
                .get(2);

        double seconds = 0;
        double[] at = {Double.NaN, Double.NaN, Double.NaN, Double.NaN};
        for (String line : plain.text().split("\n", -1)) {
            if (line.startsWith("G4 P")) {
                seconds += Double.parseDouble(line.substring(4));
            } else if (line.startsWith("G0 ") || line.startsWith("G1 ")) {
                String[] words = line.split(" ", -1);
                int axis = "XYZA".indexOf(words[1].charAt(0));
                double to = Double.parseDouble(words[1].substring(1));
                double way = Double.isNaN(at[axis]) ? 0 : Math.abs(to - at[axis]);
                at[axis] = to;
                double rate = axis == 3 ? 3600 : words.length > 2 ? Double.parseDouble(words[2].substring(1)) : 3000;
                seconds += simulated(way, rate, axis == 3 ? 720 : 400);
            }
        }
        assertThat(plain.name()).isEqualTo("LA-2-HS-44.ngc");
        assertThat(plain.seconds()).isCloseTo(seconds, within(0.01 * seconds));
        assertThat(plan.programs().get(2).seconds()).isEqualTo(plain.seconds());
    }

    @Test
    void leastRotation_leavesOutTheWidestGap() {
        assertThat(MotionTime.leastRotation(List.of(0.0, 72.0, 144.0, 216.0, 288.0)))
                .isEqualTo(288);
        assertThat(MotionTime.leastRotation(List.of(10.0, 20.0, 350.0))).isEqualTo(30);
        assertThat(MotionTime.leastRotation(List.of(5.0))).isZero();
    }

    @Test
    void effort_toAndFro_turnsAndTravelsNoMoreThanItMust() {
        RotaryPlan plan = RotaryJob.plan(
                RotarySamples.metric(false),
                List.of(new PatternRun(RotarySamples.sixWay(RotarySamples.HOLE_SAW_44), 12)));
        List<ProgramFile.Effort> efforts = new ArrayList<>();
        plan.programs().stream().filter(p -> p.task().isPresent()).forEach(p -> efforts.add(p.effort()));

        // One way round: the last angle and the approach; X goes along the stick once for each angle.
        assertThat(efforts.get(2).rotationDegrees()).isCloseTo(301.717 + 2, within(1e-9));
        assertThat(efforts.get(2).travel()).isCloseTo(6 * 11 * 83, within(1e-9));
        assertThat(efforts).allSatisfy(e -> assertThat(e.travel()).isCloseTo(e.leastTravel(), within(1e-9)));
    }

    /**
     * By hand: 27 collars are two sticks of 12 and one of 3, 83 apart; on each stick the marks at 0° and 4.294° (6 / 80.05
     * rad), then the holes up to 301.717° whose widest gap is 121.717 − 58.283; 2° of take-up for each file.
     */
    @Test
    void summary_countsEveryRunOfEveryStick() {
        RotaryPlan plan = RotaryJob.plan(
                RotarySamples.metric(false),
                List.of(new PatternRun(RotarySamples.sixWay(RotarySamples.HOLE_SAW_44), 27)));
        RotaryPlan.Summary summary = plan.summary();

        assertThat(summary.sticks()).isEqualTo(3);
        assertThat(summary.programRuns()).isEqualTo(6);
        ProgramFile.Effort effort = summary.effort();
        assertThat(effort.rotationDegrees()).isCloseTo(3 * (4.294 + 2 + 301.717 + 2), within(1e-9));
        assertThat(effort.leastRotationDegrees()).isCloseTo(3 * (4.294 + 360 - (121.717 - 58.283)), within(1e-9));
        assertThat(effort.travel()).isCloseTo((2 + 6) * (2 * 11 + 2) * 83, within(1e-9));
        assertThat(effort.leastTravel()).isCloseTo(effort.travel(), within(1e-9));
        assertThat(summary.travelOverLeast()).isCloseTo(1, within(1e-12));
        assertThat(summary.rotationOverLeast()).isCloseTo(310.011 / 300.86, within(1e-9));
    }

    /** Against the texts: what each printed program turns and travels, run for every stick of its load. */
    @Test
    void summary_agreesWithThePrintedPrograms() {
        RotaryPlan plan = RotaryJob.plan(
                RotarySamples.metric(false),
                List.of(
                        new PatternRun(RotarySamples.sixWay(RotarySamples.HOLE_SAW_44), 27),
                        new PatternRun(RotarySamples.pattern("CB", RotarySamples.twist(20), 0, 100, 250), 14)));
        double turn = 0;
        double travel = 0;
        double seconds = 0;
        int runs = 0;
        for (ProgramFile file : plan.programs()) {
            if (file.purpose() == ProgramFile.Purpose.CUT) {
                int times = file.task().orElseThrow().load().runs();
                turn += times * way(file.text(), "G0 A");
                travel += times * way(file.text(), "G0 X");
                seconds += times * file.seconds();
                runs += times;
            }
        }

        assertThat(plan.summary().programRuns()).isEqualTo(runs);
        assertThat(plan.summary().effort().rotationDegrees()).isCloseTo(turn, within(1e-6));
        assertThat(plan.summary().effort().travel()).isCloseTo(travel, within(1e-6));
        assertThat(plan.summary().effort().seconds()).isCloseTo(seconds, within(1e-6));
        assertThat(new RotaryPlan(List.of(), List.of(), List.of()).summary())
                .isEqualTo(new RotaryPlan.Summary(0, 0, 0, 0, ProgramFile.Effort.NONE));
    }

    private static double way(String text, String words) {
        double sum = 0;
        double last = Double.NaN;
        for (String line : text.split("\n", -1)) {
            if (line.startsWith(words)) {
                double at = Double.parseDouble(line.substring(words.length()));
                sum += Double.isNaN(last) ? 0 : Math.abs(at - last);
                last = at;
            }
        }
        return sum;
    }
}
