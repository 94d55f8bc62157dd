package collarwright.picture;

import collarwright.cutting.CuttingTask;
import collarwright.cutting.StickLayout;
import collarwright.units.Decimals;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What is cut from one stick, with a box to tick for each stick that is cut like it. Lengths along the stick, cuts too, are
 * to scale, but a cut is never thinner than a line; the stick's width is not. The first end is on the left.
 */
public final class CutStickPicture implements Picture {

    private static final double TOP = 1;
    private static final double HIGH = 9;
    private static final double LEVEL = 5.2;
    private static final double BOX = 4.6;
    private static final double PITCH = 6.2;
    private static final int ROW = 25;
    private static final int MOST_BOXES = 2 * ROW;

    /** Wider than a letter of a label is in the mean, so that labels keep clear of each other. */
    private static final double LETTER = 2.5;

    /** Pieces narrower than this on paper are not drawn one by one. */
    private static final double NARROWEST = 0.7;

    private final StickLayout layout;
    private final double width;
    private final boolean inches;
    private final double scale;
    private final List<Group> groups = new ArrayList<>();
    private final List<Below> below = new ArrayList<>();

    private record Group(String id, int count, double from, double pitch, double length, double to) {}

    private record Below(String text, double from, double to, double middle, int level) {}

    /**
     * Prepares the picture.
     *
     * @param task what is cut, and what the saw takes
     * @param layout one of its plan's layouts
     * @param width mm on paper
     * @param inches whether trim and rest are told in inches, else in mm
     */
    public CutStickPicture(CuttingTask task, StickLayout layout, double width, boolean inches) {
        this.inches = inches;
        this.layout = layout;
        this.width = width;
        this.scale = (width - 1) / layout.sums().length();
        double at = layout.sums().trim();
        for (StickLayout.Portion portion : layout.portions()) {
            double length = task.pieces().get(portion.piece()).length();
            double pitch = length + task.saw().kerf();
            double to = at + portion.count() * pitch - task.saw().kerf();
            groups.add(new Group(task.pieces().get(portion.piece()).id(), portion.count(), at, pitch, length, to));
            at = to + task.saw().kerf();
        }
        label();
    }

    /**
     * Tells how many sticks one box to tick stands for.
     *
     * @return 1, or more where there are more sticks than boxes
     */
    public int sticksPerBox() {
        return (layout.runs() + MOST_BOXES - 1) / MOST_BOXES;
    }

    private int boxes() {
        return (layout.runs() + sticksPerBox() - 1) / sticksPerBox();
    }

    private double x(double along) {
        return 0.5 + along * scale;
    }

    private void label() {
        double trim = layout.sums().trim();
        if (trim > 0) {
            below("trim " + size(trim), 0, trim);
        }
        for (Group group : groups) {
            if (!named(group)) {
                below(group.count + " × " + group.id, group.from, group.to);
            }
        }
        double rest = layout.sums().remainder();
        if (rest > 0) {
            below(
                    "rest " + size(rest),
                    layout.sums().length() - rest,
                    layout.sums().length());
        }
    }

    private void below(String text, double from, double to) {
        double half = text.length() * LETTER / 2;
        double middle = StrictMath.max(half + 0.5, StrictMath.min(width - half - 0.5, (x(from) + x(to)) / 2));
        int level = 0;
        boolean free = false;
        while (!free) {
            int tried = level;
            free = below.stream()
                    .noneMatch(b -> b.level == tried
                            && StrictMath.abs(b.middle - middle) < half + b.text.length() * LETTER / 2 + 1);
            level += free ? 0 : 1;
        }
        below.add(new Below(text, from, to, middle, level));
    }

    private boolean named(Group group) {
        return group.length * scale > group.id.length() * 3 + 1.2;
    }

    private int levels() {
        return below.stream().mapToInt(b -> b.level + 1).max().orElse(0);
    }

    private double boxesTop() {
        return TOP + HIGH + 3 + levels() * LEVEL;
    }

    @Override
    public double width() {
        return width;
    }

    @Override
    public double height() {
        int rows = (boxes() + ROW - 1) / ROW;
        return boxesTop() + PITCH * rows + 1;
    }

    @Override
    public String describe() {
        return "A stick of " + mm(layout.sums().length()) + " mm, from its first end: "
                + groups.stream().map(g -> g.count + " × " + g.id).collect(Collectors.joining(", ")) + ", rest "
                + mm(layout.sums().remainder()) + " mm. " + layout.runs() + " sticks are cut like this.";
    }

    @Override
    public void paint(Sketch sketch) {
        StickLayout.Sums sums = layout.sums();
        Rectangle2D stick = area(0, sums.length());
        sketch.fill(Ink.PALE, stick);
        if (sums.trim() > 0) {
            Hatching.cut(sketch, area(0, sums.trim()));
        }
        if (sums.remainder() > 0) {
            Hatching.cut(sketch, area(sums.length() - sums.remainder(), sums.length()));
        }
        groups.forEach(group -> pieces(sketch, group));
        sketch.draw(Stroking.edge(), stick);
        below.forEach(b -> underline(sketch, b));
        boxes(sketch);
    }

    private Rectangle2D area(double from, double to) {
        return new Rectangle2D.Double(x(from), TOP, (to - from) * scale, HIGH);
    }

    private void pieces(Sketch sketch, Group group) {
        double end = layout.sums().length() - layout.sums().remainder();
        boolean drawn = group.pitch * scale >= NARROWEST;
        for (int i = drawn ? 0 : group.count - 1; i < group.count; i++) {
            double from = group.from + i * group.pitch;
            cut(sketch, from + group.length, StrictMath.min(end, from + group.pitch));
            if (named(group)) {
                double middle = x(from + group.length / 2);
                sketch.write(Label.of(group.id, middle, TOP + HIGH / 2, Label.Side.MIDDLE)
                        .strong());
            }
        }
    }

    private void cut(Sketch sketch, double from, double to) {
        double wide = StrictMath.max(0, (to - from) * scale);
        if (wide > Stroking.NARROW) {
            sketch.fill(Ink.INK, new Rectangle2D.Double(x(from), TOP, wide, HIGH));
        } else {
            sketch.line(
                    Stroking.solid(Stroking.NARROW, Ink.INK), new Spot(x(from), TOP), new Spot(x(from), TOP + HIGH));
        }
    }

    private void underline(Sketch sketch, Below b) {
        double low = TOP + HIGH + 1.6;
        sketch.line(Stroking.thin(), new Spot(x(b.from), low), new Spot(x(b.to), low));
        double y = low + 3 + b.level * LEVEL;
        if (b.level > 0) {
            double at = (x(b.from) + x(b.to)) / 2;
            boolean free = below.stream()
                    .noneMatch(o ->
                            o.level < b.level && StrictMath.abs(o.middle - at) < o.text.length() * LETTER / 2 + 0.5);
            if (free) {
                sketch.line(Stroking.thin(), new Spot(at, low), new Spot(at, y - 2.2));
            }
        }
        sketch.write(Label.of(b.text, b.middle, y, Label.Side.MIDDLE));
    }

    private void boxes(Sketch sketch) {
        Path2D.Double all = new Path2D.Double();
        for (int i = 0; i < boxes(); i++) {
            int place = i % ROW;
            int five = place / 5;
            int row = i / ROW;
            double left = 0.5 + place * PITCH + five * 3.0;
            double top = boxesTop() + row * PITCH;
            all.append(new Rectangle2D.Double(left, top, BOX, BOX), false);
        }
        sketch.draw(Stroking.solid(Stroking.NARROW, Ink.INK), all);
    }

    private String size(double length) {
        return inches ? Decimals.fixed(length / 25.4, 3) + " in" : mm(length) + " mm";
    }

    private static String mm(double length) {
        return Decimals.trimmed(length, 3);
    }
}
