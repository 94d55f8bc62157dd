package collarwright.picture;

import collarwright.hub.HubStrut;
import collarwright.hub.Hubs;
import collarwright.kit.Connection;
import collarwright.plan.Plan;
import java.util.List;

/** One hub as it is seen from outside with UP up, with every strut at it and the hub at the strut's other end. */
public final class HubStarPicture implements Picture {

    private static final double SIDE = 60;
    /** From a hole's number to the strut's name. */
    private static final double STRUT = 4.9;

    private static final double LEAST = 14;
    private static final double END = 21;
    private static final double NAME = 24.5;

    private final Plan plan;
    private final Hubs hubs;
    private final int node;
    private final List<Connection> ends;
    private final HubMarks marks;

    /**
     * Prepares the picture.
     *
     * @param plan the plan
     * @param node the hub's node
     * @param ends the strut ends there
     */
    public HubStarPicture(Plan plan, int node, List<Connection> ends) {
        this.plan = plan;
        this.hubs = plan.hubs();
        this.node = node;
        this.ends = List.copyOf(ends);
        this.marks = new HubMarks(plan);
    }

    @Override
    public double width() {
        return SIDE;
    }

    @Override
    public double height() {
        return SIDE - 4;
    }

    @Override
    public String describe() {
        return "Hub " + marks.names().node(node) + " seen from outside, UP up, with its struts and holes.";
    }

    @Override
    public void paint(Sketch sketch) {
        Spot middle = new Spot(width() / 2, height() / 2);
        int types = plan.struts().types().size();
        for (Connection end : ends) {
            sketch.line(StrutLines.of(hubs.strutTypeOf(end.member()), types), middle, middle.polar(END, azimuth(end)));
        }
        for (Connection end : ends) {
            boolean atA = hubs.nodeAtA(end.member()) == node;
            int other = atA ? hubs.nodeAtB(end.member()) : hubs.nodeAtA(end.member());
            String name = marks.names().node(other);
            Spot tip = middle.polar(END, azimuth(end));
            sketch.fill(Ink.INK, Sketch.circle(tip, 0.9));
            Spot at = middle.polar(NAME, azimuth(end));
            double half = sketch.widthOf(name) / 2 + 1.2;
            double x = StrictMath.min(width() - half, StrictMath.max(half, at.x()));
            sketch.write(
                    Label.of(name, x, at.y(), Label.Side.MIDDLE).in(Ink.DATUM).onPaper());
            double past = marks.holeAt(sketch, new Spot(0, 0).polar(1, azimuth(end)), node) + STRUT;
            marks.strut(
                    sketch, middle.polar(StrictMath.max(LEAST, past), azimuth(end)), hubs.strutTypeOf(end.member()));
        }
        marks.box(sketch, middle, node);
        ends.forEach(end -> marks.hole(sketch, middle, middle.polar(END, azimuth(end)), node, end.hole()));
    }

    // Clockwise from UP, seen from outside.
    private double azimuth(Connection end) {
        boolean atA = hubs.nodeAtA(end.member()) == node;
        int hole = (atA ? hubs.holeAtA(end.member()) : hubs.holeAtB(end.member())) - 1;
        HubStrut strut = hubs.types().get(hubs.typeOf(node)).struts().get(hole);
        return strut.azimuth() - hubs.turnOf(node);
    }
}
