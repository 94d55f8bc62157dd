package collarwright.picture;

import collarwright.kit.Stripes;
import collarwright.plan.PartNames;
import collarwright.plan.Plan;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;

/**
 * How site maps show a hub and its struts: a box with the hub's name, its type and its pattern, an arrow's head where UP is,
 * the number of the hole on every strut, and the strut's name over its stripes. A collar that goes on upside down has a
 * double edge.
 */
final class HubMarks {

    /** Half the height of a hub's box. */
    static final double HALF_HEIGHT = 5.4;

    private static final double PAST = 2.5;

    /** Room beside the words in a hub's box. */
    private static final double EDGE = 0.9;

    private final Plan plan;
    private final PartNames names;

    HubMarks(Plan plan) {
        this.plan = plan;
        this.names = PartNames.of(plan);
    }

    PartNames names() {
        return names;
    }

    private String type(int node) {
        int type = plan.hubs().typeOf(node);
        return names.hubType(type) + " " + names.pattern(type);
    }

    double halfWidth(Lettering letters, int node) {
        double name = letters.width(names.node(node), Label.SIZE);
        double type = letters.width(type(node), Label.SIZE);
        return StrictMath.max(name, type) / 2 + EDGE;
    }

    void box(Sketch sketch, Spot at, int node) {
        double half = StrictMath.max(sketch.widthOf(names.node(node)), sketch.widthOf(type(node))) / 2 + EDGE;
        var shape = new RoundRectangle2D.Double(at.x() - half, at.y() - HALF_HEIGHT, 2 * half, 2 * HALF_HEIGHT, 3, 3);
        sketch.fill(Ink.PAPER, shape);
        sketch.draw(Stroking.edge(), shape);
        if (plan.flipped(node)) {
            sketch.draw(
                    Stroking.solid(Stroking.NARROW, Ink.INK),
                    new RoundRectangle2D.Double(
                            at.x() - half - 0.9,
                            at.y() - HALF_HEIGHT - 0.9,
                            2 * half + 1.8,
                            2 * HALF_HEIGHT + 1.8,
                            4,
                            4));
        }
        sketch.write(Label.of(names.node(node), at.x(), at.y() - 2.45, Label.Side.MIDDLE)
                .strong());
        sketch.write(Label.of(type(node), at.x(), at.y() + 2.45, Label.Side.MIDDLE));
        Spot tip = at.plus(0, -HALF_HEIGHT - 3.2);
        sketch.fill(Ink.INK, Sketch.chain(List.of(tip, tip.plus(1.2, 3), tip.plus(-1.2, 3)), true));
    }

    /** How far from a hub's middle the number of a hole stands, in a direction of length 1. */
    double holeAt(Sketch sketch, Spot direction, int node) {
        double half = StrictMath.max(sketch.widthOf(names.node(node)), sketch.widthOf(type(node))) / 2 + EDGE;
        double dx = StrictMath.abs(direction.x());
        double dy = StrictMath.abs(direction.y());
        return StrictMath.min(dx < 1e-9 ? 1e9 : half / dx, dy < 1e-9 ? 1e9 : HALF_HEIGHT / dy) + PAST;
    }

    /** The number of the hole that a strut leaves the hub by. */
    void hole(Sketch sketch, Spot hub, Spot toward, int node, int hole) {
        double dx = toward.x() - hub.x();
        double dy = toward.y() - hub.y();
        double length = StrictMath.hypot(dx, dy);
        double out = holeAt(sketch, new Spot(dx / length, dy / length), node);
        Spot at = hub.plus(out * dx / length, out * dy / length);
        String number = Integer.toString(hole);
        if (dy < 0 && StrictMath.abs(at.x() - hub.x()) < 2.8) {
            // Beside the strut, so that UP stays in sight.
            at = new Spot(hub.x() + (at.x() < hub.x() - 1e-9 ? -3.2 : 3.2), at.y());
        }
        double width = sketch.widthOf(number) + 0.8;
        sketch.fill(Ink.PAPER, new Rectangle2D.Double(at.x() - width / 2, at.y() - 1.7, width, 3.4));
        sketch.write(Label.of(number, at.x(), at.y(), Label.Side.MIDDLE));
    }

    /** A strut's name over its stripes. */
    void strut(Sketch sketch, Spot at, int strutType) {
        String name = names.strutType(strutType);
        Stripes stripes = Stripes.of(strutType);
        double tall = stripes.painted() ? 3.4 + Tally.HEIGHT + 0.9 : 4;
        double width = StrictMath.max(sketch.widthOf(name), Tally.width(stripes)) + 1.2;
        sketch.fill(Ink.PAPER, new Rectangle2D.Double(at.x() - width / 2, at.y() - tall / 2, width, tall));
        double top = at.y() - tall / 2 + 1.9;
        sketch.write(Label.of(name, at.x(), top, Label.Side.MIDDLE));
        Tally.paint(sketch, new Spot(at.x(), at.y() + tall / 2 - Tally.HEIGHT / 2 - 0.3), stripes);
    }
}
