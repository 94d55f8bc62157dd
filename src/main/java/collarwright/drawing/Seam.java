package collarwright.drawing;

import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import java.util.Comparator;
import java.util.List;

/**
 * Where the two ends of a wrap meet: the middle of the widest web, so never on the 0° line, which runs through hole 1.
 *
 * @param azimuth clockwise from above, from the 0° line, in (0, 2π)
 * @param web width of that web, along the pipe's outside
 */
public record Seam(double azimuth, double web) {
    private static final double TURN = 2 * StrictMath.PI;
    // Webs that differ by less are alike; then the one nearest to the back of the 0° line is taken.
    private static final double ALIKE = 1e-6;

    /**
     * Finds the place for a seam.
     *
     * @param pattern the holes
     * @param radius outside radius of the pipe
     * @return the middle of the widest web
     * @throws IllegalArgumentException if no two neighbouring holes leave any web
     */
    public static Seam of(Pattern pattern, double radius) {
        List<Hole> holes = pattern.holes().stream()
                .sorted(Comparator.comparingDouble(Hole::azimuth))
                .toList();
        Seam best = between(holes.get(0), holes.get(1 % holes.size()), radius);
        for (int i = 1; i < holes.size(); i++) {
            Seam seam = between(holes.get(i), holes.get((i + 1) % holes.size()), radius);
            boolean wider = seam.web > best.web + ALIKE;
            boolean alike = StrictMath.abs(seam.web - best.web) <= ALIKE;
            if (wider || (alike && seam.fromBack() < best.fromBack() - ALIKE)) {
                best = seam;
            }
        }
        if (!(best.web > 0)) {
            throw new IllegalArgumentException("pattern " + pattern.id() + " has no web for a seam");
        }
        return best;
    }

    private static Seam between(Hole a, Hole b, double radius) {
        double gap = b.azimuth() - a.azimuth();
        double turn = gap > 0 ? gap : gap + TURN;
        double from = a.azimuth() + halfAngle(a, radius);
        double to = a.azimuth() + turn - halfAngle(b, radius);
        double middle = (from + to) / 2;
        return new Seam(middle < TURN ? middle : middle - TURN, radius * (to - from));
    }

    private static double halfAngle(Hole hole, double radius) {
        return StrictMath.asin(StrictMath.min(1, hole.diameter() / 2 / radius));
    }

    private double fromBack() {
        return StrictMath.abs(azimuth - StrictMath.PI);
    }
}
