package collarwright.drawing;

import collarwright.collar.CollarBody;
import collarwright.tooling.Pattern;
import java.util.Objects;

/**
 * What a wrap template is made for.
 *
 * @param pattern the holes
 * @param body the collar they go into
 * @param measured whether the collar's outside diameter was measured; if not, the sheet says so
 * @param paper thickness of the paper or card that is wrapped round the collar
 * @param inches whether lengths are said in inches too, for a shop whose rules are divided in inches
 * @param order the words on the sheet that come from the order
 * @param side whether it is wrapped round the pipe or laid in it
 * @param rolled whether the collar is rolled from strip with its holes in it: inside they come out narrower than drilled ones
 */
public record WrapSettings(
        Pattern pattern,
        CollarBody body,
        boolean measured,
        double paper,
        boolean inches,
        OrderWords order,
        Side side,
        boolean rolled) {
    /** Thickness of common office paper; common practice, no source. */
    public static final double OFFICE_PAPER = 0.1;

    private static final double THICKEST = 5;

    /** Checks the paper, and that the holes go into the pipe. */
    public WrapSettings {
        Objects.requireNonNull(pattern, "pattern");
        Objects.requireNonNull(body, "body");
        Objects.requireNonNull(order, "order");
        Objects.requireNonNull(side, "side");
        if (!(paper >= 0 && paper <= THICKEST)) {
            throw new IllegalArgumentException("paper is 0 to " + THICKEST + " mm thick, not " + paper);
        }
    }

    /**
     * A template for a shop that measures in millimetres.
     *
     * @param pattern the holes
     * @param body the collar they go into
     * @param measured whether the collar's outside diameter was measured
     * @param paper thickness of the paper or card
     * @param order the words that come from the order
     */
    public WrapSettings(Pattern pattern, CollarBody body, boolean measured, double paper, OrderWords order) {
        this(pattern, body, measured, paper, false, order, Side.OUTSIDE, false);
    }

    /**
     * A template for a collar from pipe.
     *
     * @param pattern the holes
     * @param body the collar they go into
     * @param measured whether the collar's outside diameter was measured
     * @param paper thickness of the paper or card
     * @param inches whether lengths are said in inches too
     * @param order the words that come from the order
     * @param side whether it is wrapped round the pipe or laid in it
     */
    public WrapSettings(
            Pattern pattern,
            CollarBody body,
            boolean measured,
            double paper,
            boolean inches,
            OrderWords order,
            Side side) {
        this(pattern, body, measured, paper, inches, order, side, false);
    }

    /**
     * The words on a sheet that come from the order.
     *
     * @param title the job's title, in any script
     * @param revision the job's revision
     * @param pieces collars of this pattern in the whole order, spares included; 1 or more
     */
    public record OrderWords(String title, String revision, int pieces) {
        /** Checks the count. */
        public OrderWords {
            Objects.requireNonNull(title, "title");
            Objects.requireNonNull(revision, "revision");
            if (pieces < 1) {
                throw new IllegalArgumentException("an order has 1 piece or more, not " + pieces);
            }
        }
    }

    /**
     * Returns the radius of the face of the pipe that the paper lies on.
     *
     * @return the outside, or the inside with the nominal wall
     */
    public double pipeRadius() {
        return side == Side.OUTSIDE ? body.outerRadius() : body.innerRadius();
    }

    /**
     * Returns how much the paper lies outside the pipe's face.
     *
     * @return its thickness, below 0 for a paper that is laid in the pipe
     */
    public double stands() {
        return -side.sign() * paper;
    }

    /**
     * Returns the radius at which lengths on the paper are measured.
     *
     * @return radius of the middle of the paper
     */
    public double paperRadius() {
        return pipeRadius() + stands() / 2;
    }
}
