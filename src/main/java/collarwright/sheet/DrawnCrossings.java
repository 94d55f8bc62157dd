package collarwright.sheet;

import collarwright.sheet.DrawnPiece.Spot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds cut lines that touch, cross or lie on one another elsewhere than where two ends meet. Chords stand in a grid of
 * cells; sides are told in whole numbers.
 */
final class DrawnCrossings {
    private static final int MOST_CELLS = 400;

    private final long size;
    private final Map<Cell, List<Chord>> cells = new HashMap<>();
    private final Map<Pair, Spot> found = new LinkedHashMap<>();

    private record Cell(long x, long y) {}

    /** Two pieces that meet, by their lines in the file. */
    record Pair(DrawnPiece first, DrawnPiece second) {}

    private record Chord(DrawnPiece piece, int order, Spot from, Spot to) {}

    private DrawnCrossings(long size) {
        this.size = size;
    }

    static Map<Pair, Spot> of(List<DrawnPiece> pieces) {
        long least = 0;
        long most = 1;
        for (DrawnPiece piece : pieces) {
            for (Spot spot : piece.spots()) {
                least = StrictMath.min(least, StrictMath.min(spot.x(), spot.y()));
                most = StrictMath.max(most, StrictMath.max(spot.x(), spot.y()));
            }
        }
        DrawnCrossings crossings = new DrawnCrossings((most - least) / MOST_CELLS + 1);
        pieces.forEach(crossings::add);
        return crossings.found;
    }

    private void add(DrawnPiece piece) {
        for (int i = 0; i + 1 < piece.spots().size(); i++) {
            Chord chord =
                    new Chord(piece, i, piece.spots().get(i), piece.spots().get(i + 1));
            if (chord.from().equals(chord.to())) {
                continue;
            }
            long right = StrictMath.floorDiv(
                    StrictMath.max(chord.from().x(), chord.to().x()), size);
            long top = StrictMath.floorDiv(
                    StrictMath.max(chord.from().y(), chord.to().y()), size);
            for (long x = StrictMath.floorDiv(
                            StrictMath.min(chord.from().x(), chord.to().x()), size);
                    x <= right;
                    x++) {
                for (long y = StrictMath.floorDiv(
                                StrictMath.min(chord.from().y(), chord.to().y()), size);
                        y <= top;
                        y++) {
                    List<Chord> here = cells.computeIfAbsent(new Cell(x, y), c -> new ArrayList<>());
                    here.forEach(other -> compare(other, chord));
                    here.add(chord);
                }
            }
        }
    }

    private void compare(Chord a, Chord b) {
        if (!meet(a, b)) {
            return;
        }
        boolean neighbours = a.piece().equals(b.piece()) && StrictMath.abs(a.order() - b.order()) <= 1;
        if (a.equals(b) || neighbours || joined(a, b)) {
            return;
        }
        boolean inOrder = a.piece().line() <= b.piece().line();
        found.putIfAbsent(inOrder ? new Pair(a.piece(), b.piece()) : new Pair(b.piece(), a.piece()), b.from());
    }

    // On whole numbers below 1e9 these products are exact.
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
