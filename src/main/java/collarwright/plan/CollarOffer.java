package collarwright.plan;

import collarwright.collar.HubSettings;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.hub.Hubs;
import collarwright.job.Job;
import collarwright.stock.RoundStock;
import collarwright.strut.StrutLayout;
import collarwright.tooling.PatternBook;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Finds the smallest known pipe of the collar's material that nothing would stop, as far as a pipe can help: what another
 * part has to cure, such as a ring too thin to keep the ends apart, stops no pipe.
 */
final class CollarOffer {

    private static final Set<Code> CURED =
            Set.of(Code.HOLE_TOO_WIDE, Code.WEB_BETWEEN_HOLES, Code.STRUT_ENGAGEMENT, Code.RING_CLEARANCE);

    private final Job job;
    private final Hubs hubs;
    private final StrutLayout struts;

    CollarOffer(Job job, Hubs hubs, StrutLayout struts) {
        this.job = job;
        this.hubs = hubs;
        this.struts = struts;
    }

    static boolean cures(Finding finding) {
        return finding.level() == Level.STOP && CURED.contains(finding.code());
    }

    Optional<RoundStock> smallest(List<RoundStock> stocks) {
        String material = job.hub().collar().material().name();
        return stocks.stream()
                .filter(s -> s.wall().isPresent() && s.material().name().equals(material))
                .filter(s -> !s.name().equals(job.hub().collar().name()))
                .sorted(Comparator.comparingDouble((RoundStock s) -> s.od().nominal())
                        .thenComparingDouble(s -> s.wall().orElseThrow().nominal())
                        .thenComparing(RoundStock::name))
                .filter(this::wouldDo)
                .findFirst();
    }

    private boolean wouldDo(RoundStock stock) {
        HubSettings hub = job.hub().cutFrom(stock);
        double strut = job.strut().stock().od().max();
        double inner = hub.body().leastInnerRadius();
        if (strut >= 2 * inner || hub.ring().od().max() / 2 + hub.endGap() > inner) {
            return false;
        }
        PatternBook book = PatternBook.of(hubs, struts, hub, job.strut().stock().od(), job.drilling());
        if (book.patterns().isEmpty()) {
            return false;
        }
        Stream<Check> onPatterns =
                book.patterns().stream().flatMap(p -> new PatternChecks(p, hub.body(), job).all().stream());
        Stream<Check> onHubs =
                HubPart.all(hubs, struts, book, hub).stream().flatMap(part -> new HubChecks(part, job).all().stream());
        return Stream.concat(onPatterns, onHubs)
                .flatMap(c -> c.finding().stream())
                .noneMatch(CollarOffer::cures);
    }
}
