package collarwright.picture;

import collarwright.dome.Dome;
import collarwright.geometry.Vec3;
import collarwright.plan.DomeMeasures;
import collarwright.plan.Plan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The dome as it stands: near struts by type, the far side lighter, floor diameter and height.
 *
 * <p>A parallel view from outside and 16° above the horizon; lengths along the floor's width are true to scale.
 */
public final class DomePicture implements Picture {

    /** Above this many members the lines get finer and the far side is left out. */
    private static final int MANY = 2000;

    private static final double SIDE = 24;
    private static final double TOP = 3;
    private static final double FOOT = 11;

    private final Plan plan;
    private final Dome dome;
    private final DomeMeasures sizes;
    private final DomeView view = DomeView.ofDome();
    private final double width;
    private final StrutKey key;
    private final double scale;
    private final Spot centre;
    private final double lowest;
    private final Vec3 middle;

    /**
     * Prepares the picture.
     *
     * @param plan the plan
     * @param width mm on paper
     */
    public DomePicture(Plan plan, double width) {
        this.plan = plan;
        this.dome = plan.hubs().dome();
        this.sizes = DomeMeasures.of(plan);
        this.width = width;
        this.key = new StrutKey(plan, width);
        this.middle = dome.middle();
        List<Spot> spots =
                IntStream.range(0, dome.nodeCount()).mapToObj(this::bare).toList();
        double left = spots.stream().mapToDouble(Spot::x).min().orElseThrow();
        double right = spots.stream().mapToDouble(Spot::x).max().orElseThrow();
        double high = spots.stream().mapToDouble(Spot::y).min().orElseThrow();
        double low = spots.stream().mapToDouble(Spot::y).max().orElseThrow();
        this.scale = (width - SIDE - 4) / (right - left);
        this.centre = new Spot(2 - left * scale, TOP - high * scale);
        this.lowest = TOP + (low - high) * scale;
    }

    private Spot bare(int node) {
        return view.spot(dome.node(node));
    }

    private Spot spot(Vec3 point) {
        Spot bare = view.spot(point);
        return centre.plus(bare.x() * scale, bare.y() * scale);
    }

    private boolean standing() {
        return sizes.floorDiameter().isPresent();
    }

    @Override
    public double width() {
        return width;
    }

    @Override
    public double height() {
        return lowest + (standing() ? FOOT : 4) + key.height();
    }

    @Override
    public String describe() {
        Figures figures = new Figures(plan.job().shop().programUnits());
        String size = standing()
                ? "floor diameter " + figures.span(sizes.floorDiameter().getAsDouble()) + ", height "
                        + figures.span(sizes.height())
                : (sizes.radius().isPresent() ? "diameter " : "height ") + figures.span(sizes.height());
        return "The dome seen from outside: " + dome.nodeCount() + " hubs, " + dome.memberCount() + " struts of "
                + plan.struts().types().size() + " types, " + size + ", to the nodes.";
    }

    @Override
    public void paint(Sketch sketch) {
        boolean many = dome.memberCount() > MANY;
        int types = plan.struts().types().size();
        boolean apart = !many && StrutLines.tellApart(types);
        MemberPaths near = new MemberPaths(apart ? types : 1);
        MemberPaths far = new MemberPaths(1);
        for (int m = 0; m < dome.memberCount(); m++) {
            Spot a = spot(dome.node(dome.memberA(m)));
            Spot b = spot(dome.node(dome.memberB(m)));
            if (facing(m) >= 0) {
                near.add(apart ? plan.hubs().strutTypeOf(m) : 0, a, b);
            } else if (!many) {
                far.add(0, a, b);
            }
        }
        far.draw(sketch, type -> Stroking.solid(Stroking.FINE, Ink.FAR));
        near.draw(sketch, type -> many ? Stroking.solid(Stroking.FINE, Ink.INK) : StrutLines.of(type, types));
        if (!many) {
            hubs(sketch);
            tags(sketch);
        }
        dimensions(sketch);
        key.paint(sketch, height() - key.height());
    }

    private double facing(int member) {
        return view.facing(dome, member);
    }

    private void hubs(Sketch sketch) {
        for (int node = 0; node < dome.nodeCount(); node++) {
            boolean near = dome.node(node).minus(middle).dot(view.toEye()) > -1e-9;
            sketch.fill(near ? Ink.INK : Ink.FAR, Sketch.circle(spot(dome.node(node)), near ? 0.9 : 0.5));
        }
    }

    // Names on the struts that face the eye, as far as there is room.
    private void tags(Sketch sketch) {
        List<Integer> facing = new ArrayList<>();
        for (int m = 0; m < dome.memberCount(); m++) {
            if (facing(m) > 0.72) {
                facing.add(m);
            }
        }
        facing.sort(Comparator.comparingDouble((Integer m) -> -facing(m)).thenComparing(m -> m));
        for (int m : facing) {
            Spot a = spot(dome.node(dome.memberA(m)));
            Spot b = spot(dome.node(dome.memberB(m)));
            String name = plan.struts().types().get(plan.hubs().strutTypeOf(m)).id();
            double length = StrictMath.hypot(a.x() - b.x(), a.y() - b.y());
            if (length > 2.8 * sketch.widthOf(name)) {
                Spot at = a.middle(b);
                sketch.writeIfFree(
                        Label.of(name, at.x(), at.y(), Label.Side.MIDDLE).onPaper(), 1);
            }
        }
    }

    private Vec3 at(double z) {
        return new Vec3(middle.x(), middle.y(), z);
    }

    private double widest() {
        return IntStream.range(0, dome.nodeCount())
                .mapToDouble(node -> StrictMath.hypot(dome.x(node) - middle.x(), dome.y(node) - middle.y()))
                .max()
                .orElseThrow();
    }

    private void dimensions(Sketch sketch) {
        Figures figures = new Figures(plan.job().shop().programUnits());
        double foot = dome.lowestZ();
        double half = (standing() ? dome.footRadius() : widest()) * scale;
        if (standing()) {
            double y = lowest + 5;
            Dimensions.across(
                    sketch,
                    new Spot(centre.x() - half, y),
                    new Spot(centre.x() + half, y),
                    "floor Ø " + figures.span(sizes.floorDiameter().getAsDouble()));
            sketch.line(Stroking.thin(), spot(at(foot)).plus(-half, 0), new Spot(centre.x() - half, y + 1));
            sketch.line(Stroking.thin(), spot(at(foot)).plus(half, 0), new Spot(centre.x() + half, y + 1));
        }
        Spot apex = spot(at(dome.highestZ()));
        Spot floor = spot(at(foot));
        double x = width - 15;
        sketch.line(Stroking.thin(), apex.plus(3, 0), new Spot(x + 1.5, apex.y()));
        sketch.line(Stroking.thin(), floor.plus(half + 2, 0), new Spot(x + 1.5, floor.y()));
        Dimensions.upright(sketch, new Spot(x, apex.y()), new Spot(x, floor.y()), figures.span(sizes.height()));
    }
}
