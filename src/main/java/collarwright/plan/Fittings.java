package collarwright.plan;

import collarwright.assembly.Assembly;
import collarwright.assembly.Bending;
import collarwright.assembly.Fitting;
import collarwright.assembly.HubSpace;
import collarwright.assembly.SeatedStrut;
import collarwright.collar.HubSettings;
import collarwright.hub.HubStrut;
import collarwright.hub.Hubs;
import collarwright.job.Job;
import collarwright.strut.StrutLayout;
import collarwright.strut.StrutType;
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
        for (HubPart hub : HubPart.all(hubs, struts, book, job.hub())) {
            fittings.add(fitting(job, hub));
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

    private static Fitting fitting(Job job, HubPart hub) {
        HubSettings settings = job.hub();
        double strut = job.strut().stock().od().max();
        double middle = RingSeat.of(hub, strut).middle();
        HubSpace.Ring ring = new HubSpace.Ring(
                settings.ring().od().max() / 2, middle - settings.ringWidth() / 2, middle + settings.ringWidth() / 2);
        List<List<SeatedStrut>> seats = new ArrayList<>();
        for (int i = 0; i < hub.size(); i++) {
            seats.add(seats(hub, i));
        }
        return new Fitting(
                seats, new HubSpace(settings.body(), strut, ring, job.limits().workingClearance()));
    }

    // Where a pattern is shared, every line that a strut of the kind takes on any of the hubs.
    private static List<SeatedStrut> seats(HubPart hub, int at) {
        SeatedStrut.Opening opening =
                new SeatedStrut.Opening(hub.largestDiameter(at), hub.heights().get(at));
        List<HubPart.Line> lines = hub.lines().get(at);
        if (lines.isEmpty()) {
            HubStrut strut = hub.type().struts().get(at);
            return List.of(new SeatedStrut(strut.axialAngle(), strut.azimuth(), 0, hub.setback(at), opening));
        }
        return lines.stream()
                .map(line -> seat(hub, at, line, opening))
                .distinct()
                .toList();
    }

    private static SeatedStrut seat(HubPart hub, int at, HubPart.Line line, SeatedStrut.Opening opening) {
        double swing = line.end().direction().swing();
        return new SeatedStrut(
                line.end().direction().tilt(),
                hub.placement().fromOutside(hub.hole(at).azimuth()) + swing,
                swing,
                hub.setback(at) + line.growth() / 2,
                opening);
    }
}
