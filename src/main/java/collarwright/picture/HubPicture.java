package collarwright.picture;

import collarwright.collar.CollarBody;
import collarwright.hub.HubStrut;
import collarwright.plan.Plan;
import collarwright.tooling.Placement;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One hub seen from above, from outside the dome: the collar, its struts, the centre ring, hole numbers and the 0° line. A
 * collar that is put on upside down counts the other way round, and says so.
 */
public final class HubPicture implements Picture {

    private static final double MARGIN = 16;

    private final Plan plan;
    private final Placement placement;
    private final List<Placed> struts;
    private final String name;
    private final double width;
    private final Spot centre;
    private final double end;
    private final double scale;

    /**
     * Prepares the picture.
     *
     * @param plan the plan
     * @param hubType index into the hub types
     * @param width mm on paper
     */
    public HubPicture(Plan plan, int hubType, double width) {
        this.plan = plan;
        this.placement = plan.placement(hubType);
        this.struts = placed(plan, hubType);
        this.name = collarwright.units.Ids.letters('H', hubType);
        this.width = width;
        this.centre = new Spot(width / 2, width / 2 - 2);
        this.end = width / 2 - MARGIN;
        this.scale = end / 1.42 / body().outerRadius();
    }

    /** A strut of the hub at the azimuth of the hole it goes into, seen with TOP toward the eye. */
    private record Placed(int number, HubStrut strut) {}

    // As the hub's struts stand on its pattern, from the pattern's 0° line.
    private static List<Placed> placed(Plan plan, int hubType) {
        Placement placement = plan.placement(hubType);
        List<HubStrut> own = plan.hubs().types().get(hubType).struts();
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < own.size(); i++) {
            HubStrut strut = own.get(i);
            int hole = placement.holes().get(i);
            double azimuth = plan.book().patterns().isEmpty()
                    ? placement.onPattern(strut.azimuth())
                    : plan.book()
                            .patterns()
                            .get(placement.pattern())
                            .holes()
                            .get(hole)
                            .azimuth();
            placed.add(new Placed(hole + 1, new HubStrut(strut.strutType(), strut.tip(), azimuth, strut.axialAngle())));
        }
        placed.sort(Comparator.comparingInt(Placed::number));
        return placed;
    }

    private CollarBody body() {
        return plan.job().hub().body();
    }

    @Override
    public double width() {
        return width;
    }

    @Override
    public double height() {
        return width - 4;
    }

    @Override
    public String describe() {
        StringBuilder holes = new StringBuilder();
        for (Placed placed : struts) {
            HubStrut strut = placed.strut();
            holes.append(holes.isEmpty() ? "" : ", ")
                    .append("hole ")
                    .append(placed.number())
                    .append(" at ")
                    .append(Figures.degrees(strut.azimuth()))
                    .append(" takes strut ")
                    .append(strutName(strut));
        }
        String way = placement.flipped()
                ? " seen from above, its collar upside down (TOP inside), counterclockwise from the 0° line: "
                : " seen from above, clockwise from the 0° line: ";
        return "Hub " + name + way + holes + ".";
    }

    private String strutName(HubStrut strut) {
        return plan.struts().types().get(strut.strutType()).idAt(strut.tip());
    }

    @Override
    public void paint(Sketch sketch) {
        struts.forEach(placed -> body(sketch, placed.strut()));
        centreRing(sketch);
        wall(sketch);
        struts.forEach(placed -> hidden(sketch, placed.strut()));
        datum(sketch);
        struts.forEach(placed -> letters(sketch, placed.number(), placed.strut()));
        if (placement.flipped()) {
            sketch.write(Label.of("upside down:", 0, 3, Label.Side.LEFT).strong());
            sketch.write(Label.of("TOP inside", 0, 7, Label.Side.LEFT).strong());
        }
    }

    // As it is drawn.
    private double seen(HubStrut strut) {
        return placement.fromOutside(strut.azimuth());
    }

    // From the middle to hole 1 and on beyond its strut, clear of the letters.
    private void datum(Sketch sketch) {
        double ring = plan.job().hub().ring().outerRadius() * scale;
        sketch.line(Stroking.axis(Ink.DATUM), centre, centre.polar(ring, 0));
        sketch.line(Stroking.axis(Ink.DATUM), centre.polar(end, 0), centre.polar(end + 2.2, 0));
    }

    private Path2D bar(double from, double to, double azimuth) {
        double half = plan.job().strut().stock().od().nominal() / 2 * scale;
        double side = azimuth + StrictMath.PI / 2;
        Spot a = centre.polar(from, azimuth);
        Spot b = centre.polar(to, azimuth);
        return Sketch.chain(
                List.of(a.polar(-half, side), b.polar(-half, side), b.polar(half, side), a.polar(half, side)), true);
    }

    private double inner(HubStrut strut) {
        double setback =
                plan.struts().types().get(strut.strutType()).end(strut.tip()).setback();
        return setback * StrictMath.cos(strut.axialAngle()) * scale;
    }

    private void body(Sketch sketch, HubStrut strut) {
        Path2D bar = bar(inner(strut), end, seen(strut));
        sketch.fill(Ink.PALE, bar);
        sketch.draw(Stroking.edge(), bar);
    }

    private void centreRing(Sketch sketch) {
        var ring = plan.job().hub().ring();
        Path2D.Double shape = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        shape.append(Sketch.circle(centre, ring.outerRadius() * scale), false);
        ring.wall()
                .ifPresent(wall ->
                        shape.append(Sketch.circle(centre, (ring.outerRadius() - wall.nominal()) * scale), false));
        sketch.fill(Ink.TINT, shape);
        sketch.draw(Stroking.edge(), shape);
    }

    private void wall(Sketch sketch) {
        Path2D.Double shape = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        shape.append(Sketch.circle(centre, body().outerRadius() * scale), false);
        shape.append(Sketch.circle(centre, body().innerRadius() * scale), false);
        sketch.fill(Ink.TINT, shape);
        sketch.draw(Stroking.edge(), shape);
    }

    // The strut runs through the wall below the collar's upper edge.
    private void hidden(Sketch sketch, HubStrut strut) {
        double half = plan.job().strut().stock().od().nominal() / 2;
        double side = seen(strut) + StrictMath.PI / 2;
        double from = root(body().innerRadius(), half) * scale;
        double to = root(body().outerRadius(), half) * scale;
        for (double across : new double[] {-half * scale, half * scale}) {
            sketch.line(
                    Stroking.hidden(),
                    centre.polar(from, seen(strut)).polar(across, side),
                    centre.polar(to, seen(strut)).polar(across, side));
        }
    }

    private static double root(double radius, double across) {
        return StrictMath.sqrt(StrictMath.max(0, radius * radius - across * across));
    }

    private void letters(Sketch sketch, int hole, HubStrut strut) {
        double ring = plan.job().hub().ring().outerRadius() * scale;
        Spot number = centre.polar((ring + body().innerRadius() * scale) / 2 + 0.5, seen(strut));
        Badges.number(sketch, number, hole);
        Spot tag = centre.polar((end + body().outerRadius() * scale) / 2, seen(strut));
        sketch.write(
                Label.of(strutName(strut), tag.x(), tag.y(), Label.Side.MIDDLE).strong());
        double out = end + 4 + 5 * StrictMath.abs(StrictMath.sin(seen(strut)));
        Spot angle = centre.polar(out, seen(strut));
        Ink ink = hole == 1 ? Ink.DATUM : Ink.INK;
        sketch.write(Label.of(Figures.degrees(strut.azimuth()), angle.x(), angle.y(), Label.Side.MIDDLE)
                .in(ink));
    }
}
