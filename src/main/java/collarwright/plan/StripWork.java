package collarwright.plan;

import collarwright.cutting.SheetPacker;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.job.Job;
import collarwright.job.StripSettings;
import collarwright.machining.CutSettings;
import collarwright.machining.FlatJob;
import collarwright.machining.FlatPlan;
import collarwright.machining.FlatSettings;
import collarwright.machining.JobLabel;
import collarwright.machining.MarkTool;
import collarwright.rehearsal.FlatRehearsal;
import collarwright.tooling.FlatStrip;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Collars that are cut from flat strip, drilled flat and rolled.
 *
 * @param needs what to pull from the store
 * @param strips one for each pattern; none where collars are cut from pipe, or where the plan is stopped
 * @param holes what each hole does after rolling, by pattern and hole
 * @param programs drilling programs; none without a flat machine
 * @param findings of all of them
 */
public record StripWork(
        List<StripNeed> needs,
        List<FlatStrip> strips,
        List<RolledHole> holes,
        FlatPlan programs,
        List<Finding> findings) {

    /** Collars from pipe. */
    public static final StripWork NONE = new StripWork(List.of(), List.of(), List.of(), FlatPlan.NONE, List.of());

    /** Keeps the lists. */
    public StripWork {
        needs = List.copyOf(needs);
        strips = List.copyOf(strips);
        holes = List.copyOf(holes);
        findings = List.copyOf(findings);
    }

    /**
     * Plans the strips of a job.
     *
     * @param plan the plan
     * @return strips, limits after rolling, programs, findings
     */
    static StripWork of(Plan plan) {
        Optional<StripSettings> settings = plan.job().shop().strip();
        if (settings.isEmpty() || plan.book().patterns().isEmpty()) {
            return NONE;
        }
        Job job = plan.job();
        List<Pattern> patterns = plan.book().patterns();
        List<FlatStrip> strips = strips(plan, settings.get());
        List<Finding> findings = new ArrayList<>();
        strips.forEach(s -> ends(s, settings.get().kerf(), findings));
        strips.stream().findFirst().flatMap(s -> tooLarge(s, settings.get())).ifPresent(findings::add);
        List<RolledHole> holes = holes(job, patterns);
        holes.forEach(h -> shortOfReach(h, findings));
        FlatPlan programs = FlatPlan.NONE;
        Optional<FlatSettings> flat = flat(job);
        if (flat.isPresent()) {
            programs = FlatJob.plan(flat.get(), strips);
            findings.addAll(programs.findings());
            findings.addAll(FlatRehearsal.rehearse(
                    programs, flat.get(), strips, programs.programs().isEmpty() ? List.of() : patterns));
        }
        String material = job.hub().collar().material().title();
        return new StripWork(StripNeed.of(material, strips), strips, holes, programs, findings);
    }

    /** One strip for each pattern, without its checks. */
    static List<FlatStrip> strips(Plan plan, StripSettings settings) {
        Job job = plan.job();
        return plan.book().patterns().stream()
                .map(p -> FlatStrip.of(p, job.order().made(p.count()), job.hub().body(), settings.joint()))
                .toList();
    }

    /**
     * Tells whether a strip goes on no sheet.
     *
     * @return true after SHEET_TOO_SMALL
     */
    public boolean tooLarge() {
        return findings.stream().anyMatch(f -> f.code() == Code.SHEET_TOO_SMALL);
    }

    // All strips are of one length and width.
    private static Optional<Finding> tooLarge(FlatStrip strip, StripSettings settings) {
        SheetPacker.Rectangle box = FlatSizes.strip(strip, settings);
        double length = box.length();
        double width = box.width();
        Optional<SheetPacker.Stock> sheet = settings.nest().filter(s -> !s.holds(box));
        return sheet.map(s -> Finding.stop(
                Code.SHEET_TOO_SMALL,
                new Where.Part("flat strips"),
                "a sheet that holds " + Decimals.fixed(length + 2 * s.margin(), 2) + " mm x "
                        + Decimals.fixed(width + 2 * s.margin(), 2) + " mm: strip, lead-in, two margins",
                Decimals.fixed(s.length(), 2) + " mm x " + Decimals.fixed(s.width(), 2) + " mm",
                "take a larger sheet: sheet-length, sheet-width under [strip.nest]",
                "or a smaller margin"));
    }

    /**
     * Returns what drilling strips has to know beside them.
     *
     * @param job the job
     * @return empty without a flat machine
     */
    public static Optional<FlatSettings> flat(Job job) {
        return job.shop()
                .strip()
                .flatMap(StripSettings::machine)
                .map(machine -> new FlatSettings(
                        new CutSettings(
                                machine, job.shop().programUnits(), job.shop().cutting()),
                        new JobLabel(job.title(), job.revision()),
                        job.limits().overtravel(),
                        MarkTool.from(job.drilling().cutters())));
    }

    /**
     * Says which holes rolling makes too narrow.
     *
     * @return a sentence or two; empty where there is none, or where collars are not rolled
     */
    public Optional<String> risk() {
        long tight =
                holes.stream().filter(h -> h.least() < h.hole().neededLean()).count();
        long closed = holes.stream().filter(h -> !h.passes()).count();
        if (tight == 0) {
            return Optional.empty();
        }
        return Optional.of("At risk after rolling: " + tight + " of " + holes.size()
                + " holes bind the thickest strut before it has its lean"
                + (closed > 0 ? ", " + closed + " of them do not let a nominal strut in at all" : "")
                + "; strips/strips.csv has each. The picture shows the holes as they would be in pipe.");
    }

    /** Holes alike in size, need and cutter are worked out once: a rolled hole takes a while. */
    private static List<RolledHole> holes(Job job, List<Pattern> patterns) {
        Map<List<Object>, RolledHole> known = new HashMap<>();
        List<RolledHole> holes = new ArrayList<>();
        for (Pattern pattern : patterns) {
            for (Hole hole : pattern.holes()) {
                List<Object> key = List.of(hole.cutter(), hole.neededLean(), hole.swing());
                RolledHole alike = known.computeIfAbsent(key, k -> RolledHole.of(job, pattern.id(), hole));
                holes.add(new RolledHole(pattern.id(), hole, alike.limit(), alike.least(), alike.enough()));
            }
        }
        return holes;
    }

    private static void ends(FlatStrip strip, double kerf, List<Finding> findings) {
        Where where = new Where.Part("strip " + strip.pattern());
        if (strip.endWeb() < 0) {
            findings.add(Finding.stop(
                    Code.WEB_TO_EDGE,
                    where,
                    "holes clear of the strip's ends" + (strip.joint().covered() > 0 ? " and of the lap" : ""),
                    Decimals.fixed(-strip.endWeb(), 2) + " mm of a hole beyond",
                    "take a shorter joint-length",
                    "take a larger collar, so that more is left between the holes"));
        }
        double smallest =
                strip.holes().stream().mapToDouble(h -> 2 * h.radius()).min().orElseThrow();
        if (kerf >= smallest) {
            findings.add(Finding.stop(
                    Code.JOB_CONFLICT,
                    where,
                    "a kerf narrower than the smallest hole, " + Decimals.trimmed(smallest, 2) + " mm",
                    Decimals.trimmed(kerf, 2) + " mm",
                    "check kerf and its unit"));
        }
    }

    private static void shortOfReach(RolledHole rolled, List<Finding> findings) {
        if (rolled.slack() >= -1e-9 && rolled.enough().isEmpty()) {
            return;
        }
        List<String> hints = new ArrayList<>();
        rolled.enough()
                .ifPresent(size -> hints.add("cut it flat at " + Decimals.fixed(size, 2)
                        + " mm or more: add a cutter of this size, or drill after rolling"));
        hints.add("drill after rolling, where the hole keeps its width through the wall");
        findings.add(new Finding(
                rolled.passes() ? Level.WARN : Level.STOP,
                Code.HOLE_SHORT_OF_REACH,
                new Where.Part(
                        "strip " + rolled.pattern() + " / hole " + rolled.hole().number()),
                "a lean of " + degrees(rolled.hole().neededLean()) + " after rolling, for every strut and wall",
                rolled.passes()
                        ? degrees(rolled.limit()) + " for a nominal strut, " + degrees(rolled.least()) + " at the least"
                        : "the strut does not pass",
                hints));
    }

    private static String degrees(double angle) {
        return Decimals.fixed(Angles.degrees(angle), 2) + "°";
    }
}
