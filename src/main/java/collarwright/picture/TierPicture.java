package collarwright.picture;

import collarwright.dome.Dome;
import collarwright.geometry.Vec3;
import collarwright.plan.Plan;
import collarwright.units.Ids;
import java.util.stream.IntStream;

/**
 * The dome opened out flat, seen from above: the apex in the middle, the tiers around it, every hub with its pattern.
 *
 * <p>The distance from the middle is the angle from the apex, so that the lower tiers of a dome that narrows toward its
 * foot do not hide each other. The +x meridian points up; places in a tier count clockwise from it. A hub whose collar is
 * put on upside down has a double ring.
 */
public final class TierPicture implements Picture {

    private static final double MARGIN = 8;
    private static final int MOST = 5000;
    private static final double BADGE = 3.9;

    private final Plan plan;
    private final Dome dome;
    private final double width;
    private final StrutKey key;
    private final double radiansToPaper;
    private final Spot centre;
    private final Vec3 middle;

    /**
     * Tells whether a dome is coarse enough to be read when it is opened out.
     *
     * @param plan the plan
     * @return false where its hubs would run together
     */
    public static boolean readable(Plan plan) {
        return plan.hubs().dome().memberCount() <= MOST;
    }

    /**
     * Prepares the picture.
     *
     * @param plan the plan
     * @param width mm on paper
     */
    public TierPicture(Plan plan, double width) {
        this.plan = plan;
        this.dome = plan.hubs().dome();
        this.width = width;
        this.key = new StrutKey(plan, width);
        this.middle = dome.middle();
        double widest = IntStream.range(0, dome.nodeCount())
                .mapToDouble(this::fromTop)
                .max()
                .orElseThrow();
        this.radiansToPaper = (width / 2 - MARGIN) / widest;
        this.centre = new Spot(width / 2, width / 2);
    }

    @Override
    public double width() {
        return width;
    }

    @Override
    public double height() {
        return width + key.height();
    }

    @Override
    public String describe() {
        if (!dome.hasTiers()) {
            return "The frame opened out flat, seen from above, every hub with the name of its pattern and its number,"
                    + " every strut with the line of its type." + doubleRings();
        }
        return "The dome opened out flat, seen from above: the apex in the middle, " + (dome.tierCount() - 1)
                + " tiers around it, every hub with the name of its pattern, every strut with the line of its type. The first place of each tier is named; places count clockwise."
                + doubleRings();
    }

    /**
     * Says what a double ring means.
     *
     * @return a sentence that starts with a space; empty where no collar is put on upside down
     */
    public String doubleRings() {
        return plan.book().flips() ? " A double ring: the collar goes on upside down, TOP inside." : "";
    }

    private Spot spot(int node) {
        double x = dome.x(node) - middle.x();
        double y = dome.y(node) - middle.y();
        double angle = fromTop(node);
        return angle < 1e-12 ? centre : centre.polar(angle * radiansToPaper, StrictMath.atan2(-y, x));
    }

    // The angle from straight up, seen from the dome's middle.
    private double fromTop(int node) {
        double x = dome.x(node) - middle.x();
        double y = dome.y(node) - middle.y();
        return StrictMath.atan2(StrictMath.sqrt(x * x + y * y), dome.z(node) - middle.z());
    }

    // The lowest node of a whole sphere lies everywhere on the rim.
    private boolean placeless(int node) {
        return StrictMath.PI - fromTop(node) < 1e-12;
    }

    @Override
    public void paint(Sketch sketch) {
        double nearest = nearest();
        int types = plan.struts().types().size();
        boolean apart = nearest >= 6 && StrutLines.tellApart(types);
        MemberPaths paths = new MemberPaths(apart ? types : 1);
        for (int m = 0; m < dome.memberCount(); m++) {
            if (!placeless(dome.memberA(m)) && !placeless(dome.memberB(m))) {
                paths.add(apart ? plan.hubs().strutTypeOf(m) : 0, spot(dome.memberA(m)), spot(dome.memberB(m)));
            }
        }
        paths.draw(sketch, type -> nearest < 6 ? Stroking.solid(Stroking.FINE, Ink.INK) : StrutLines.of(type, types));
        hubs(sketch, nearest);
        key.paint(sketch, width);
    }

    /** The shortest strut on paper: how much room a hub has. */
    private double nearest() {
        double least = Double.POSITIVE_INFINITY;
        for (int m = 0; m < dome.memberCount(); m++) {
            Spot a = spot(dome.memberA(m));
            Spot b = spot(dome.memberB(m));
            least = StrictMath.min(least, StrictMath.hypot(a.x() - b.x(), a.y() - b.y()));
        }
        return least;
    }

    private void hubs(Sketch sketch, double nearest) {
        boolean named = nearest > 2 * BADGE + 1.2;
        for (int node = 0; node < dome.nodeCount(); node++) {
            if (placeless(node)) {
                continue;
            }
            if (named) {
                badge(sketch, node);
            } else {
                sketch.fill(Ink.INK, Sketch.circle(spot(node), StrictMath.min(0.9, nearest / 6)));
            }
        }
        if (named && dome.hasTiers()) {
            firstPlaces(sketch);
        } else if (named) {
            numbers(sketch);
        }
    }

    private void badge(Sketch sketch, int node) {
        Spot at = spot(node);
        var circle = Sketch.circle(at, BADGE);
        sketch.fill(Ink.PAPER, circle);
        sketch.draw(Stroking.solid(Stroking.NARROW, Ink.INK), circle);
        if (plan.flipped(node)) {
            sketch.draw(Stroking.solid(Stroking.NARROW, Ink.INK), Sketch.circle(at, BADGE - 0.7));
        }
        sketch.write(Label.of(
                Ids.letters('C', plan.placement(plan.hubs().typeOf(node)).pattern()),
                at.x(),
                at.y(),
                Label.Side.MIDDLE));
    }

    // Numbers cannot be counted off, so each hub has its own, where there is room.
    private void numbers(Sketch sketch) {
        for (int node = 0; node < dome.nodeCount(); node++) {
            Spot at = spot(node).plus(0, BADGE + 2.2);
            sketch.writeIfFree(
                    Label.of(dome.nodeId(node), at.x(), at.y(), Label.Side.MIDDLE)
                            .in(Ink.DATUM)
                            .onPaper(),
                    0.2);
        }
    }

    // The first place of every tier, so that any other can be counted off.
    private void firstPlaces(Sketch sketch) {
        for (int tier = 0; tier < dome.tierCount(); tier++) {
            int node = dome.firstOfTier(tier);
            if (node == dome.firstOfTier(tier + 1)) {
                continue;
            }
            Spot at = placeless(node) ? centre : spot(node).plus(BADGE + 1, 0);
            sketch.writeIfFree(
                    Label.of(dome.nodeId(node), at.x(), at.y(), Label.Side.LEFT)
                            .in(Ink.DATUM)
                            .onPaper(),
                    0.5);
        }
    }
}
