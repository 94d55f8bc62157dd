package collarwright.bench;

import collarwright.collar.LeanEnvelope;
import collarwright.collar.SwungContact;
import collarwright.dome.Base;
import collarwright.dome.Breakdown;
import collarwright.dome.Dome;
import collarwright.hub.Hubs;
import collarwright.job.Job;
import collarwright.plan.Plan;
import collarwright.plan.Planner;
import collarwright.tooling.PatternBook;
import com.sun.management.OperatingSystemMXBean;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryType;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One side of a race: reads what to do from standard input, a word a line, does it once and answers with a line: wall time
 * and processor time of the whole process, both in milliseconds.
 *
 * <p>{@code patterns}: from nothing to the patterns of the largest sphere. {@code plan}: the same with struts, checks and
 * findings. {@code tilt}: a million tilt limits, half of them off the mid-plane. {@code envelope}: a hundred envelopes. {@code whole B C}: the plan of the whole
 * sphere of a breakdown, with its hubs counted behind the times. Besides, {@code heap} answers with the most heap that was
 * in use at once, in MiB.
 */
final class Rounds {

    private static final int LIMITS = 1_000_000;
    private static final int ENVELOPES = 100;

    private final Job job = SphereJob.job();
    private final TiltCases cases = TiltCases.of(10_000, 5_000);
    private final Map<String, Runnable> rounds =
            Map.of("patterns", this::patterns, "plan", this::plan, "tilt", this::tilt, "envelope", this::envelope);

    private Rounds() {}

    /**
     * Does what standard input asks for, until it ends.
     *
     * @param args none
     * @throws IOException if standard input cannot be read
     */
    @SuppressWarnings("SystemOut") // the answers
    public static void main(String[] args) throws IOException {
        Rounds all = new Rounds();
        BufferedReader asked = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        for (String word = asked.readLine(); word != null; word = asked.readLine()) {
            System.out.println(word.equals("heap") ? Double.toString(heap()) : all.timed(word));
        }
    }

    private String timed(String word) {
        return word.startsWith("whole ") ? whole(word.split(" ", -1)) : timed(word, rounds.get(word));
    }

    private static String whole(String[] words) {
        Breakdown breakdown = new Breakdown(Integer.parseInt(words[1]), Integer.parseInt(words[2]));
        Job job = SphereJob.whole(breakdown);
        int hubs = Base.ICOSAHEDRON.nodesPerT() * breakdown.t() + 2;
        return timed("whole", () -> {
                    Plan plan = Planner.plan(job, List.of());
                    if (plan.hubs().dome().nodeCount() != hubs
                            || plan.book().patterns().isEmpty()) {
                        throw new IllegalStateException("not the whole sphere of " + breakdown);
                    }
                })
                + " " + hubs;
    }

    private static String timed(String word, @Nullable Runnable round) {
        if (round == null) {
            throw new IllegalArgumentException("no such round: " + word);
        }
        long processor = processorNanoseconds();
        long start = System.nanoTime();
        round.run();
        long wall = System.nanoTime() - start;
        return wall / 1e6 + " " + (processorNanoseconds() - processor) / 1e6;
    }

    private void patterns() {
        Hubs hubs = Hubs.of(Dome.of(job.dome()));
        check(hubs, SphereJob.patterns(hubs, job));
    }

    private void plan() {
        Plan plan = Planner.plan(job, List.of());
        check(plan.hubs(), plan.book());
    }

    // A class I icosahedron of frequency n has 10n² + 2 nodes and 30n² members.
    private static void check(Hubs hubs, PatternBook book) {
        int square = SphereJob.FREQUENCY * SphereJob.FREQUENCY;
        int collars = book.patterns().stream().mapToInt(p -> p.count()).sum();
        if (collars != 10 * square + 2 || hubs.dome().memberCount() != 30 * square) {
            throw new IllegalStateException(collars + " collars, " + hubs.dome().memberCount() + " struts");
        }
    }

    private void tilt() {
        double sum = 0;
        for (int i = 0; i < LIMITS; i++) {
            sum += cases.tiltLimit(i % cases.count());
        }
        if (!(sum > 0)) {
            throw new IllegalStateException("limits add up to " + sum);
        }
    }

    private void envelope() {
        double sum = 0;
        for (int i = 0; i < ENVELOPES; i++) {
            sum += LeanEnvelope.round(40.2, 42 + i * 0.01, new SwungContact.Wall(74.9, 80))
                    .lean(9);
        }
        if (!(sum > 0)) {
            throw new IllegalStateException("limits add up to " + sum);
        }
    }

    private static long processorNanoseconds() {
        return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
    }

    private static double heap() {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .mapToDouble(pool -> pool.getPeakUsage().getUsed() / 1048576.0)
                .sum();
    }
}
