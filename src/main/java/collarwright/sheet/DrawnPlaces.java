package collarwright.sheet;

import collarwright.drawing.Box;
import collarwright.sheet.DrawnPiece.Spot;
import java.util.List;

/** Tells by neighbours alone which lines a spot is on and whether a contour runs round it. */
final class DrawnPlaces {
    private static final double NEAR = 2 * DrawnPiece.CHORD_ERROR;

    private final List<List<DrawnPiece>> contours;
    private final NearBoxes near;
    private final DrawnWork work;

    /**
     * Sorts contours by their places.
     *
     * @param contours each its pieces; for lines each a list of one
     * @param work what may be compared; once it is spent every answer is yes
     */
    DrawnPlaces(List<List<DrawnPiece>> contours, DrawnWork work) {
        this.contours = contours.stream().map(List::copyOf).toList();
        this.near = new NearBoxes(contours.stream()
                .map(c -> c.stream().map(DrawnPiece::reach).reduce(Box::with).orElseThrow())
                .toList());
        this.work = work;
    }

    /** Whether a contour runs round a spot: a ray to the right crosses it an odd number of times. */
    boolean hold(Spot p) {
        for (int i : neighbours(p)) {
            boolean inside = false;
            for (DrawnPiece piece : contours.get(i)) {
                boolean level = piece.reach().bottom() <= p.mmY() + NEAR
                        && piece.reach().top() >= p.mmY() - NEAR;
                if (!work.allows(level ? piece.spots().size() : 1)) {
                    return true;
                }
                inside ^= level && crossedOddly(piece, p);
            }
            if (inside) {
                return true;
            }
        }
        return work.isSpent();
    }

    private static boolean crossedOddly(DrawnPiece piece, Spot p) {
        boolean odd = false;
        for (int i = 0; i + 1 < piece.spots().size(); i++) {
            Spot a = piece.spots().get(i);
            Spot b = piece.spots().get(i + 1);
            if ((a.y() > p.y()) != (b.y() > p.y())) {
                double x = a.x() + (double) (p.y() - a.y()) * (b.x() - a.x()) / (b.y() - a.y());
                odd ^= x > p.x();
            }
        }
        return odd;
    }

    /** Whether a spot lies on a line. */
    boolean touch(Spot p) {
        for (int i : neighbours(p)) {
            for (DrawnPiece piece : contours.get(i)) {
                if (!work.allows(piece.spots().size()) || touches(piece, p)) {
                    return true;
                }
            }
        }
        return work.isSpent();
    }

    private List<Integer> neighbours(Spot p) {
        List<Integer> found = near.meeting(new Box(p.mmX(), p.mmY(), p.mmX(), p.mmY()).grown(NEAR));
        return work.allows(found.size() + 1L) ? found : List.of();
    }

    private static boolean touches(DrawnPiece cut, Spot p) {
        for (int i = 0; i + 1 < cut.spots().size(); i++) {
            Spot a = cut.spots().get(i);
            Spot b = cut.spots().get(i + 1);
            double dx = b.mmX() - a.mmX();
            double dy = b.mmY() - a.mmY();
            double long2 = dx * dx + dy * dy;
            double t = long2 == 0 ? 0 : ((p.mmX() - a.mmX()) * dx + (p.mmY() - a.mmY()) * dy) / long2;
            double on = StrictMath.max(0, StrictMath.min(1, t));
            if (StrictMath.hypot(a.mmX() + on * dx - p.mmX(), a.mmY() + on * dy - p.mmY()) < NEAR) {
                return true;
            }
        }
        return false;
    }
}
