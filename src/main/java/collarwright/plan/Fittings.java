package collarwright.plan;

import collarwright.assembly.Assembly;
import collarwright.assembly.Bending;
import collarwright.assembly.Fitting;
import collarwright.assembly.HubSpace;
import collarwright.assembly.SeatedStrut;
import collarwright.collar.HubSettings;
import collarwright.hub.HubStrut;
import collarwright.hub.HubType;
import collarwright.hub.Hubs;
import collarwright.job.Job;
import collarwright.strut.StrutLayout;
import collarwright.strut.StrutType;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import collarwright.tooling.PatternBook;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Hands the hubs of a plan to their assembly: the thickest strut, the largest holes and the thickest ring. */
final class Fittings {

    private Fittings() {}

    static Optional<Assembly> of(Job job, Hubs hubs, StrutLayout struts, PatternBook book) {
        if (book.patterns().isEmpty()) {
            return Optional.empty();
        }
        double strut = job.strut().stock().od().max();
        List<Fitting> fittings = new ArrayList<>();
        for (int i = 0; i < hubs.types().size(); i++) {
            fittings.add(
                    fitting(job, hubs.types().get(i), struts, book.patterns().get(i)));
        }
        // A strut that is too short for its ends is told by its own check.
        List<Double> lengths = struts.types().stream()
                .map(StrutType::cut)
                .map(cut -> StrictMath.max(1, cut))
                .toList();
        Bending bending =
                new Bending(strut, lengths, job.strut().stock().material().strainLimit());
        return Optional.of(Assembly.of(hubs, fittings, bending));
    }

    private static Fitting fitting(Job job, HubType type, StrutLayout struts, Pattern pattern) {
        HubSettings hub = job.hub();
        double strut = job.strut().stock().od().max();
        double middle = RingSeat.of(type, struts, hub.body().midRadius(), strut).middle();
        HubSpace.Ring ring = new HubSpace.Ring(
                hub.ring().od().max() / 2, middle - hub.ringWidth() / 2, middle + hub.ringWidth() / 2);
        List<SeatedStrut> seats = new ArrayList<>();
        for (int i = 0; i < type.struts().size(); i++) {
            HubStrut at = type.struts().get(i);
            Hole hole = pattern.holes().get(i);
            seats.add(new SeatedStrut(
                    at.axialAngle(),
                    at.azimuth(),
                    0,
                    struts.types().get(at.strutType()).end(at.tip()).setback(),
                    new SeatedStrut.Opening(hole.cutter().asDrilled().max(), hole.height())));
        }
        return new Fitting(
                seats, new HubSpace(hub.body(), strut, ring, job.limits().workingClearance()));
    }
}
