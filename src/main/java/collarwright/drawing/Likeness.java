package collarwright.drawing;

import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import java.util.List;

/**
 * Tells whether a collar could be taken for itself turned round or turned over. A person at the bench cannot see small
 * differences; such a collar needs its marks before the paper comes off.
 */
public final class Likeness {
    // What an eye takes for the same; our choice, no source.
    private static final double SAME_ANGLE = StrictMath.PI / 60;
    private static final double SAME_SIZE = 1.5;
    private static final double TURN = 2 * StrictMath.PI;

    private Likeness() {}

    /**
     * Looks for a turn or a flip that puts every hole near a hole of about the same size and height.
     *
     * @param pattern the holes
     * @return true if the collar looks the same, or nearly so, in another position
     */
    public static boolean looksTheSameTurned(Pattern pattern) {
        Hole first = pattern.holes().get(0);
        for (Hole other : pattern.holes()) {
            boolean turned = other.number() != 1 && matches(pattern.holes(), 1, other.azimuth() - first.azimuth());
            boolean flipped = matches(pattern.holes(), -1, other.azimuth() + first.azimuth());
            if (turned || flipped) {
                return true;
            }
        }
        return false;
    }

    // A flip turns the collar upside down: azimuths run the other way and heights change sign.
    private static boolean matches(List<Hole> holes, int sense, double shift) {
        return holes.stream()
                .allMatch(a -> holes.stream().anyMatch(b -> {
                    double off = StrictMath.IEEEremainder(sense * a.azimuth() + shift - b.azimuth(), TURN);
                    boolean height = StrictMath.abs(sense * a.height() - b.height()) <= SAME_SIZE;
                    boolean size = StrictMath.abs(a.diameter() - b.diameter()) <= SAME_SIZE;
                    return StrictMath.abs(off) <= SAME_ANGLE && height && size;
                }));
    }
}
