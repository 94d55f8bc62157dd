package collarwright.trial;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.geometry.Interval;
import collarwright.job.BundledProfiles;
import collarwright.job.Job;
import collarwright.job.JobReader;
import collarwright.job.Profiles;
import collarwright.plan.TrialLayout;
import collarwright.testing.ProjectFolder;
import collarwright.testing.Seeds;
import collarwright.units.Decimals;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * How often the 95 % limits hold the truth, over seeds 1 to 1000: written to {@code target/trial-coverage.csv}. Three
 * readings in each of six holes, off by 0.3°. By chance alone 1,000 draws of 95 % stay within 93 and 97 % (2.9 standard
 * deviations).
 */
class TrialCoverageTest {

    private static final int SEEDS = 1000;
    private static final double NOISE = StrictMath.toRadians(0.3);

    /** A truth, and what came of a thousand tries to find it. */
    private static final class Tally {
        private final double bearing;
        private final double oversize;
        private final TrialFit.Known known;
        private final double scatter;
        private final TrialCollar collar;
        private final Function<Seeds, List<TrialRow>> readings;
        private final int[] counts = new int[2];
        private final double[] sums = new double[3];

        Tally(double bearing, double oversize, TrialFit.Known known) {
            this(bearing, oversize, known, 0);
        }

        Tally(double bearing, double oversize, TrialFit.Known known, double scatter) {
            this(
                    bearing,
                    oversize,
                    known,
                    scatter,
                    Ladders.COLLAR,
                    seeds -> Ladders.read(Ladders.COLLAR, new Guess(bearing, oversize), NOISE, scatter, seeds));
        }

        Tally(
                double bearing,
                double oversize,
                TrialFit.Known known,
                double scatter,
                TrialCollar collar,
                Function<Seeds, List<TrialRow>> readings) {
            this.collar = collar;
            this.readings = readings;
            this.scatter = scatter;
            this.bearing = bearing;
            this.oversize = oversize;
            this.known = known;
        }

        void run() {
            Seeds.each(SEEDS, seeds -> {
                TrialFit fit = TrialFit.of(collar, readings.apply(seeds), known);
                count(0, fit.bearing().value(), bearing);
                count(1, fit.oversize().value(), oversize);
                sums[2] += fit.correlation();
            });
        }

        private void count(int which, Interval limits, double truth) {
            counts[which] += limits.min() <= truth && truth <= limits.max() ? 1 : 0;
            sums[which] += (limits.max() - limits.min()) / 2;
        }

        double share(int which) {
            return 100.0 * counts[which] / SEEDS;
        }

        String line() {
            return String.join(
                    ",",
                    Decimals.trimmed(bearing, 3),
                    Decimals.trimmed(oversize, 3),
                    Decimals.trimmed(scatter, 3),
                    known.oversize().isPresent() ? "oversize" : known.bearing().isPresent() ? "bearing wall" : "none",
                    Integer.toString(SEEDS),
                    Decimals.fixed(share(0), 1),
                    Decimals.fixed(share(1), 1),
                    Decimals.fixed(sums[0] / SEEDS, 3),
                    Decimals.fixed(sums[1] / SEEDS, 3),
                    Decimals.fixed(sums[2] / SEEDS, 3));
        }
    }

    // The ladder that the program lays out for a sample, read with another solver than the fit's.
    private static List<Tally> sample(String name, Guess truth) throws IOException {
        Path file = ProjectFolder.top().resolve("output-samples/" + name + "/job.toml");
        Job job = JobReader.read(file.toString(), Files.readString(file), Profiles.load(List.of(new BundledProfiles())))
                .job()
                .orElseThrow();
        TrialLayout layout = TrialLayout.of(job);
        TrialCollar collar = new TrialCollar(
                job.hub().body().outerRadius(), job.hub().body().wall().nominal());
        double strut = job.strut().stock().od().nominal();
        List<Double> sizes = layout.ladder().cutters().stream()
                .map(c -> c.asDrilled().nominal())
                .toList();
        DrawnReadings drawn = new DrawnReadings(collar, strut, sizes, truth);
        return Stream.of(0.0, 0.02, 0.05, 0.1)
                .map(scatter -> new Tally(
                        truth.bearing(),
                        truth.oversize(),
                        TrialFit.Known.NOTHING,
                        scatter,
                        collar,
                        seeds -> drawn.draw(3, NOISE, scatter, seeds)))
                .toList();
    }

    private static Tally tally(double bearing, double oversize) {
        return new Tally(bearing, oversize, TrialFit.Known.NOTHING);
    }

    @Test
    void limits_overAThousandSeeds_holdTheTruthAsOftenAsTheySay() throws IOException {
        List<Tally> tallies = new ArrayList<>(List.of(
                tally(1.2, 0.15), tally(2, 0.1), tally(2.5, -0.05), tally(0.2, 0.15), tally(0, 0.15), tally(4.7, 0.1)));
        tallies.add(new Tally(1.2, 0, new TrialFit.Known(Optional.empty(), Optional.of(0.0))));
        tallies.add(new Tally(1.2, 0.15, new TrialFit.Known(Optional.of(1.2), Optional.empty())));
        List<String> lines = new ArrayList<>(
                List.of(
                        "bearing wall mm,oversize mm,hole scatter mm,known,seeds,bearing wall held %,"
                                + "oversize held %,mean half width of bearing wall mm,mean half width of oversize mm,mean correlation"));
        // Holes that differ by chance, as they do: in tight ones that is far more of an angle than in wide ones.
        tallies.add(new Tally(1.2, 0.15, TrialFit.Known.NOTHING, 0.02));
        tallies.add(new Tally(1.2, 0.15, TrialFit.Known.NOTHING, 0.05));
        tallies.addAll(sample("orchard-net", new Guess(3, 0.1)));
        tallies.addAll(sample("cloche", new Guess(1.2, 0.15)));
        for (Tally tally : tallies) {
            tally.run();
            lines.add(tally.line());
        }
        Files.createDirectories(Path.of("target"));
        Files.write(Path.of("target/trial-coverage.csv"), lines);

        for (Tally tally : tallies) {
            boolean nearBound = tally.bearing < 0.5 || tally.bearing > 4;
            // Where holes do not differ the limits are wider than they need be, and say so.
            double most = nearBound ? 99.5 : tally.scatter > 0 ? 97 : 98.5;
            // A wide scatter has to be guessed from few holes: 94 % there, less what 1,000 draws are off by chance.
            double least = tally.scatter > 0.03 ? 92 : 93;
            if (tally.known.bearing().isEmpty()) {
                assertThat(tally.share(0)).as(tally.line()).isBetween(least, most);
            }
            if (tally.known.oversize().isEmpty()) {
                assertThat(tally.share(1)).as(tally.line()).isBetween(least, most);
            }
        }
    }
}
