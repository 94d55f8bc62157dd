package collarwright.drawing;

import collarwright.tooling.Hole;
import java.util.List;

/**
 * A paper that is wrapped round a collar, printed face out and TOP up, and shows where and how large to drill; or that is
 * laid in it, printed face to the axis and TOP up, and shows where holes come through.
 *
 * <p>Frame of the wrap: origin at the lower left corner of the paper as it lies, printed face up, TOP away from the
 * reader; x to the right along the girth, y toward TOP. Seen on the outside of the collar, azimuth (clockwise from
 * above) grows to the left.
 *
 * <p>Lengths along the girth are those of the middle of the paper: the whole is π (OD + paper), a hole lies its azimuth
 * times (OD + paper) / 2 to the left of the 0° line. The ends meet in the middle of the widest web. Laid in the pipe, the
 * whole is π (ID − paper), and azimuth grows to the right, since the wall is seen from its other face.
 *
 * @param settings what it was made for
 * @param seam where the ends meet
 * @param holes in the order of their numbers
 */
public record WrapTemplate(WrapSettings settings, Seam seam, List<WrapHole> holes) {
    private static final double TURN = 2 * StrictMath.PI;

    /** Keeps the list. */
    public WrapTemplate {
        holes = List.copyOf(holes);
    }

    /**
     * Lays out the template of a pattern.
     *
     * @param settings pattern, collar, paper and words
     * @return where everything lies on the paper
     * @throws IllegalArgumentException if a hole is as wide as the pipe, or no web is left for the seam
     */
    public static WrapTemplate of(WrapSettings settings) {
        Seam seam = Seam.of(settings.pattern(), settings.pipeRadius());
        return new WrapTemplate(
                settings,
                seam,
                settings.pattern().holes().stream()
                        .map(hole -> place(hole, settings, seam))
                        .toList());
    }

    private static WrapHole place(Hole hole, WrapSettings settings, Seam seam) {
        double radius = settings.paperRadius();
        double turn = settings.side().sign() * (hole.azimuth() - seam.azimuth());
        return new WrapHole(
                hole,
                new HoleOutline(settings.pipeRadius(), settings.stands(), hole.diameter() / 2),
                hole.azimuth() * settings.pipeRadius(),
                hole.azimuth() * radius,
                (turn >= 0 ? turn : turn + TURN) * radius);
    }

    /**
     * Returns the length of the paper along the girth, end to end.
     *
     * @return π (OD + paper), or π (ID − paper) for a template that is laid in the pipe
     */
    public double length() {
        return TURN * settings.paperRadius();
    }

    /**
     * Returns the place of the 0° line.
     *
     * @return from the paper's left end, to the right
     */
    public double zeroFromLeftEnd() {
        double turn = settings.side() == Side.OUTSIDE ? seam.azimuth() : TURN - seam.azimuth();
        return turn * settings.paperRadius();
    }

    /**
     * Returns the place of an azimuth.
     *
     * @param azimuth clockwise from above, from the 0° line
     * @return from the paper's left end, to the right, in [0, length)
     */
    public double fromLeftEnd(double azimuth) {
        double turn = settings.side().sign() * (azimuth - seam.azimuth()) % TURN;
        return (turn >= 0 ? turn : turn + TURN) * settings.paperRadius();
    }

    /**
     * Draws the template with its scale bars, notes and table.
     *
     * @return the sheet
     */
    public Sheet sheet() {
        return WrapSheet.draw(this);
    }
}
