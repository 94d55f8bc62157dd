package collarwright.drawing;

import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Draws what is on the wrap itself, in the frame of the wrap. On a small collar the numbers of the degree scale give way
 * first, then the scale; what still has no room is told to the caller.
 */
final class WrapMarks {
    /** The most by which a straight piece of an outline may stray from the true curve. */
    static final double CHORD_ERROR = 0.01;

    private static final double PILOT = 3;
    private static final double ARM = 2;
    private static final int FLAG = 5;
    private static final List<Double> NAME_HEIGHTS = List.of(7.0, 6.0, 5.0, 4.0, 3.5, 3.0);
    private static final List<Double> SMALL_NAME_HEIGHTS = List.of(5.0, 4.0, 3.5, 3.0, 2.5, 2.0);
    private static final List<Double> TEXT_HEIGHTS = List.of(3.5, 3.0, 2.5);
    private static final List<Double> TOP_HEIGHTS = List.of(6.0, 5.0, 4.0, 3.5, 3.0, 2.5, 2.0, 1.5, 1.2);

    private final WrapTemplate template;
    private final DegreeScale scale;
    private final Drawing drawing = new Drawing();
    private final FreeSpace space;
    private final Lettering letters;
    private final List<FreeSpace.Placed> holes;
    private final double length;
    private final double width;
    private final double zero;
    private final List<String> missing = new ArrayList<>();

    /** What is drawn of the degree scale. */
    private enum Scale {
        NUMBERED,
        TICKS,
        NONE
    }

    /**
     * A wrap as drawn.
     *
     * @param drawing its shapes
     * @param top whether TOP stands on it
     * @param missing other texts about holes, id or revision for which there was no room
     */
    record Marked(Drawing drawing, boolean top, List<String> missing) {}

    private WrapMarks(WrapTemplate template) {
        this.template = template;
        this.scale = DegreeScale.of(template);
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

    /** Draws the wrap. Where not even TOP has room, it is told like any other text without room. */
    static Marked draw(WrapTemplate template) {
        for (Scale scale : Scale.values()) {
            WrapMarks marks = new WrapMarks(template);
            boolean top = marks.all(scale);
            if (scale == Scale.NONE || (top && marks.missing.isEmpty())) {
                return new Marked(marks.drawing, top, List.copyOf(marks.missing));
            }
        }
        throw new IllegalStateException("no scale");
    }

    private boolean all(Scale shown) {
        cuts();
        ends();
        holes.forEach(this::pilot);
        List<HoleLetters> texts = new ArrayList<>();
        List<List<String>> rest = new ArrayList<>();
        for (int i = 0; i < holes.size(); i++) {
            texts.add(HoleLetters.of(template.holes().get(i), holes.get(i)));
            rest.add(texts.get(i).inside(letters, arm(holes.get(i))));
        }
        zeroLine();
        if (shown != Scale.NONE) {
            scale.ticks(drawing, space);
        }
        if (!scale.zero(letters)) {
            missing.add("0° at the long upright line");
        }
        if (shown == Scale.NUMBERED) {
            scale.numbers(letters);
        }
        flag();
        boolean top = tops();
        for (int i = 0; i < holes.size(); i++) {
            if (!rest.get(i).isEmpty() && !texts.get(i).beside(letters, rest.get(i))) {
                missing.add("hole " + String.join(" ", rest.get(i)));
            }
        }
        names();
        return top;
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
        double half = template.seam().web() / 2;
        double reach = StrictMath.min(FLAG, half / 2);
        for (Line line : List.of(
                Line.of(0, width / 2, reach, width / 2), Line.of(length - reach, width / 2, length, width / 2))) {
            mark(line);
            space.take(line.bounds(), FreeSpace.AROUND_LINE);
        }
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
        space.take(new Box(x - arm, y - arm, x + arm, y + arm), FreeSpace.AROUND_LINE);
    }

    private static double pilotRadius(FreeSpace.Placed hole) {
        return StrictMath.min(PILOT, hole.outline().holeRadius() / 4);
    }

    private static double arm(FreeSpace.Placed hole) {
        return pilotRadius(hole) + StrictMath.min(ARM, hole.outline().holeRadius() / 8);
    }

    // Whole from edge to edge, but for the letters inside hole 1.
    private void zeroLine() {
        double y = 0;
        for (Box gap : letters.crossedBy(zero)) {
            if (gap.bottom() > y) {
                mark(Line.of(zero, y, zero, gap.bottom()));
            }
            y = StrictMath.max(y, gap.top());
        }
        mark(Line.of(zero, y, zero, width));
        space.take(new Box(zero, 0, zero, width), FreeSpace.AROUND_LINE);
    }

    // Hangs on the 0° line and points the way azimuth grows; nothing else on the wrap is so lopsided.
    private void flag() {
        int sign = template.settings().side().sign();
        for (int size = FLAG; size >= 2; size--) {
            double tip = zero + sign * 1.4 * size;
            for (int step = 2; 0.5 * step + size < width; step++) {
                double y = 0.5 * step;
                double near = zero + sign * (FreeSpace.AROUND_LINE + 0.1);
                Box box = new Box(StrictMath.min(tip, near), y, StrictMath.max(tip, near), y + size);
                if (space.isFree(box)) {
                    List<Point> corners = List.of(new Point(zero, y + size), new Point(tip, y), new Point(zero, y));
                    mark(Path.straight(corners, false));
                    space.take(box, FreeSpace.AROUND_LINE);
                    return;
                }
            }
        }
        missing.add("the flag, which would point to the "
                + template.settings().side().grows() + " of the 0° line");
    }

    // One in every web that has room, so that every page of a split print shows which way is up.
    private boolean tops() {
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
        return placed > 0 || top(length / 2, length, width);
    }

    private boolean top(double x, double reach, double down) {
        for (double height : TOP_HEIGHTS) {
            double head = height / 2;
            double wide = StrokeFont.width("TOP", height) + 3 * head;
            // Under the row of degrees.
            double up = width - scale.longTick() - 6;
            Box best = new Box(x - wide / 2, up - 1.17 * height, x + wide / 2, up);
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
        mark(Label.of("TOP", height, shaft + 2 * head, box.bottom()));
        space.takeLetters(box);
    }

    private void names() {
        WrapSettings settings = template.settings();
        String id = StrokeFont.say(settings.pattern().id());
        String revision = "rev " + StrokeFont.say(settings.order().revision());
        Point right = new Point(zero + 4, 6);
        if (!letters.setPairNear(id, revision, NAME_HEIGHTS, right, length / 2)) {
            wanted(id);
            wanted(revision);
        }
        String seam = "seam " + Decimals.trimmed(Angles.degrees(template.seam().azimuth()), 1) + "°";
        end(seam, true);
        end(seam, false);
        instruction(StrokeFont.say(settings.order().title()));
    }

    private void wanted(String text) {
        boolean placed = false;
        for (int i = 0; i < SMALL_NAME_HEIGHTS.size() && !placed; i++) {
            placed = letters.setNear(Label.of(text, SMALL_NAME_HEIGHTS.get(i), zero + 4, 6), length);
        }
        if (!placed) {
            missing.add(text);
        }
    }

    // The title is on the sheet beside the wrap too; on a crowded wrap it gives way.
    private void instruction(String title) {
        Side side = template.settings().side();
        String text = side.where() + " " + side.face();
        List<Double> usual = List.of(3.5, 3.0);
        Point left = new Point(zero - 12 - StrokeFont.width(text, 3.5), 7);
        if (!title.isBlank() && letters.setPairNear(text, title, usual, left, length / 2)) {
            return;
        }
        if (!letters.setNear(Label.of(text, usual.get(0), left.x(), left.y()), length / 2)) {
            letters.setPairNear(side.where(), side.face(), TEXT_HEIGHTS, left, length / 2);
        }
    }

    // Along the ends, so that the same words meet at the seam.
    private void end(String text, boolean left) {
        boolean placed = false;
        for (int i = 0; i < TEXT_HEIGHTS.size() && !placed; i++) {
            double height = TEXT_HEIGHTS.get(i);
            double base = left ? height + 1.5 : length - 1.5;
            Point at = new Point(base, (width / 2 - StrokeFont.width(text, height)) / 2);
            placed = letters.setNear(new Label(text, at, height, StrictMath.PI / 2), 2);
        }
    }

    private void mark(Shape shape) {
        drawing.add(Role.MARK, shape);
    }
}
