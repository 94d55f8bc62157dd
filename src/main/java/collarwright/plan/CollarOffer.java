package collarwright.plan;

import collarwright.collar.HubSettings;
import collarwright.finding.Level;
import collarwright.hub.Hubs;
import collarwright.job.Job;
import collarwright.stock.RoundStock;
import collarwright.strut.StrutLayout;
import collarwright.tooling.PatternBook;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds the smallest known pipe of the collar's material that nothing would stop. */
final class CollarOffer {

    private final Job job;
    private final Hubs hubs;

    CollarOffer(Job job, Hubs hubs) {
        this.job = job;
        this.hubs = hubs;
    }

    Optional<RoundStock> smallest(List<RoundStock> stocks) {
        String material = job.hub().collar().material().name();
        return stocks.stream()
                .filter(s -> s.wall().isPresent() && s.material().name().equals(material))
                .sorted(Comparator.comparingDouble((RoundStock s) -> s.od().nominal())
                        .thenComparingDouble(s -> s.wall().orElseThrow().nominal())
                        .thenComparing(RoundStock::name))
                .filter(this::wouldDo)
                .findFirst();
    }

    private boolean wouldDo(RoundStock stock) {
        HubSettings old = job.hub();
        HubSettings hub = new HubSettings(stock, old.width(), old.ring(), old.ringWidth(), old.fix(), old.endGap());
        double strut = job.strut().stock().od().max();
        double inner = hub.body().leastInnerRadius();
        if (strut >= 2 * inner || hub.ring().od().max() / 2 + hub.endGap() > inner) {
            return false;
        }
        PatternBook book = PatternBook.of(hubs, hub.body(), job.strut().stock().od(), job.drilling());
        if (book.patterns().isEmpty()) {
            return false;
        }
        StrutLayout struts = StrutLayout.of(
                hubs,
                job.size(),
                job.strut(),
                new StrutLayout.Clearance(hub.ring().outerRadius(), hub.endGap()));
        for (int i = 0; i < hubs.types().size(); i++) {
            HubPart part = new HubPart(hubs.types().get(i), book.patterns().get(i), struts, hub);
            boolean stops = new HubChecks(part, strut, job.strut().tieHole(), job.limits())
                    .all().stream().anyMatch(c -> c.verdict().equals(Optional.of(Level.STOP)));
            if (stops) {
                return false;
            }
        }
        return true;
    }
}
