package collarwright.plan;

import collarwright.collar.HubSettings;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.hub.Hubs;
import collarwright.job.Job;
import collarwright.stock.RoundStock;
import collarwright.strut.StrutLayout;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import collarwright.tooling.PatternBook;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Proposes the smallest stock pipes that a job's collars could be cut from, each with the smallest centre ring, the smallest
 * end gap and the least width with which the whole plan neither stops nor warns: hole sizes, webs, what is put together, and
 * whether it can be raised. Of pipes with one outside diameter it takes the wall with the least slack.
 *
 * <p>Steps: 1. for each pipe, each ring from the smallest and each gap in half millimetres, the checks on patterns and hubs.
 * 2. What passes is planned as a whole, with the job's own patterns; room to push struts in grows with the gap, so the
 * smallest gap is found by halving. 3. A candidate counts if its plan neither stops nor warns. Warnings of the frame's own
 * shape, which the job has with any collar, do not count: those of codes that belong to no check and to nothing that a
 * collar, a ring, a gap or a cutter changes.
 *
 * <p>Stock counts with its nominal sizes.
 */
public final class LeastCollars {

    /** Pipes that are proposed: the smallest and the next three. */
    public static final int MOST = 4;

    /** What a collar, a ring, a gap or a cutter changes, besides the checks of a plan. */
    private static final Set<Code> CHANGED = Set.of(
            Code.HOLE_NO_CUTTER,
            Code.HOLE_TOO_WIDE,
            Code.CUTTERS_FEW,
            Code.HUB_SPACING,
            Code.ASSEMBLY_STUCK,
            Code.ASSEMBLY_BOW,
            Code.ASSEMBLY_HELD);

    /** Gaps that are tried. Our choice, no source. */
    private static final double GAP_STEP = 0.5;
    /** The widest gap that is proposed, if the job has none that is wider: a larger ring takes its place. Our choice, no source. */
    private static final double MOST_GAP = 3;
    /** Plans that are made for one pipe at most. Our choice, no source. */
    private static final int MOST_PLANS = 12;

    private final Plan plan;
    private final Job job;
    private final Hubs hubs;
    private final List<RoundStock> rings;
    private final Set<Code> ofTheFrame = EnumSet.noneOf(Code.class);

    private LeastCollars(Plan plan, List<RoundStock> stocks) {
        this.plan = plan;
        this.job = plan.job();
        this.hubs = plan.hubs();
        String material = job.hub().ring().material().name();
        this.rings = Stream.concat(stocks.stream(), Stream.of(job.hub().ring()))
                .filter(s -> s.material().name().equals(material))
                .sorted(bySize())
                .toList();
        plan.findings().stream().map(Finding::code).forEach(ofTheFrame::add);
        plan.checks().forEach(c -> ofTheFrame.remove(c.code()));
        ofTheFrame.removeAll(CHANGED);
    }

    /**
     * Proposes collars.
     *
     * @param plan a plan of the job, with whatever collar it names
     * @param stocks all pipes that are known
     * @return at most {@value #MOST}, the smallest first; empty if none would do
     */
    public static List<CollarProposal> of(Plan plan, List<RoundStock> stocks) {
        LeastCollars least = new LeastCollars(plan, stocks);
        String material = plan.job().hub().collar().material().name();
        List<CollarProposal> found = new ArrayList<>();
        List<RoundStock> pipes = stocks.stream()
                .filter(s -> s.wall().isPresent() && s.material().name().equals(material))
                .sorted(bySize())
                .toList();
        for (RoundStock pipe : pipes) {
            boolean sameSize =
                    !found.isEmpty() && sameSize(found.get(found.size() - 1).collar(), pipe);
            if (found.size() == MOST && !sameSize) {
                break;
            }
            Optional<CollarProposal> proposal = least.cutFrom(pipe);
            if (proposal.isPresent() && !sameSize) {
                found.add(proposal.get());
            } else if (proposal.isPresent()
                    && proposal.get().slack() < found.get(found.size() - 1).slack()) {
                found.set(found.size() - 1, proposal.get());
            }
        }
        return List.copyOf(found);
    }

    private static Comparator<RoundStock> bySize() {
        return Comparator.comparingDouble((RoundStock s) -> s.od().nominal())
                .thenComparingDouble(s -> s.wall().map(w -> w.nominal()).orElse(Double.POSITIVE_INFINITY))
                .thenComparing(RoundStock::name);
    }

    private static boolean sameSize(RoundStock one, RoundStock other) {
        return one.od().nominal() == other.od().nominal();
    }

    private Optional<CollarProposal> cutFrom(RoundStock pipe) {
        double bore = job.hub().cutFrom(pipe).body().leastInnerRadius();
        if (job.strut().stock().od().max() >= 2 * bore) {
            return Optional.empty();
        }
        HubSettings wide = settings(pipe, 10 * pipe.od().nominal(), job.hub().ring(), 10, 0);
        PatternBook book =
                PatternBook.of(hubs, plan.struts(), wide, job.strut().stock().od(), job.drilling());
        if (book.patterns().isEmpty() || !drillable(book, wide)) {
            return Optional.empty();
        }
        int plans = 0;
        for (RoundStock ring : rings) {
            List<HubSettings> gaps = gaps(pipe, ring, bore, book);
            if (gaps.isEmpty()) {
                continue;
            }
            int last = gaps.size() - 1;
            Optional<Plan> widest = clean(gaps.get(last));
            plans++;
            if (widest.isPresent()) {
                return Optional.of(least(gaps, widest.get()));
            }
            if (plans >= MOST_PLANS) {
                break;
            }
        }
        return Optional.empty();
    }

    // Webs and slack, which no ring changes.
    private boolean drillable(PatternBook book, HubSettings wide) {
        return book.patterns().stream()
                .flatMap(p -> new PatternChecks(p, wide.body(), job).all().stream())
                .noneMatch(c -> c.verdict().isPresent());
    }

    // The gaps with which struts and ring keep clear and reach in, ascending.
    private List<HubSettings> gaps(RoundStock pipe, RoundStock ring, double bore, PatternBook book) {
        List<HubSettings> gaps = new ArrayList<>();
        double room = StrictMath.min(
                StrictMath.max(MOST_GAP, job.hub().endGap()), bore - ring.od().max() / 2);
        double width = width(book);
        for (int i = 0; i * GAP_STEP <= room; i++) {
            HubSettings hub = settings(pipe, width, ring, 10, i * GAP_STEP);
            StrutLayout struts = struts(hub);
            List<HubPart> parts = HubPart.all(hubs, struts, book, hub);
            double strut = job.strut().stock().od().max();
            double ringWidth = StrictMath.ceil(parts.stream()
                    .mapToDouble(part -> RingSeat.of(part, strut).width())
                    .max()
                    .orElseThrow());
            HubSettings ringed = settings(pipe, width, ring, ringWidth, i * GAP_STEP);
            boolean sound = HubPart.all(hubs, struts, book, ringed).stream()
                    .flatMap(part -> new HubChecks(part, job).all().stream())
                    .noneMatch(c -> c.verdict().isPresent());
            if (sound) {
                gaps.add(ringed);
            } else if (!gaps.isEmpty()) {
                return gaps;
            }
        }
        return gaps;
    }

    // Halves between the gaps; the largest is known to do.
    private CollarProposal least(List<HubSettings> gaps, Plan widest) {
        int low = 0;
        int high = gaps.size() - 1;
        Plan best = widest;
        while (low < high) {
            int middle = (low + high) / 2;
            Optional<Plan> there = clean(gaps.get(middle));
            if (there.isPresent()) {
                best = there.get();
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return proposal(best);
    }

    private Optional<Plan> clean(HubSettings hub) {
        Plan whole = Planner.plan(job.with(hub), List.of());
        boolean clean = whole.findings().stream()
                .filter(f -> f.level() != Level.NOTE)
                .allMatch(f -> ofTheFrame.contains(f.code()));
        return clean ? Optional.of(whole) : Optional.empty();
    }

    private static CollarProposal proposal(Plan plan) {
        HubSettings hub = plan.job().hub();
        List<Check> margins = new ArrayList<>();
        for (Check check : plan.checks()) {
            int last = margins.size() - 1;
            if (last < 0 || margins.get(last).code() != check.code()) {
                margins.add(check);
            } else if (check.margin() < margins.get(last).margin()) {
                margins.set(last, check);
            }
        }
        return new CollarProposal(
                hub.collar(),
                hub.width(),
                hub.ring(),
                hub.ringWidth(),
                hub.endGap(),
                slack(plan.book()),
                RackSteps.widest(plan),
                margins);
    }

    private StrutLayout struts(HubSettings hub) {
        return StrutLayout.of(
                hubs,
                plan.struts().radius(),
                job.strut(),
                new StrutLayout.Clearance(hub.ring().outerRadius(), hub.endGap()));
    }

    private HubSettings settings(RoundStock pipe, double width, RoundStock ring, double ringWidth, double gap) {
        HubSettings own = job.hub().cutFrom(pipe);
        return new HubSettings(pipe, width, ring, ringWidth, own.fix(), gap, own.rims(), own.heights());
    }

    // Whole millimetres that leave the web to the edge that no check warns of.
    private double width(PatternBook book) {
        double most = 0;
        for (Pattern pattern : book.patterns()) {
            for (Hole hole : pattern.holes()) {
                double diameter = hole.cutter().asDrilled().max();
                most = StrictMath.max(
                        most, diameter * (1 + 2 * job.limits().webWarn()) + 2 * StrictMath.abs(hole.height()));
            }
        }
        return StrictMath.ceil(most - 1e-9);
    }

    private static double slack(PatternBook book) {
        return book.patterns().stream()
                .flatMap(p -> p.holes().stream())
                .mapToDouble(Hole::slack)
                .max()
                .orElseThrow();
    }
}
