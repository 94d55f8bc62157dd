package collarwright.plan;

import collarwright.hub.HubStrut;
import collarwright.hub.Hubs;
import collarwright.tooling.Hole;
import collarwright.units.Angles;
import java.util.List;

/**
 * Which way up a hub goes on its node, told by its holes: a collar looks much the same all round, so whoever hangs it has
 * to know which two holes the highest point of its rim lies between.
 *
 * <p>UP is straight up (+z, toward the apex and away from the ground on the upper half of a dome) as it falls on the
 * hub's plane; at the apex, where there is no such direction, the +x meridian. Seen with TOP toward the eye (from outside
 * the dome, but for a collar that is put on upside down); holes count clockwise.
 *
 * @param hole the hole that UP is at, or the last one before it clockwise; from 1
 * @param next the next hole clockwise
 * @param past how far clockwise UP lies past the hole, from 0 to the next hole
 * @param at whether UP is at the hole, within {@value #SAME_DEGREES} degrees
 */
public record Uphill(int hole, int next, double past, boolean at) {

    /** UP nearer than this to a hole's axis is at the hole: finer than anybody sees, coarser than any rounding. */
    public static final double SAME_DEGREES = 0.05;

    private static final double SAME = Angles.radians(SAME_DEGREES);

    /**
     * Finds it for a node.
     *
     * @param plan the plan
     * @param node node index
     * @return its way up, by the holes of its pattern
     */
    public static Uphill of(Plan plan, int node) {
        if (plan.book().patterns().isEmpty()) {
            return of(plan.hubs(), node);
        }
        int pattern = plan.placement(plan.hubs().typeOf(node)).pattern();
        List<Double> holes = plan.book().patterns().get(pattern).holes().stream()
                .map(Hole::azimuth)
                .toList();
        return of(holes, plan.turn(node));
    }

    /**
     * Finds it for a node whose hub type has a pattern of its own.
     *
     * @param hubs the hubs
     * @param node node index
     * @return its way up
     */
    public static Uphill of(Hubs hubs, int node) {
        List<HubStrut> struts = hubs.types().get(hubs.typeOf(node)).struts();
        return of(struts.stream().map(HubStrut::azimuth).toList(), hubs.turnOf(node));
    }

    private static Uphill of(List<Double> azimuths, double turn) {
        int holes = azimuths.size();
        for (int i = 0; i < holes; i++) {
            double off = StrictMath.abs(turn - azimuths.get(i));
            if (StrictMath.min(off, 2 * StrictMath.PI - off) <= SAME) {
                return new Uphill(i + 1, (i + 1) % holes + 1, 0, true);
            }
        }
        int last = 0;
        while (last + 1 < holes && azimuths.get(last + 1) < turn) {
            last++;
        }
        return new Uphill(last + 1, (last + 1) % holes + 1, turn - azimuths.get(last), false);
    }

    /**
     * Tells it as labels and papers do.
     *
     * @return such as {@code UP between hole 2 and 3} or {@code UP at hole 2}
     */
    public String words() {
        return at ? "UP at hole " + hole : "UP between hole " + hole + " and " + next;
    }
}
