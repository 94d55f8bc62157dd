package collarwright.picture;

import collarwright.kit.Stripes;
import collarwright.plan.Plan;
import collarwright.strut.StrutType;
import java.util.List;

/** Which stripes and which line each strut type has, shortest first, with its count and length. */
public final class StripesKeyPicture implements Picture {

    private static final double WIDTH = 180;
    private static final double ROW = 7;
    private static final int COLUMNS = 2;

    private final List<StrutType> types;
    private final Figures figures;

    /**
     * Prepares the key.
     *
     * @param plan the plan
     */
    public StripesKeyPicture(Plan plan) {
        this.types = plan.struts().types();
        this.figures = new Figures(plan.job().shop().programUnits());
    }

    /**
     * Tells whether stripes can tell the types apart.
     *
     * @return false where there are more types than anybody counts stripes
     */
    public boolean readable() {
        return types.size() <= Stripes.MOST;
    }

    @Override
    public double width() {
        return WIDTH;
    }

    @Override
    public double height() {
        return rows() * ROW + 1;
    }

    private int rows() {
        return (types.size() + COLUMNS - 1) / COLUMNS;
    }

    @Override
    public String describe() {
        return "Strut types with their stripes: a wide stripe counts for five.";
    }

    @Override
    public void paint(Sketch sketch) {
        int rows = rows();
        for (int i = 0; i < types.size(); i++) {
            StrutType type = types.get(i);
            int column = i / rows;
            double x = column * WIDTH / COLUMNS;
            double y = (i % rows + 0.5) * ROW;
            sketch.line(StrutLines.of(i, types.size()), new Spot(x + 1, y), new Spot(x + 12, y));
            sketch.write(Label.of(type.id(), x + 14, y, Label.Side.LEFT).strong());
            double bars = x + 24 + Tally.width(Stripes.of(i)) / 2;
            Tally.paint(sketch, new Spot(bars, y), Stripes.of(i));
            sketch.write(Label.of(type.count() + " × " + figures.length(type.cut()), x + 40, y, Label.Side.LEFT));
        }
    }
}
