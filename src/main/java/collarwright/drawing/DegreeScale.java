package collarwright.drawing;

import collarwright.units.Angles;
import java.util.List;

/**
 * Ticks every 10° along both edges of a wrap, numbers every 30° along the TOP edge.
 *
 * @param template what it is for
 * @param longTick length of the ticks that are numbered
 */
record DegreeScale(WrapTemplate template, double longTick) {
    private static final double LONGEST = 5;
    private static final double SHORTEST = 1.5;
    private static final double NEAR_END = 1.5;
    private static final List<Double> HEIGHTS = List.of(3.5, 3.0, 2.5);
    private static final List<Double> ZERO_HEIGHTS = List.of(4.0, 3.5, 3.0, 2.5, 2.0, 1.5);
    private static final double ZERO_REACH = 6;

    /** Longer ticks on a wider collar. */
    static DegreeScale of(WrapTemplate template) {
        double share = template.settings().body().width() / 14;
        return new DegreeScale(template, StrictMath.max(SHORTEST, StrictMath.min(LONGEST, share)));
    }

    void ticks(Drawing drawing, FreeSpace space) {
        double width = template.settings().body().width();
        for (int degree = 10; degree < 360; degree += 10) {
            double x = template.fromLeftEnd(Angles.radians(degree));
            double tick = degree % 30 == 0 ? longTick : 0.6 * longTick;
            // Too near to an end it would be taken for the end.
            if (x >= NEAR_END && x <= template.length() - NEAR_END) {
                for (Line line : List.of(Line.of(x, width - tick, x, width), Line.of(x, 0, x, 0.8 * tick))) {
                    if (space.isOutsideHoles(line.bounds())) {
                        drawing.add(Role.MARK, line);
                        space.take(line.bounds(), FreeSpace.AROUND_LINE);
                    }
                }
            }
        }
    }

    /** The 0 stands beside its line, larger than the rest; false if there is no room for it. */
    boolean zero(Lettering letters) {
        double top = template.settings().body().width() - 1.5;
        for (double height : ZERO_HEIGHTS) {
            Label label = Label.of("0°", height, template.zeroFromLeftEnd() + 1.5, top - height);
            if (letters.setIfFree(label) || letters.setNear(label, ZERO_REACH)) {
                return true;
            }
        }
        return false;
    }

    /** A number that has no room is left out; its tick stays. */
    void numbers(Lettering letters) {
        double under = template.settings().body().width() - longTick - 1;
        for (int degree = 30; degree < 360; degree += 30) {
            double x = template.fromLeftEnd(Angles.radians(degree));
            boolean placed = false;
            for (int i = 0; i < HEIGHTS.size() && !placed; i++) {
                placed = letters.setIfFree(Label.centred(degree + "°", HEIGHTS.get(i), x, under - HEIGHTS.get(i)));
            }
        }
    }
}
