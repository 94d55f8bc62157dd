package collarwright.plan;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.hub.HubStrut;
import collarwright.hub.HubType;
import collarwright.strut.StrutType;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import collarwright.tooling.Placement;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import collarwright.units.Ids;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How far a hub can move outward along its axis before the first of its struts binds in its hole: what slack does to a
 * frame. Inward it is held in the same way by the holes at the far ends of its struts.
 *
 * <p>Where a hub is displaced along its axis by w while its neighbours stand still, a strut of length L turns by w/L, to
 * first order and with the small tilts of a dome; it binds when that is its slack s: w = L·s. The least of its struts
 * holds the hub.
 *
 * @param movement the least L·s of its struts, 0 or more
 * @param hole number of the hole that holds it
 * @param slack of that hole, an angle
 * @param length of the strut in it, node to node
 */
public record HubPlay(double movement, int hole, double slack, double length) {

    /** A movement from which on it is told, mm: about what a hand sees on a frame. Our choice, no source. */
    private static final double TOLD = 5;

    /** A strut that comes up short by less than this gives way by hand. Our choice, no source. */
    private static final double SMALL = StrictMath.PI / 3600;

    /**
     * Finds how far the hubs of a type can move.
     *
     * @param plan a plan with patterns
     * @param hubType index of the hub type
     * @return its play; no movement where a hole stops its strut short
     */
    public static HubPlay of(Plan plan, int hubType) {
        Placement placement = plan.placement(hubType);
        return of(
                plan.hubs().types().get(hubType),
                placement,
                plan.book().patterns().get(placement.pattern()),
                plan.struts().types());
    }

    static HubPlay of(HubType type, Placement placement, Pattern pattern, List<StrutType> struts) {
        HubPlay least = new HubPlay(Double.POSITIVE_INFINITY, 0, 0, 0);
        for (int i = 0; i < type.struts().size(); i++) {
            HubStrut strut = type.struts().get(i);
            Hole hole = pattern.holes().get(placement.holes().get(i));
            double length = struts.get(strut.strutType()).chord();
            double movement = length * StrictMath.max(0, hole.slack());
            if (movement < least.movement()) {
                least = new HubPlay(movement, hole.number(), hole.slack(), length);
            }
        }
        return least;
    }

    /**
     * Tells whether this is so much that it has to be said: the same however the cutters were chosen.
     *
     * @return true if the hub can move {@value #TOLD} mm or more
     */
    public boolean told() {
        return movement >= TOLD;
    }

    /** The hub that can move furthest, where that is so much that it has to be said. */
    static Optional<Finding> note(Plan plan) {
        List<Pattern> patterns = plan.book().patterns();
        if (patterns.isEmpty()) {
            return Optional.empty();
        }
        int worst = 0;
        for (int i = 1; i < plan.hubs().types().size(); i++) {
            worst = of(plan, i).movement() > of(plan, worst).movement() ? i : worst;
        }
        HubPlay play = of(plan, worst);
        return !play.told()
                ? Optional.empty()
                : Optional.of(Finding.note(
                        Code.HUB_MOVEMENT,
                        new Where.Part("hub " + Ids.letters('H', worst)),
                        "a hub that its holes hold where it belongs",
                        play.words(),
                        "of all hub types this one moves most; a cutter nearer to the needed size makes it less",
                        "hold the hubs at their height while the frame is tied"));
    }

    private String words() {
        return "it can move " + Decimals.fixed(movement, 1) + " mm outward before the first strut binds (hole " + hole
                + ": slack " + degrees(slack) + " × " + Decimals.fixed(length, 0) + " mm)";
    }

    /**
     * Says what a pattern's sizes do to the frame.
     *
     * @param plan the plan
     * @param pattern one of its patterns
     * @return lines for people; empty where every size is as it should be
     */
    public static List<String> consequences(Plan plan, Pattern pattern) {
        List<String> lines = new ArrayList<>();
        for (Hole hole : pattern.holes()) {
            if (hole.slack() < -SMALL) {
                lines.add("Hole " + hole.number() + ": " + shortOf(hole) + ".");
            }
        }
        List<Integer> served = plan.served(plan.book().patterns().indexOf(pattern));
        for (int type : served) {
            HubPlay play = of(plan, type);
            if (play.told()) {
                String hub = served.size() == 1 ? "This hub" : "Hub " + Ids.letters('H', type);
                lines.add(hub + ": " + play.words() + ".");
            }
        }
        return lines;
    }

    /** What a hole does that stops its strut short. */
    static String shortOf(Hole hole) {
        return hole.slack() < -SMALL
                ? "cannot be put together without forcing, the strut binds " + degrees(-hole.slack())
                        + " before its angle"
                : "the strut binds a hair before its angle and gives way by hand";
    }

    private static String degrees(double angle) {
        return Decimals.fixed(Angles.degrees(angle), 2) + "°";
    }
}
