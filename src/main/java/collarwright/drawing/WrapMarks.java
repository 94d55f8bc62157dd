package collarwright.drawing;

import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Draws what is on the wrap itself, in the frame of the wrap. Used once, for one template. */
final class WrapMarks {
    /** The most by which a straight piece of an outline may stray from the true curve. */
    static final double CHORD_ERROR = 0.01;

    private static final double PILOT = 3;
    private static final double ARM = 2;
    private static final double FLAG = 5;
    private static final double[] NUMBER_HEIGHTS = {7, 6, 5, 4, 3.5, 3, 2.5};
    private static final double[] SIZE_HEIGHTS = {4, 3.5, 3, 2.5};
    private static final double[] NAME_HEIGHTS = {7, 6, 5, 4, 3.5, 3, 2.5, 2};
    private static final double[] TEXT_HEIGHTS = {3.5, 3, 2.5, 2};
    private static final double[] TOP_HEIGHTS = {6, 5, 4, 3.5, 3, 2.5, 2};

    private final WrapTemplate template;
    private final Drawing drawing = new Drawing();
    private final FreeSpace space;
    private final List<FreeSpace.Placed> holes;
    private final double width;
    private final double zero;
    // Where the 0° line has to make way for lettering: pairs of y.
    private final List<Box> breaks = new ArrayList<>();

    private WrapMarks(WrapTemplate template) {
        this.template = template;
        this.width = template.settings().body().width();
        this.zero = template.zeroFromLeftEnd();
        this.holes = template.holes().stream()
                .map(h -> new FreeSpace.Placed(
                        h.outline(), new Point(h.fromLeftEnd(), width / 2 + h.hole().height())))
                .toList();
        this.space = new FreeSpace(new Box(0, 0, template.length(), width), holes);
    }

    static Drawing draw(WrapTemplate template) {
        WrapMarks marks = new WrapMarks(template);
        marks.cuts();
        marks.edges();
        marks.holes.forEach(marks::pilot);
        marks.lettersOfHoles();
        marks.zeroLine();
        marks.degrees();
        marks.flag();
        marks.tops();
        marks.names();
        return marks.drawing;
    }

    private void cuts() {
        drawing.add(Role.CUT_OUTSIDE, Path.rectangle(new Box(0, 0, template.length(), width)));
        for (FreeSpace.Placed hole : holes) {
            Path outline = Path.straight(hole.outline().corners(CHORD_ERROR), true);
            drawing.add(
                    Role.CUT_INSIDE,
                    outline.moved(hole.centre().x(), hole.centre().y()));
        }
    }

    // Short marks at both ends on the mid-plane: they have to meet when the paper is wrapped square.
    private void edges() {
        double length = template.length();
        mark(Line.of(0, width / 2, FLAG, width / 2));
        mark(Line.of(length - FLAG, width / 2, length, width / 2));
        space.take(new Box(0, width / 2, FLAG, width / 2));
        space.take(new Box(length - FLAG, width / 2, length, width / 2));
    }

    private void pilot(FreeSpace.Placed hole) {
        double x = hole.centre().x();
        double y = hole.centre().y();
        double radius = pilotRadius(hole);
        double arm = armLength(hole);
        // A circle, not an unrolled path: at this size the two differ by less than a pencil line.
        mark(new Circle(hole.centre(), radius));
        mark(Line.of(x - arm, y, x + arm, y));
        if (x != zero) {
            mark(Line.of(x, y - arm, x, y + arm));
        }
        space.take(new Box(x - arm, y - arm, x + arm, y + arm));
    }

    private static double pilotRadius(FreeSpace.Placed hole) {
        return StrictMath.min(PILOT, hole.outline().holeRadius() / 4);
    }

    private static double armLength(FreeSpace.Placed hole) {
        return pilotRadius(hole) + StrictMath.min(ARM, hole.outline().holeRadius() / 8);
    }

    private void lettersOfHoles() {
        for (int i = 0; i < holes.size(); i++) {
            FreeSpace.Placed hole = holes.get(i);
            WrapHole of = template.holes().get(i);
            String number = Integer.toString(of.hole().number());
            String marked = PlainText.strokes(of.hole().cutter().marked());
            String drills = "drills " + Decimals.trimmed(of.hole().diameter(), 2);
            double arm = armLength(hole);
            boolean numbered = inside(hole, number, NUMBER_HEIGHTS, arm + 1, true);
            boolean sized = inside(hole, marked, SIZE_HEIGHTS, -arm - 1, false);
            boolean drilled = sized && inside(hole, drills, SIZE_HEIGHTS, -arm - 1, false);
            String rest = (numbered ? "" : number) + (sized ? "" : " " + marked) + (drilled ? "" : " " + drills);
            if (!rest.isEmpty()) {
                outside(hole, (numbered ? number + ":" : "") + rest);
            }
        }
    }

    // Tries a line of letters inside a hole, above or below its cross, as large as fits.
    private boolean inside(FreeSpace.Placed hole, String text, double[] heights, double from, boolean above) {
        double x = hole.centre().x();
        for (double height : heights) {
            for (double d = 0; d <= 2 * height; d += 0.5) {
                double base = hole.centre().y() + (above ? from + d : from - height - d);
                Label label = Label.centred(text, height, x, base);
                if (space.isFreeInside(hole, label.bounds())) {
                    letter(label);
                    return true;
                }
            }
        }
        return false;
    }

    private void outside(FreeSpace.Placed hole, String text) {
        double below = hole.centre().y() - hole.outline().holeRadius();
        for (double height : TEXT_HEIGHTS) {
            Label label = Label.centred(text, height, hole.centre().x(), below - height - 2);
            Optional<Box> box = space.nearest(label.bounds(), 2 * hole.outline().halfWidth());
            if (box.isPresent()) {
                letter(fitted(label, box.get()));
                return;
            }
        }
        throw new IllegalArgumentException("no room on the collar for the letters of a hole: " + text);
    }

    private void zeroLine() {
        double y = 0;
        List<Box> crossed = breaks.stream()
                .filter(b -> b.left() <= zero && zero <= b.right())
                .sorted(java.util.Comparator.comparingDouble(Box::bottom))
                .toList();
        for (Box gap : crossed) {
            mark(Line.of(zero, y, zero, gap.bottom()));
            y = gap.top();
        }
        mark(Line.of(zero, y, zero, width));
        space.take(new Box(zero, 0, zero, width));
    }

    private void degrees() {
        for (int degree = 10; degree < 360; degree += 10) {
            tick(degree);
        }
        // The 0 stands beside its line, larger than the rest.
        firstFit(new double[] {4, 3.5, 3, 2.5, 2}, height -> {
            Label label = Label.of("0°", height, zero + 1.2, width - 1.5 - height);
            return space.isFree(label.bounds()) ? Optional.of(label) : roomBeside(label);
        });
    }

    private Optional<Label> roomBeside(Label label) {
        return space.nearest(label.bounds(), 4).map(box -> fitted(label, box));
    }

    private void tick(int degree) {
        boolean long30 = degree % 30 == 0;
        double x = template.fromLeftEnd(collarwright.units.Angles.radians(degree));
        double length = long30 ? 5 : 3;
        tickAt(x, width - length, width);
        tickAt(x, 0, length - 1);
        if (long30) {
            String text = degree + "°";
            for (double height : new double[] {3.5, 3, 2.5}) {
                Label label = Label.centred(text, height, x, width - length - 1 - height);
                if (space.isFree(label.bounds())) {
                    letter(label);
                    return;
                }
            }
        }
    }

    private void tickAt(double x, double from, double to) {
        Box box = new Box(x, from, x, to);
        if (holes.stream().noneMatch(h -> h.meets(box))) {
            mark(Line.of(x, from, x, to));
            space.take(box);
        }
    }

    // Hangs on the 0° line and points the way azimuth grows; nothing else on the wrap is so lopsided.
    private void flag() {
        for (double size = FLAG; size >= 2; size--) {
            for (double y = 1; y + size < width; y += 0.5) {
                Box box = new Box(zero - 1.4 * size, y, zero - 0.7, y + size);
                if (space.isFree(box)) {
                    mark(Path.straight(
                            List.of(
                                    new Point(zero, y),
                                    new Point(zero, y + size),
                                    new Point(zero - 1.4 * size, y)),
                            false));
                    mark(Line.of(zero - 1.4 * size, y, zero, y));
                    space.take(box);
                    return;
                }
            }
        }
    }

    // One in every web that has room, so that every page of a split print shows which way is up.
    private void tops() {
        List<Double> webs = template.holes().stream()
                .map(WrapHole::fromLeftEnd)
                .sorted()
                .toList();
        List<Double> middles = new ArrayList<>();
        for (int i = 0; i < webs.size() - 1; i++) {
            middles.add((webs.get(i) + webs.get(i + 1)) / 2);
        }
        middles.add(webs.get(0) / 2);
        middles.add((webs.get(webs.size() - 1) + template.length()) / 2);
        double reach = template.length() / (4.0 * webs.size());
        long placed = middles.stream().filter(x -> top(x, reach)).count();
        if (placed == 0 && !top(template.length() / 2, template.length())) {
            throw new IllegalArgumentException("no room on the collar for TOP");
        }
    }

    private boolean top(double x, double reach) {
        for (double height : TOP_HEIGHTS) {
            double arrow = 0.5 * height;
            double wide = StrokeFont.width("TOP", height) + 1.5 + 2 * arrow;
            Box best = new Box(x - wide / 2, width - 7 - height, x + wide / 2, width - 6);
            Optional<Box> box = space.nearest(best, reach);
            if (box.isPresent()) {
                Box b = box.get();
                double shaft = b.left() + arrow;
                mark(Line.of(shaft, b.bottom(), shaft, b.top()));
                mark(Path.straight(
                        List.of(
                                new Point(shaft - arrow, b.top() - 1.2 * arrow),
                                new Point(shaft, b.top()),
                                new Point(shaft + arrow, b.top() - 1.2 * arrow)),
                        false));
                mark(Label.of("TOP", height, shaft + arrow + 1.5, b.bottom()));
                space.take(b);
                return true;
            }
        }
        return false;
    }

    private void names() {
        WrapSettings settings = template.settings();
        named(PlainText.strokes(settings.pattern().id()), NAME_HEIGHTS, 14);
        named("rev " + PlainText.strokes(settings.order().revision()), TEXT_HEIGHTS, 7);
        String seam = "seam " + Decimals.trimmed(collarwright.units.Angles.degrees(template.seam().azimuth()), 1) + "°";
        end(seam, 0);
        end(seam, template.length());
        optional("wrap outside, this face out, TOP up");
        optional(PlainText.strokes(settings.order().title()));
    }

    // As near to the right of the 0° line and to the lower edge as there is room.
    private void named(String text, double[] heights, double up) {
        for (double height : heights) {
            Label label = Label.of(text, height, zero + 4, up);
            Optional<Box> box = space.nearest(label.bounds(), template.length() / 4);
            if (box.isPresent()) {
                letter(fitted(label, box.get()));
                return;
            }
        }
        throw new IllegalArgumentException("no room on the collar for " + text);
    }

    private void optional(String text) {
        if (text.isBlank()) {
            return;
        }
        for (double height : TEXT_HEIGHTS) {
            Label label = Label.centred(text, height, template.length() / 2, 6);
            Optional<Box> box = space.nearest(label.bounds(), template.length() / 2);
            if (box.isPresent()) {
                letter(fitted(label, box.get()));
                return;
            }
        }
    }

    // Along the ends, so that the same words meet at the seam.
    private void end(String text, double x) {
        for (double height : TEXT_HEIGHTS) {
            double long90 = StrokeFont.width(text, height);
            double base = x == 0 ? height + 1.5 : x - 1.5;
            Label label = new Label(text, new Point(base, (width - long90) / 2), height, StrictMath.PI / 2);
            Optional<Box> box = space.nearest(label.bounds(), 2);
            if (box.isPresent()) {
                letter(fitted(label, box.get()));
                return;
            }
        }
    }

    private static Label fitted(Label label, Box box) {
        Box was = label.bounds();
        return label.moved(box.left() - was.left(), box.bottom() - was.bottom());
    }

    private void firstFit(double[] heights, java.util.function.DoubleFunction<Optional<Label>> at) {
        for (double height : heights) {
            Optional<Label> label = at.apply(height);
            if (label.isPresent()) {
                letter(label.get());
                return;
            }
        }
    }

    private void letter(Label label) {
        mark(label);
        Box box = label.bounds();
        space.take(box);
        breaks.add(box.grown(0.8));
    }

    private void mark(Shape shape) {
        drawing.add(Role.MARK, shape);
    }
}
