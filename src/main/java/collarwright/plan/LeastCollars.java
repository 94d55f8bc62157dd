package collarwright.plan;

import collarwright.collar.CollarBody;
import collarwright.collar.HubSettings;
import collarwright.finding.Code;
import collarwright.hub.Hubs;
import collarwright.job.Job;
import collarwright.plan.Check.Quantity;
import collarwright.stock.RoundStock;
import collarwright.strut.StrutLayout;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import collarwright.tooling.PatternBook;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Proposes the smallest stock pipes that a job's collars could be cut from, each with the smallest centre ring, the least
 * width and the job's own end gap, so that no check warns. Of pipes with one outside diameter it takes the wall with the
 * least slack.
 *
 * <p>Stock counts with its nominal sizes; the dome keeps the size that it has in the plan. Hub types are taken with
 * patterns of their own.
 */
public final class LeastCollars {

    /** Pipes that are proposed: the smallest and the next three. */
    public static final int MOST = 4;

    /** A slack is the rack's affair, and a ring's width is chosen here. */
    private static final Set<Code> NOT_THE_PIPES = Set.of(Code.HOLE_SLACK, Code.RING_COVER, Code.HOLE_SHORT_OF_REACH);

    private final Job job;
    private final Hubs hubs;
    private final double radius;
    private final List<RoundStock> rings;

    private LeastCollars(Plan plan, List<RoundStock> stocks) {
        this.job = plan.job();
        this.hubs = plan.hubs();
        this.radius = plan.struts().radius();
        String material = job.hub().ring().material().name();
        this.rings = Stream.concat(stocks.stream(), Stream.of(job.hub().ring()))
                .filter(s -> s.material().name().equals(material))
                .sorted(bySize())
                .toList();
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
        CollarBody body = job.hub().cutFrom(pipe).body();
        if (job.strut().stock().od().max() >= 2 * body.leastInnerRadius()) {
            return Optional.empty();
        }
        PatternBook book = PatternBook.of(hubs, body, job.strut().stock().od(), job.drilling());
        if (book.patterns().isEmpty()) {
            return Optional.empty();
        }
        for (RoundStock ring : rings) {
            if (ring.od().max() / 2 + job.hub().endGap() > body.leastInnerRadius()) {
                return Optional.empty();
            }
            Optional<CollarProposal> proposal = with(pipe, ring);
            if (proposal.isPresent()) {
                return proposal;
            }
        }
        return Optional.empty();
    }

    private Optional<CollarProposal> with(RoundStock pipe, RoundStock ring) {
        HubSettings wide =
                settings(pipe, 10 * pipe.od().nominal(), ring, 10 * pipe.od().nominal());
        StrutLayout struts = StrutLayout.of(
                hubs,
                radius,
                job.strut(),
                new StrutLayout.Clearance(ring.outerRadius(), job.hub().endGap()));
        PatternBook book = exact(wide);
        double width = width(book);
        double ringWidth = 0;
        for (HubPart part : HubPart.all(hubs, struts, book, wide)) {
            ringWidth = StrictMath.max(
                    ringWidth, RingSeat.of(part, job.strut().stock().od().max()).width());
        }
        HubSettings hub = settings(pipe, width, ring, StrictMath.ceil(ringWidth));
        List<Check> checks = new ArrayList<>();
        book.patterns().forEach(p -> checks.addAll(new PatternChecks(p, hub.body(), job).all()));
        HubPart.all(hubs, struts, book, hub).forEach(part -> checks.addAll(new HubChecks(part, job).all()));
        checks.removeIf(c -> NOT_THE_PIPES.contains(c.code()));
        if (checks.stream().anyMatch(c -> c.verdict().isPresent())) {
            return Optional.empty();
        }
        Check tightest = checks.stream()
                .filter(c -> c.quantity() == Quantity.LENGTH && c.code() != Code.WEB_TO_EDGE)
                .min(Comparator.comparingDouble(Check::margin))
                .orElseThrow();
        return Optional.of(new CollarProposal(pipe, width, ring, hub.ringWidth(), slack(book), tightest));
    }

    private PatternBook exact(HubSettings hub) {
        return PatternBook.exact(hubs, hub, job.strut().stock().od(), job.drilling());
    }

    private HubSettings settings(RoundStock pipe, double width, RoundStock ring, double ringWidth) {
        HubSettings own = job.hub().cutFrom(pipe);
        return new HubSettings(pipe, width, ring, ringWidth, own.fix(), own.endGap(), own.rims(), own.heights());
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
