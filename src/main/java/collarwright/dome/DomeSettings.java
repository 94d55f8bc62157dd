package collarwright.dome;

import java.util.List;

/**
 * Which dome to build: a part of a sphere, its form, its foot and its openings.
 *
 * @param sphere what it is cut from
 * @param cut which part is kept
 * @param form sphere or ellipsoid
 * @param foot how it stands
 * @param tiersFromFoot whether node ids count tiers from the foot instead of from the apex
 * @param openings doorways and the like
 */
public record DomeSettings(
        SphereSettings sphere, Cut cut, Form form, Foot foot, boolean tiersFromFoot, List<Opening> openings)
        implements DomeSource {

    /** Keeps the openings and checks that the sphere has what is kept. */
    public DomeSettings {
        openings = List.copyOf(openings);
        if (cut instanceof Cut.Tiers tiers && tiers.last() > sphere.tiers()) {
            throw new IllegalArgumentException("no such dome: " + sphere + ", tiers " + tiers.last());
        }
    }

    /**
     * A part of a sphere that stands as the breakdown has it.
     *
     * @param sphere what it is cut from
     * @param cut which part is kept
     */
    public DomeSettings(SphereSettings sphere, Cut cut) {
        this(sphere, cut, Form.SPHERE, new Foot.Natural(), false, List.of());
    }

    /**
     * A class I icosahedron, vertex up.
     *
     * @param frequency 1 to {@link SphereSettings#MAX_FREQUENCY}
     * @param rows 1 to 3 · frequency
     */
    public DomeSettings(int frequency, int rows) {
        this(
                new SphereSettings(Base.ICOSAHEDRON, new Breakdown(frequency, 0), Subdivision.CHORDS, Up.VERTEX),
                new Cut.Tiers(rows));
    }

    /**
     * Tells whether the whole sphere is kept, so that it has no foot.
     *
     * @return true if nothing is cut off, also where a plane is given that lies below its lowest nodes
     */
    public boolean whole() {
        if (cut instanceof Cut.Tiers tiers) {
            return tiers.last() == sphere.tiers();
        }
        return ((Cut.Height) cut).above() <= -1 || Tiers.of(sphere).whole(cut);
    }
}
