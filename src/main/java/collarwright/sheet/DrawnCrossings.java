package collarwright.sheet;

import collarwright.drawing.Box;
import collarwright.sheet.DrawnPiece.Spot;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds cut lines that touch, cross or lie on one another elsewhere than where two ends meet. Only pieces whose boxes
 * meet are compared, and of them only chords near one another; sides are told in whole numbers.
 */
final class DrawnCrossings {
    private static final double SLACK = 0.001;

    private final List<DrawnPiece> pieces;
    private final DrawnWork work;
    private final List<Meeting> found = new ArrayList<>();

    /** Two pieces that meet, in the order of their lines in the file, and near where. */
    record Meeting(DrawnPiece first, DrawnPiece second, Spot at) {}

    private record Chord(DrawnPiece piece, Spot from, Spot to) {}

    private DrawnCrossings(List<DrawnPiece> pieces, DrawnWork work) {
        this.pieces = pieces;
        this.work = work;
    }

    /**
     * Finds them.
     *
     * @param pieces lines to cut
     * @param work what may be compared
     * @param most how many are looked for
     * @return each pair once
     */
    static List<Meeting> of(List<DrawnPiece> pieces, DrawnWork work, int most) {
        DrawnCrossings crossings = new DrawnCrossings(pieces, work);
        crossings.search(most);
        return List.copyOf(crossings.found);
    }

    private void search(int most) {
        List<Box> boxes = pieces.stream().map(p -> p.reach().grown(SLACK)).toList();
        NearBoxes near = new NearBoxes(boxes);
        for (int i = 0; i < pieces.size() && found.size() < most; i++) {
            List<Integer> others = near.meeting(boxes.get(i));
            if (!work.allows(others.size())) {
                return;
            }
            for (int other : others) {
                if (other > i) {
                    compare(i, other, boxes);
                }
            }
        }
    }

    private void compare(int i, int j, List<Box> boxes) {
        List<Chord> some = chords(pieces.get(i), boxes.get(j));
        List<Chord> others = some.isEmpty() ? List.of() : chords(pieces.get(j), boxes.get(i));
        if (others.isEmpty() || !work.allows((long) some.size() * others.size())) {
            return;
        }
        for (Chord a : some) {
            for (Chord b : others) {
                if (meet(a, b) && !joined(a, b)) {
                    boolean inOrder = a.piece().line() <= b.piece().line();
                    found.add(new Meeting(inOrder ? a.piece() : b.piece(), inOrder ? b.piece() : a.piece(), b.from()));
                    return;
                }
            }
        }
    }

    private List<Chord> chords(DrawnPiece piece, Box place) {
        List<Spot> spots = piece.spots();
        if (!work.allows(spots.size())) {
            return List.of();
        }
        long left = StrictMath.round(place.left() * DrawnPiece.GRAIN);
        long right = StrictMath.round(place.right() * DrawnPiece.GRAIN);
        long bottom = StrictMath.round(place.bottom() * DrawnPiece.GRAIN);
        long top = StrictMath.round(place.top() * DrawnPiece.GRAIN);
        List<Chord> chords = new ArrayList<>();
        for (int i = 0; i + 1 < spots.size(); i++) {
            Spot a = spots.get(i);
            Spot b = spots.get(i + 1);
            if (!a.equals(b)
                    && !before(a.x(), b.x(), left, right)
                    && !before(left, right, a.x(), b.x())
                    && !before(a.y(), b.y(), bottom, top)
                    && !before(bottom, top, a.y(), b.y())) {
                chords.add(new Chord(piece, a, b));
            }
        }
        return chords;
    }

    // Spots are within 1e9 either way, since nothing farther is read: these products are exact.
    private static int side(Chord chord, Spot p) {
        long dx = chord.to().x() - chord.from().x();
        long dy = chord.to().y() - chord.from().y();
        long px = p.x() - chord.from().x();
        long py = p.y() - chord.from().y();
        return Long.compare(StrictMath.multiplyExact(dx, py), StrictMath.multiplyExact(dy, px));
    }

    private static boolean meet(Chord a, Chord b) {
        boolean apart = before(a.from().x(), a.to().x(), b.from().x(), b.to().x())
                || before(b.from().x(), b.to().x(), a.from().x(), a.to().x())
                || before(a.from().y(), a.to().y(), b.from().y(), b.to().y())
                || before(b.from().y(), b.to().y(), a.from().y(), a.to().y());
        return !apart && side(a, b.from()) * side(a, b.to()) <= 0 && side(b, a.from()) * side(b, a.to()) <= 0;
    }

    private static boolean before(long a1, long a2, long b1, long b2) {
        return StrictMath.max(a1, a2) < StrictMath.min(b1, b2);
    }

    // Ends that meet are a corner, unless both run the same way from it.
    private static boolean joined(Chord a, Chord b) {
        for (boolean aStart : new boolean[] {true, false}) {
            for (boolean bStart : new boolean[] {true, false}) {
                Spot p = aStart ? a.from() : a.to();
                Spot q = bStart ? b.from() : b.to();
                if (isEnd(a, p) && isEnd(b, q) && p.distance(q) <= DrawnContours.NEAR) {
                    return !sameWay(p, aStart ? a.to() : a.from(), bStart ? b.to() : b.from());
                }
            }
        }
        return false;
    }

    private static boolean isEnd(Chord chord, Spot p) {
        return p.equals(chord.piece().first()) || p.equals(chord.piece().last());
    }

    private static boolean sameWay(Spot corner, Spot a, Spot b) {
        double ax = a.x() - corner.x();
        double ay = a.y() - corner.y();
        double bx = b.x() - corner.x();
        double by = b.y() - corner.y();
        double cross = ax * by - ay * bx;
        double dot = ax * bx + ay * by;
        // A thousandth of a radian: a cutter would run along the same line.
        return dot > 0 && StrictMath.abs(cross) <= 1e-3 * dot;
    }
}
