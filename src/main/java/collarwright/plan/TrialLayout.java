package collarwright.plan;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.geometry.Interval;
import collarwright.hub.Hubs;
import collarwright.job.Job;
import collarwright.machining.PatternRun;
import collarwright.machining.RotaryJob;
import collarwright.machining.RotaryPlan;
import collarwright.machining.RotarySettings;
import collarwright.rehearsal.Rehearsal;
import collarwright.tooling.Cutter;
import collarwright.tooling.Pattern;
import collarwright.tooling.PatternBook;
import collarwright.trial.Ladder;
import collarwright.trial.LadderNeed;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A test collar for a job: cut from the same pipe, drilled with the same cutters.
 *
 * @param job the job
 * @param ladder the sizes and why
 * @param pattern the drilling, called {@value #ID}
 * @param rotary its programs, rehearsed; none for a press
 * @param findings warnings and notes
 */
public record TrialLayout(Job job, Ladder ladder, Pattern pattern, RotaryPlan rotary, List<Finding> findings) {

    /** The pattern's id. */
    public static final String ID = "TRIAL";

    /** Keeps the findings. */
    public TrialLayout {
        findings = List.copyOf(findings);
    }

    /**
     * Lays out the trial piece of a job.
     *
     * @param job the job
     * @return the trial piece
     * @throws JobException JOB_CONFLICT if the job counts on a trial piece already; TRIAL_LADDER if fewer than three holes
     *     are possible; what stops the machine or the frame
     */
    public static TrialLayout of(Job job) {
        untried(job).ifPresent(f -> {
            throw new JobException(List.of(f));
        });
        RotarySettings settings = Production.settings(job);
        Framing frame = Framing.of(job);
        LadderNeed need = new LadderNeed(
                job.hub().body(),
                job.strut().stock().od(),
                largestLean(frame.hubs()),
                job.limits().webWarn());
        List<Cutter> passing = Ladder.usable(need, job.drilling().cutters());
        List<Finding> refused = new ArrayList<>();
        List<Cutter> able =
                passing.stream().filter(c -> drills(settings, need, c, refused)).toList();
        Ladder ladder =
                Ladder.of(need, able, own(job, frame)).orElseThrow(() -> new JobException(tooFew(need, able, refused)));
        Pattern pattern = ladder.pattern(ID);
        List<PatternRun> runs = List.of(new PatternRun(pattern, 1));
        RotaryPlan rotary = RotaryJob.plan(settings, runs);
        List<Finding> findings = new ArrayList<>(rotary.findings());
        findings.addAll(Rehearsal.rehearse(rotary, settings, rotary.programs().isEmpty() ? List.of() : runs));
        findings.sort(Comparator.comparing(Finding::level));
        if (findings.stream().anyMatch(f -> f.level() == Level.STOP)) {
            throw new JobException(findings);
        }
        return new TrialLayout(job, ladder, pattern, rotary, findings);
    }

    /**
     * Refuses a job whose cutters are counted with the oversize of a trial piece: a new one starts from their given sizes.
     *
     * @param job the job
     * @return a stop, or empty
     */
    public static Optional<Finding> untried(Job job) {
        return job.hub()
                .trialPiece()
                .map(piece -> Finding.stop(
                        Code.JOB_CONFLICT,
                        new Where.Part("hub.trial-piece"),
                        "a job without a trial piece, while one is laid out or fitted",
                        "trial-piece = \"" + piece.name() + "\"",
                        "put # before that line, and take it away again when the new trial piece is fitted"));
    }

    // The job's cutters, the one with the most holes first; none where the strut does not pass the bore.
    private static List<Cutter> own(Job job, Framing frame) {
        Interval strut = job.strut().stock().od();
        if (strut.max() >= 2 * job.hub().body().leastInnerRadius()) {
            return List.of();
        }
        Map<String, Integer> holes = PatternBook.of(frame.hubs(), frame.struts(), job.hub(), strut, job.drilling())
                .holesByCutter();
        return job.drilling().cutters().stream()
                .filter(c -> holes.containsKey(c.id()))
                .sorted(Comparator.comparing((Cutter c) -> -holes.getOrDefault(c.id(), 0))
                        .thenComparing(Cutter::id))
                .toList();
    }

    private static double largestLean(Hubs hubs) {
        return hubs.strutShapes().stream()
                .mapToDouble(s -> StrictMath.max(StrictMath.abs(s.axialA()), StrictMath.abs(s.axialB())))
                .max()
                .orElse(0);
    }

    // Tried alone, so that a cutter that is too short or too slow for this pipe and machine is passed over.
    private static boolean drills(RotarySettings settings, LadderNeed need, Cutter cutter, List<Finding> refused) {
        Pattern alone = new Ladder(need, List.of(cutter)).pattern(ID);
        List<Finding> stops = RotaryJob.plan(settings, List.of(new PatternRun(alone, 1))).findings().stream()
                .filter(f -> f.level() == Level.STOP)
                .toList();
        stops.stream().filter(f -> !refused.contains(f)).forEach(refused::add);
        return stops.isEmpty();
    }

    private static List<Finding> tooFew(LadderNeed need, List<Cutter> able, List<Finding> refused) {
        List<Finding> findings = new ArrayList<>();
        double strut = need.strut().max();
        double bore = 2 * need.body().leastInnerRadius();
        findings.add(Finding.stop(
                Code.TRIAL_LADDER,
                new Where.Part("test collar"),
                "at least " + Ladder.FEWEST + " sizes of cutters that the strut of " + Decimals.trimmed(strut, 2)
                        + " mm passes, with room for their webs in a bore of " + Decimals.trimmed(bore, 2) + " mm",
                able.isEmpty()
                        ? "none"
                        : able.size() + ": " + able.stream().map(Cutter::marked).collect(Collectors.joining(", ")),
                "add sizes from " + Decimals.trimmed(StrictMath.ceil(strut * 2 + 0.5) / 2, 1)
                        + " mm up to the rack, half a millimetre apart if you can",
                "or measure on a wider pipe of the same wall"));
        // Why the others cannot be used.
        findings.addAll(refused);
        return findings;
    }
}
