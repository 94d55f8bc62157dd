package collarwright.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.job.Job;
import collarwright.machining.BoreSamples;
import collarwright.machining.Machine;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramFile;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotarySettings;
import collarwright.plan.Production;
import collarwright.testing.DomeJobs;
import collarwright.testing.ProjectFolder;
import collarwright.testing.Seeds;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Running times against a machine that is driven from millisecond to millisecond: velocity grows by the acceleration, holds
 * at the rate, and falls so that the axis stands at the end. No closed form is used. What was found goes to
 * {@code target/motion-times.csv}.
 */
class MotionSimulationTest {

    private static final double STEP = 0.001;
    private static final double MOST_OFF = 0.05;

    @Test
    void programs_ofSamplesAndProfiles_runAsLongAsADrivenMachine() throws IOException {
        List<String> rows = new ArrayList<>(List.of("machine,program,planned s,replayed s,driven s,off"));
        double worst = 0;
        for (String sample : List.of("cloche", "seedling-house")) {
            Job job = DomeJobs.read(ProjectFolder.top()
                    .resolve("output-samples")
                    .resolve(sample)
                    .resolve("job.toml"));
            RotarySettings settings = Production.settings(job);
            for (ProgramFile file : Production.of(job, List.of()).rotary().programs()) {
                worst = StrictMath.max(worst, row(file, settings, rows));
            }
        }
        for (Machine machine : ProfileJobs.machines()) {
            int programs = 0;
            for (int seed = 1; seed <= 6; seed++) {
                ProfileJobs job = ProfileJobs.draw(Seeds.of(seed), machine);
                for (ProgramFile file : job.programs()) {
                    worst = StrictMath.max(worst, row(file, job.settings(), rows));
                    programs++;
                }
            }
            assertThat(programs).as("programs drawn for " + machine.name()).isGreaterThan(5);
        }
        Files.write(ProjectFolder.target().resolve("motion-times.csv"), rows);
        assertThat(rows).hasSizeGreaterThan(60);
        assertThat(worst).as("share that the worst program is off").isLessThan(MOST_OFF);
    }

    @Test
    void boredHoles_runAsLongAsADrivenMachine() {
        RotarySettings settings = BoreSamples.settings(false, false);
        PatternRun run = new PatternRun(BoreSamples.mixed(BoreSamples.MILL_12, 14.6, 47.32), 2);
        List<String> rows = new ArrayList<>();
        double worst = 0;
        for (ProgramFile file : RotaryJob.plan(settings, List.of(run)).programs()) {
            worst = StrictMath.max(worst, row(file, settings, rows));
        }
        assertThat(rows).hasSize(7);
        assertThat(worst).as("share that the worst program is off").isLessThan(MOST_OFF);
    }

    private static double row(ProgramFile file, RotarySettings settings, List<String> rows) {
        double driven = driven(file.text(), settings);
        double replayed = Replay.of(file, settings).seconds();
        assertThat(replayed).as(file.name()).isCloseTo(file.seconds(), within(1e-4 * file.seconds() + 1e-6));
        // The direction test of a pipe that a hand turns moves nothing.
        double off = driven > 0 ? StrictMath.abs(file.seconds() - driven) / driven : file.seconds();
        rows.add(settings.machine().name() + "," + file.name() + "," + file.seconds() + "," + replayed + "," + driven
                + "," + off);
        return off;
    }

    private static double driven(String text, RotarySettings settings) {
        Machine machine = settings.machine();
        double seconds = 0;
        Pose at = Pose.UNKNOWN;
        for (Event event : Interpreter.run(
                        BlockReader.read(text).blocks(), Pose.UNKNOWN, Interpreter.Dialect.of(settings))
                .events()) {
            if (event instanceof Event.Dwell dwell) {
                seconds += machine.post().layout().dwellMilliseconds() ? dwell.p() / 1000 : dwell.p();
            } else if (event instanceof Event.Stroke s) {
                double rate =
                        s.feed() ? s.drive().feedMmPerMin() : machine.travel().rapidMmPerMin();
                double along = s.path() instanceof Swept.Arc
                        ? chords(s)
                        : Math.max(way(at.x(), s.to().x()), way(at.z(), s.to().z()));
                seconds += drive(along, rate / 60, machine.travel().accelerationMmPerS2());
                // A pipe that a hand turns has no motor.
                boolean motor = !machine.rotary().form().byHand();
                seconds += !motor
                        ? 0
                        : drive(
                                way(at.a(), s.to().a()),
                                machine.rotary().rapidDegreesPerMin() / 60,
                                machine.rotary().accelerationDegreesPerS2());
                at = s.to();
            }
        }
        return seconds;
    }

    /** The length of an arc as a thousand straight pieces. */
    private static double chords(Event.Stroke s) {
        double length = 0;
        Pose last = s.from();
        for (int i = 1; i <= 1000; i++) {
            Pose next = s.path().at(s.from(), s.to(), i / 1000.0);
            length += Math.sqrt(Math.pow(next.x() - last.x(), 2)
                    + Math.pow(next.y() - last.y(), 2)
                    + Math.pow(next.z() - last.z(), 2));
            last = next;
        }
        return length;
    }

    private static double way(double from, double to) {
        return Double.isNaN(to - from) ? 0 : Math.abs(to - from);
    }

    /** Speeds up while the way left is more than it takes to stop from the next speed. */
    private static double drive(double way, double rate, double acceleration) {
        double left = way;
        double speed = 0;
        int steps = 0;
        while (left > 1e-9) {
            double faster = Math.min(rate, speed + acceleration * STEP);
            if (stops(faster, acceleration) + faster * STEP <= left) {
                speed = faster;
            } else if (stops(speed, acceleration) + speed * STEP > left) {
                speed = Math.max(speed - acceleration * STEP, 0.01 * acceleration * STEP);
            }
            left -= Math.max(speed, Math.min(left / STEP, Math.min(rate, 0.5 * acceleration * STEP))) * STEP;
            steps++;
        }
        return steps * STEP;
    }

    /** The way to a stand, step by step: v + (v − a·dt) + … */
    private static double stops(double speed, double acceleration) {
        double way = 0;
        for (double v = speed; v > 0; v -= acceleration * STEP) {
            way += v * STEP;
        }
        return way;
    }
}
