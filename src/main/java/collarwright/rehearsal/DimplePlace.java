package collarwright.rehearsal;

import collarwright.collar.CollarBody;
import collarwright.machining.RotarySettings;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import java.util.List;

/**
 * Where a dimple must lie on its collar, worked out anew from the pattern and the pipe.
 *
 * <p>Both dimples lie above hole 1, 5 mm from the TOP edge or in the middle of the web if that is less: one on the 0°
 * line, the TOP dimple 6 mm of arc beside it, clockwise as seen from above TOP. Our own convention; stated here a second
 * time on purpose, so that a slip where programs are laid out cannot prove itself.
 *
 * @param title its name for people
 * @param azimuth clockwise from above TOP, from the 0° line
 * @param height above the mid-plane, + toward TOP
 */
record DimplePlace(String title, double azimuth, double height) {

    /** Our choice, no source. */
    private static final double FROM_TOP_EDGE = 5;

    /** Two 3 mm dimples that nobody takes for one: our choice, no source. */
    private static final double ARC = 6;

    /** The two dimples of every collar of a pattern. */
    static List<DimplePlace> of(Pattern pattern, RotarySettings settings) {
        return of(pattern, settings.work().body());
    }

    /** The same for a collar that is drilled flat. */
    static List<DimplePlace> of(Pattern pattern, CollarBody body) {
        double topEdge = body.width() / 2;
        Hole first = pattern.holes().get(0);
        double topOfHole = first.height() + first.cutter().asDrilled().max() / 2;
        double height = StrictMath.max(topEdge - FROM_TOP_EDGE, (topEdge + topOfHole) / 2);
        double turn = ARC / body.outerRadius();
        return List.of(new DimplePlace("0 line dimple", 0, height), new DimplePlace("TOP dimple", turn, height));
    }
}
