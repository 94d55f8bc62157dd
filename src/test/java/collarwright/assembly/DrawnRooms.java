package collarwright.assembly;

import collarwright.hub.Hubs;
import collarwright.testing.Seeds;
import java.util.ArrayList;
import java.util.List;

/** Frames whose struts have drawn room to be pushed in, so that odd orders come up that real collars seldom ask for. */
public final class DrawnRooms {

    private DrawnRooms() {}

    /** The same frame with drawn rooms, its struts stiff. */
    public static Assembly assembly(Hubs hubs, Assembly like, Seeds draw) {
        List<HubTravel> travels =
                hubs.types().stream().map(t -> drawn(draw, t.struts().size())).toList();
        List<Double> lengths = hubs.strutShapes().stream().map(s -> 1000.0).toList();
        RaisingOrder order = RaisingOrder.of(hubs, travels, new Bending(20, lengths, 1e-9));
        return new Assembly(like.fittings(), travels, like.reports(), like.tightest(), order);
    }

    /** Each neighbour stops a strut or lets it pass, by chance. */
    static HubTravel drawn(Seeds draw, int size) {
        List<HubTravel.HoleTravel> holes = new ArrayList<>();
        for (int hole = 0; hole < size; hole++) {
            List<Double> past = new ArrayList<>();
            for (int other = 0; other < size; other++) {
                past.add(other == hole || draw.coin() ? Double.POSITIVE_INFINITY : draw.between(0, 60));
            }
            holes.add(new HubTravel.HoleTravel(draw.between(20, 50), draw.between(20, 100), 2, past, 2));
        }
        return new HubTravel(holes);
    }
}
