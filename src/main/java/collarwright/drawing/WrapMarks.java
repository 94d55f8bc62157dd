package collarwright.drawing;

import collarwright.units.Angles;
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
    private static final double LONG_TICK = 5;
    private static final double TICK = 3;
    private static final double NEAR_END = 1.5;
    private static final double AROUND_LINE = 0.6;
    private static final double[] NUMBER_HEIGHTS = {7, 6, 5, 4, 3.5, 3, 2.5};
    private static final double[] SIZE_HEIGHTS = {4, 3.5, 3, 2.5};
    private static final double[] NAME_HEIGHTS = {7, 6, 5, 4, 3.5, 3};
    private static final double[] SMALL_NAME_HEIGHTS = {5, 4, 3.5, 3, 2.5, 2};
    private static final double[] TEXT_HEIGHTS = {3.5, 3, 2.5};
    private static final double[] TOP_HEIGHTS = {6, 5, 4, 3.5, 3, 2.5, 2};

    private final WrapTemplate template;
    private final Drawing drawing = new Drawing();
    private final FreeSpace space;
    private final Lettering letters;
    private final List<FreeSpace.Placed> holes;
    private final double length;
    private final double width;
    private final double zero;

    private WrapMarks(WrapTemplate template) {
        this.template = template;
        this.length = template.length();
        this.width = template.settings().body().width();
        this.zero = template.zeroFromLeftEnd();
        this.holes = template.holes().stream()
                .map(h -> new FreeSpace.Placed(
                        h.outline(),
                        new Point(h.fromLeftEnd(), width / 2 + h.hole().height())))
                .toList();
        this.space = new FreeSpace(new Box(0, 0, length, width), holes);
        this.letters = new Lettering(drawing, space);
    }

    /**
     * Draws the wrap.
     *
     * @throws IllegalArgumentException if there is no room for a mark that has to be there
     */
    static Drawing draw(WrapTemplate template) {
        WrapMarks marks = new WrapMarks(template);
        marks.cuts();
        marks.ends();
        marks.holes.forEach(marks::pilot);
        List<String> rest = marks.lettersInHoles();
        marks.zeroLine();
        marks.degrees();
        marks.flag();
        marks.tops();
        marks.lettersBesideHoles(rest);
        marks.names();
        return marks.drawing;
    }

    private void cuts() {
        drawing.add(Role.CUT_OUTSIDE, Path.rectangle(new Box(0, 0, length, width)));
        for (FreeSpace.Placed hole : holes) {
            Path outline = Path.straight(hole.outline().corners(CHORD_ERROR), true);
            Point centre = hole.centre();
            drawing.add(Role.CUT_INSIDE, outline.moved(centre.x(), centre.y()));
        }
    }

    // Short marks at both ends on the mid-plane: they have to meet when the paper is wrapped square.
    private void ends() {
        mark(Line.of(0, width / 2, FLAG, width / 2));
        mark(Line.of(length - FLAG, width / 2, length, width / 2));
        space.take(new Box(0, width / 2, FLAG, width / 2), AROUND_LINE);
        space.take(new Box(length - FLAG, width / 2, length, width / 2), AROUND_LINE);
    }

    private void pilot(FreeSpace.Placed hole) {
        double x = hole.centre().x();
        double y = hole.centre().y();
        double arm = arm(hole);
        // A circle, not an unrolled path: at this size the two differ by less than a pencil line.
        mark(new Circle(hole.centre(), pilotRadius(hole)));
        mark(Line.of(x - arm, y, x + arm, y));
        // On the 0° line the line itself is the upright arm.
        if (x != zero) {
            mark(Line.of(x, y - arm, x, y + arm));
        }
        space.take(new Box(x - arm, y - arm, x + arm, y + arm), AROUND_LINE);
    }

    private static double pilotRadius(FreeSpace.Placed hole) {
        return StrictMath.min(PILOT, hole.outline().holeRadius() / 4);
    }

    private static double arm(FreeSpace.Placed hole) {
        return pilotRadius(hole) + StrictMath.min(ARM, hole.outline().holeRadius() / 8);
    }

    // Returns for each hole what found no room inside; empty if all did.
    private List<String> lettersInHoles() {
        List<String> beside = new ArrayList<>();
        for (int i = 0; i < holes.size(); i++) {
            FreeSpace.Placed hole = holes.get(i);
            HoleWords of = HoleWords.of(template.holes().get(i));
            double from = arm(hole) + 1;
            boolean numbered = letters.setInside(hole, of.number(), NUMBER_HEIGHTS, from);
            boolean sized = letters.setInside(hole, of.marked(), SIZE_HEIGHTS, -from);
            boolean drilled = sized && letters.setInside(hole, of.drills(), SIZE_HEIGHTS, -from);
            String rest = (sized ? "" : " " + of.marked()) + (drilled ? "" : " " + of.drills());
            beside.add(numbered && rest.isEmpty() ? "" : of.number() + ":" + rest);
        }
        return beside;
    }

    /** What is written about a hole. */
    private record HoleWords(String number, String marked, String drills) {
        static HoleWords of(WrapHole hole) {
            return new HoleWords(
                    Integer.toString(hole.hole().number()),
                    PlainText.strokes(hole.hole().cutter().marked()),
                    "drills " + Decimals.trimmed(hole.hole().diameter(), 2));
        }
    }

    private void lettersBesideHoles(List<String> texts) {
        for (int i = 0; i < holes.size(); i++) {
            String text = texts.get(i);
            if (!text.isEmpty() && !besideHole(holes.get(i), text)) {
                throw new IllegalArgumentException("no room on the collar for the letters of hole " + text);
            }
        }
    }

    private boolean besideHole(FreeSpace.Placed hole, String text) {
        double below = hole.centre().y() - hole.outline().holeRadius() - 1.5;
        for (double height : SMALL_NAME_HEIGHTS) {
            Label label = Label.centred(
                    text, StrictMath.min(height, 3.5), hole.centre().x(), below - height);
            if (letters.setNear(label, 2 * hole.outline().halfWidth() + 2 * height)) {
                return true;
            }
        }
        return false;
    }

    private void zeroLine() {
        double y = 0;
        for (Box gap : letters.crossedBy(zero)) {
            mark(Line.of(zero, y, zero, gap.bottom()));
            y = gap.top();
        }
        mark(Line.of(zero, y, zero, width));
        space.take(new Box(zero, 0, zero, width), AROUND_LINE);
    }

    private void degrees() {
        for (int degree = 10; degree < 360; degree += 10) {
            double x = template.fromLeftEnd(Angles.radians(degree));
            double tick = degree % 30 == 0 ? LONG_TICK : TICK;
            tick(x, width - tick, width);
            tick(x, 0, tick - 1);
        }
        for (double height : new double[] {4, 3.5, 3, 2.5, 2}) {
            Label label = Label.of("0°", height, zero + 1.5, width - 1.5 - height);
            if (letters.setIfFree(label) || letters.setNear(label, 4)) {
                break;
            }
        }
        for (int degree = 30; degree < 360; degree += 30) {
            degree(degree);
        }
    }

    private void degree(int degree) {
        double x = template.fromLeftEnd(Angles.radians(degree));
        for (double height : TEXT_HEIGHTS) {
            if (letters.setIfFree(Label.centred(degree + "°", height, x, width - LONG_TICK - 1 - height))) {
                return;
            }
        }
    }

    private void tick(double x, double from, double to) {
        Box box = new Box(x, from, x, to);
        // Too near to an end it would be taken for the end.
        boolean atEnd = x < NEAR_END || x > length - NEAR_END;
        if (!atEnd && holes.stream().noneMatch(hole -> hole.meets(box))) {
            mark(Line.of(x, from, x, to));
            space.take(box, AROUND_LINE);
        }
    }

    // Hangs on the 0° line and points the way azimuth grows; nothing else on the wrap is so lopsided.
    private void flag() {
        for (double size = FLAG; size >= 2; size--) {
            double tip = zero - 1.4 * size;
            for (double y = 1; y + size < width; y += 0.5) {
                Box box = new Box(tip, y, zero - AROUND_LINE - 0.1, y + size);
                if (space.isFree(box)) {
                    List<Point> corners = List.of(new Point(zero, y + size), new Point(tip, y), new Point(zero, y));
                    mark(Path.straight(corners, false));
                    space.take(box, AROUND_LINE);
                    return;
                }
            }
        }
    }

    // One in every web that has room, so that every page of a split print shows which way is up.
    private void tops() {
        List<Double> axes =
                template.holes().stream().map(WrapHole::fromLeftEnd).sorted().toList();
        List<Double> middles = new ArrayList<>();
        for (int i = 0; i + 1 < axes.size(); i++) {
            middles.add((axes.get(i) + axes.get(i + 1)) / 2);
        }
        middles.add(axes.get(0) / 2);
        middles.add((axes.get(axes.size() - 1) + length) / 2);
        double reach = length / (4.0 * axes.size());
        long placed = middles.stream().filter(x -> top(x, reach, width / 4)).count();
        if (placed == 0 && !top(length / 2, length, width)) {
            throw new IllegalArgumentException("no room on the collar for TOP");
        }
    }

    private boolean top(double x, double reach, double down) {
        for (double height : TOP_HEIGHTS) {
            double head = height / 2;
            double wide = StrokeFont.width("TOP", height) + 1.5 + 2 * head;
            // Under the row of degrees.
            double up = width - LONG_TICK - 6;
            Box best = new Box(x - wide / 2, up - height - 1, x + wide / 2, up);
            Optional<Box> box = space.nearest(best, reach, down);
            if (box.isPresent()) {
                top(box.get(), height, head);
                return true;
            }
        }
        return false;
    }

    private void top(Box box, double height, double head) {
        double shaft = box.left() + head;
        double low = box.top() - 1.2 * head;
        mark(Line.of(shaft, box.bottom(), shaft, box.top()));
        mark(Path.straight(
                List.of(new Point(shaft - head, low), new Point(shaft, box.top()), new Point(shaft + head, low)),
                false));
        mark(Label.of("TOP", height, shaft + head + 1.5, box.bottom()));
        space.takeLetters(box);
    }

    private void names() {
        WrapSettings settings = template.settings();
        String id = PlainText.strokes(settings.pattern().id());
        String revision = "rev " + PlainText.strokes(settings.order().revision());
        Point right = new Point(zero + 4, 6);
        if (!letters.setPairNear(id, revision, NAME_HEIGHTS, right, length / 2)) {
            required(id);
            required(revision);
        }
        String seam = "seam " + Decimals.trimmed(Angles.degrees(template.seam().azimuth()), 1) + "°";
        end(seam, true);
        end(seam, false);
        instruction(PlainText.strokes(settings.order().title()));
    }

    private void required(String text) {
        for (double height : SMALL_NAME_HEIGHTS) {
            if (letters.setNear(Label.of(text, height, zero + 4, 6), length)) {
                return;
            }
        }
        throw new IllegalArgumentException("no room on the collar for " + text);
    }

    // The title is on the sheet beside the wrap too; on a crowded wrap it gives way.
    private void instruction(String title) {
        String text = "wrap outside, this face out, TOP up";
        double[] usual = {3.5, 3};
        Point left = new Point(zero - 12 - StrokeFont.width(text, 3.5), 7);
        if (!title.isBlank() && letters.setPairNear(text, title, usual, left, length / 2)) {
            return;
        }
        if (!letters.setNear(Label.of(text, usual[0], left.x(), left.y()), length / 2)) {
            letters.setPairNear("wrap outside,", "this face out, TOP up", TEXT_HEIGHTS, left, length / 2);
        }
    }

    // Along the ends, so that the same words meet at the seam.
    private void end(String text, boolean left) {
        for (double height : TEXT_HEIGHTS) {
            double base = left ? height + 1.5 : length - 1.5;
            Point at = new Point(base, (width / 2 - StrokeFont.width(text, height)) / 2);
            if (letters.setNear(new Label(text, at, height, StrictMath.PI / 2), 2)) {
                return;
            }
        }
    }

    private void mark(Shape shape) {
        drawing.add(Role.MARK, shape);
    }
}
