package collarwright.tooling;

import collarwright.collar.Heights;
import collarwright.hub.HubStrut;
import collarwright.hub.HubType;
import collarwright.hub.Hubs;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The different drillings of a dome where every hub gets just its holes: one for each hub type, or, where collars may be
 * put on upside down, one for all hub types that drill the same after a turn or turned over.
 *
 * <p>Which of two mirror images is drilled is settled by the holes alone ({@link HoleCycle#least}), so that a dome and its
 * mirror image take the same collars.
 *
 * @param all in the order of the first hub types that they serve
 * @param placements by hub type
 */
record Drillings(List<Drilling> all, List<Placement> placements) {

    private static final double TURN = 2 * StrictMath.PI;

    /** Keeps the lists. */
    Drillings {
        all = List.copyOf(all);
        placements = List.copyOf(placements);
    }

    /**
     * One drilling.
     *
     * @param type the hub type that it was first met as
     * @param cycle its holes
     * @param reading how the collar reads them
     */
    record Drilling(int type, HoleCycle cycle, HoleCycle.Reading reading) {}

    static Drillings of(Hubs hubs, double midRadius, Heights heights, boolean flip) {
        List<Drilling> all = new ArrayList<>();
        List<Placement> placements = new ArrayList<>();
        for (int type = 0; type < hubs.types().size(); type++) {
            HubType hub = hubs.types().get(type);
            List<Double> tilts = hub.struts().stream().map(HubStrut::axialAngle).toList();
            HoleCycle cycle = HoleCycle.of(hub, heights.of(midRadius, tilts));
            Optional<Placement> placed = flip ? placed(all, hub, cycle) : Optional.empty();
            if (placed.isEmpty()) {
                HoleCycle.Reading reading = flip ? cycle.least() : new HoleCycle.Reading(false, 0);
                all.add(new Drilling(type, cycle, reading));
                placed = Optional.of(placement(all.size() - 1, hub, cycle, reading));
            }
            placements.add(placed.get());
        }
        return new Drillings(all, placements);
    }

    private static Optional<Placement> placed(List<Drilling> all, HubType hub, HoleCycle cycle) {
        for (int i = 0; i < all.size(); i++) {
            int pattern = i;
            Optional<Placement> placement = cycle.like(
                            all.get(i).cycle(), all.get(i).reading())
                    .map(reading -> placement(pattern, hub, cycle, reading));
            if (placement.isPresent()) {
                return placement;
            }
        }
        return Optional.empty();
    }

    private static Placement placement(int pattern, HubType hub, HoleCycle cycle, HoleCycle.Reading reading) {
        Integer[] holes = new Integer[cycle.size()];
        for (int at = 0; at < holes.length; at++) {
            holes[cycle.strut(reading, at)] = at;
        }
        double first = hub.struts().get(reading.first()).azimuth();
        double turn = reading.flipped() || first == 0 ? first : TURN - first;
        return new Placement(pattern, turn, reading.flipped(), List.of(holes));
    }
}
