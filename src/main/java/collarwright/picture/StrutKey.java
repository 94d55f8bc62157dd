package collarwright.picture;

import collarwright.plan.Plan;
import collarwright.strut.StrutType;
import java.util.List;

/** The key under a picture of a dome: each strut type's line, name, count and length. */
final class StrutKey {

    /** More types than this stand in the strut table only. */
    private static final int MOST = 24;

    private static final double ROW = 6.5;
    private static final double CELL = 58;

    private final List<StrutType> types;
    private final Figures figures;
    private final double width;

    StrutKey(Plan plan, double width) {
        this.types = plan.struts().types();
        this.figures = new Figures(plan.job().shop().programUnits());
        this.width = width;
    }

    private int columns() {
        return (int) StrictMath.max(1, StrictMath.floor(width / CELL));
    }

    double height() {
        int rows = types.size() > MOST ? 1 : (types.size() + columns() - 1) / columns();
        return rows * ROW + 2;
    }

    void paint(Sketch sketch, double top) {
        if (types.size() > MOST) {
            String text = types.size() + " strut types: see the strut table";
            sketch.write(Label.of(text, 0, top + ROW / 2, Label.Side.LEFT));
            return;
        }
        boolean lines = StrutLines.tellApart(types.size());
        double cell = width / columns();
        for (int i = 0; i < types.size(); i++) {
            StrutType type = types.get(i);
            int row = i / columns();
            Spot at = new Spot(1 + i % columns() * cell, top + (row + 0.5) * ROW);
            if (lines) {
                sketch.line(StrutLines.of(i, types.size()), at, at.plus(13, 0));
                at = at.plus(15, 0);
            }
            sketch.write(Label.of(type.id(), at.x(), at.y(), Label.Side.LEFT).strong());
            String rest = type.count() + " × " + figures.length(type.cut());
            sketch.write(Label.of(rest, at.x() + 2 + sketch.widthOf(type.id()), at.y(), Label.Side.LEFT));
        }
    }
}
