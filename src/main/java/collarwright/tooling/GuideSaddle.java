package collarwright.tooling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A flat block that stands across a pipe with its concave edge on it: the line on its face then points at the pipe's
 * axis, and a drill that follows it goes square through the wall.
 *
 * <p>Frame: the block's middle line is x = 0, y grows away from the pipe, the two feet stand on y = 0; the pipe's axis is
 * at y = {@link #axis()}.
 *
 * @param cutter what it guides
 * @param radius of the pipe's outside
 * @param width along x: the cutter and 15 mm on both sides, 60 mm at least, at most 1.6 radii (our choice, no source)
 */
public record GuideSaddle(Cutter cutter, double radius, double width) {
    private static final double BESIDE = 15;
    private static final double LEAST = 60;
    private static final double MOST_RADII = 1.6;
    private static final double ABOVE = 40;

    /** Checks the sizes. */
    public GuideSaddle {
        if (!(width > 0 && width < 2 * radius && radius < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("no saddle: " + width + " on " + radius);
        }
    }

    /**
     * Makes the saddles of some patterns: one for each drill and hole saw, the smallest first.
     *
     * @param patterns the patterns
     * @param radius of the pipe's outside
     * @return none where only machines cut
     */
    public static List<GuideSaddle> of(List<Pattern> patterns, double radius) {
        List<Cutter> cutters = patterns.stream()
                .flatMap(p -> p.holes().stream())
                .map(Hole::cutter)
                .filter(c -> c.kind() == CutterKind.TWIST || c.kind() == CutterKind.HOLE_SAW)
                .distinct()
                .sorted(Comparator.comparingDouble(Cutter::size).thenComparing(Cutter::id))
                .toList();
        List<GuideSaddle> saddles = new ArrayList<>();
        for (Cutter cutter : cutters) {
            double wide = StrictMath.max(LEAST, cutter.size() + 2 * BESIDE);
            saddles.add(new GuideSaddle(cutter, radius, StrictMath.min(wide, MOST_RADII * radius)));
        }
        return List.copyOf(saddles);
    }

    /**
     * Returns how deep the concave edge is.
     *
     * @return from the feet to the crown of the pipe
     */
    public double sagitta() {
        return radius + axis();
    }

    /**
     * Returns where the pipe's axis is.
     *
     * @return y of it, below 0
     */
    public double axis() {
        return -StrictMath.sqrt(radius * radius - width * width / 4);
    }

    /**
     * Returns how high the block is.
     *
     * @return from the feet to the top, 40 mm above the pipe's crown
     */
    public double height() {
        return sagitta() + ABOVE;
    }
}
