package collarwright.assembly;

import collarwright.collar.CollarBody;
import java.util.List;

/**
 * All that assembly has to know of one hub type.
 *
 * @param lines by the hub type's strut, at most 12: every line that such a strut takes on any hub of the type, one or more
 * @param space what they move in
 */
public record Fitting(List<List<SeatedStrut>> lines, HubSpace space) {
    /** Keeps the lists. */
    public Fitting {
        lines = lines.stream().map(List::copyOf).toList();
    }

    /**
     * A hub type whose struts all take the same lines.
     *
     * @param struts by the hub type's strut, at most 12
     * @param space what they move in
     * @return the fitting
     */
    public static Fitting of(List<SeatedStrut> struts, HubSpace space) {
        return new Fitting(struts.stream().map(List::of).toList(), space);
    }

    /**
     * Measures it.
     *
     * @return how far its struts can be pushed
     */
    public HubTravel travel() {
        return HubTravel.worst(lines, space);
    }

    /**
     * The same hub with another centre ring, whose strut ends keep their distance from it.
     *
     * @param more by how much its radius is larger
     * @return the hub
     */
    public Fitting withRing(double more) {
        HubSpace.Ring ring = space.ring();
        HubSpace.Ring larger = new HubSpace.Ring(ring.radius() + more, ring.low(), ring.high());
        List<List<SeatedStrut>> moved = lines.stream()
                .map(strut -> strut.stream()
                        .map(s -> s.withSetback(s.setback() + more / StrictMath.cos(s.axialAngle())))
                        .toList())
                .toList();
        return new Fitting(moved, new HubSpace(space.body(), space.strut(), larger, space.clearance()));
    }

    /**
     * The same hub cut from another pipe of the same wall; struts and ring stay where they are.
     *
     * @param more by how much its outside radius is larger; may be below 0
     * @return the hub
     */
    public Fitting withCollar(double more) {
        CollarBody body = space.body();
        CollarBody other = new CollarBody(body.outerRadius() + more, body.wall(), body.width(), body.rims());
        return new Fitting(lines, new HubSpace(other, space.strut(), space.ring(), space.clearance()));
    }
}
