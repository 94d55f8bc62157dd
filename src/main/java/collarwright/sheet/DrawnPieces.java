package collarwright.sheet;

import collarwright.drawing.Box;
import collarwright.drawing.Sheet;
import collarwright.sheet.DrawnPiece.Source;
import collarwright.sheet.DrawnPiece.Spot;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/**
 * Gathers the lines of a file. What reaches too far is refused before it is split into chords; what lies outside the
 * sheet is told at once and split roughly, since nobody compares it further. A builder's tool: it grows as lines come.
 */
final class DrawnPieces {
    /** Chords of all pieces together: more than any nest has, and what a small machine holds. Our choice. */
    static final int MOST_CHORDS = 4_000_000;

    /** Halvings of an arc: up to 4,096 chords, within {@link DrawnPiece#CHORD_ERROR} up to a radius of 13 m. */
    private static final int DEPTH = 12;

    private static final int ROUGH_DEPTH = 4;
    private static final double MARGIN = Sheet.MARGIN - 0.002;

    private final FileFaults faults;
    private final List<DrawnPiece> pieces = new ArrayList<>();
    private double width;
    private double height;
    private long chords;

    DrawnPieces(FileFaults faults) {
        this.faults = faults;
    }

    /** Says how large the sheet is, before the first line comes. */
    void sheet(double wide, double high) {
        width = wide;
        height = high;
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    List<DrawnPiece> all() {
        return List.copyOf(pieces);
    }

    /** A straight piece. */
    void straight(Source source, double x1, double y1, double x2, double y2) {
        add(source, List.of(new DrawnTurn(x1, y1, x2, y2, 0)), false);
    }

    /** A bent piece: bulge is sagitta by half chord, + counter-clockwise. */
    void bent(Source source, double[] from, double[] to, double bulge) {
        add(source, List.of(new DrawnTurn(from[0], from[1], to[0], to[1], bulge)), true);
    }

    /** A whole circle. */
    void circle(Source source, double x, double y, double radius) {
        add(
                source,
                List.of(new DrawnTurn(x + radius, y, x - radius, y, 1), new DrawnTurn(x - radius, y, x + radius, y, 1)),
                true);
    }

    /** An arc by its centre, counter-clockwise; angles in radians, the second up to a turn beyond the first. */
    void arc(Source source, double[] centre, double radius, double from, double to) {
        double[] angles = {from, (from + to) / 2, to};
        List<DrawnTurn> turns = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            turns.add(new DrawnTurn(
                    centre[0] + radius * StrictMath.cos(angles[i]),
                    centre[1] + radius * StrictMath.sin(angles[i]),
                    centre[0] + radius * StrictMath.cos(angles[i + 1]),
                    centre[1] + radius * StrictMath.sin(angles[i + 1]),
                    StrictMath.tan((to - from) / 8)));
        }
        add(source, turns, true);
    }

    private void add(Source source, List<DrawnTurn> turns, boolean curved) {
        Box reach = turns.get(0).reach();
        for (int i = 1; i < turns.size(); i++) {
            reach = reach.with(turns.get(i).reach());
        }
        double most = DrawnPiece.FARTHEST;
        if (reach.left() < -most || reach.bottom() < -most || reach.right() > most || reach.top() > most) {
            faults.add(
                    source.line(),
                    "lines within " + Decimals.trimmed(most, 0) + " mm of the sheet's corner",
                    said(source) + " reaches " + place(reach.left(), reach.bottom()) + " to "
                            + place(reach.right(), reach.top()));
            return;
        }
        boolean inside = reach.left() >= MARGIN
                && reach.bottom() >= MARGIN
                && reach.right() <= width - MARGIN
                && reach.top() <= height - MARGIN;
        List<Spot> spots = new ArrayList<>();
        spots.add(Spot.of(turns.get(0).x1(), turns.get(0).y1()));
        for (DrawnTurn turn : turns) {
            split(turn, inside ? DEPTH : ROUGH_DEPTH, spots);
        }
        chords += spots.size() - 1;
        if (chords > MOST_CHORDS) {
            throw faults.unreadable(
                    source.line(),
                    "a drawing of at most " + MOST_CHORDS + " short lines, its arcs split up",
                    "more of them by here",
                    "name a file that was written for a cutter; split a drawing this large over several files");
        }
        if (!inside) {
            faults.add(
                    source.line(),
                    "inside the sheet, " + Decimals.trimmed(Sheet.MARGIN, 0) + " mm from its edges",
                    said(source) + " at " + outside(reach, spots));
        }
        pieces.add(new DrawnPiece(source.layer(), source.entity(), source.line(), spots, curved, reach, inside));
    }

    private static String said(Source source) {
        return source.entity() + " on " + (source.layer().isEmpty() ? "no layer" : FileFaults.shown(source.layer()));
    }

    // The first corner that is outside, or else how far an arc reaches.
    private String outside(Box reach, List<Spot> spots) {
        for (Spot spot : spots) {
            if (spot.mmX() < MARGIN
                    || spot.mmY() < MARGIN
                    || spot.mmX() > width - MARGIN
                    || spot.mmY() > height - MARGIN) {
                return place(spot.mmX(), spot.mmY());
            }
        }
        return place(reach.left(), reach.bottom()) + " to " + place(reach.right(), reach.top());
    }

    static String place(double x, double y) {
        return "x " + Decimals.trimmed(x, 4) + ", y " + Decimals.trimmed(y, 4) + " mm";
    }

    private static void split(DrawnTurn turn, int depth, List<Spot> spots) {
        if (depth == 0 || turn.isFlat()) {
            spots.add(Spot.of(turn.x2(), turn.y2()));
        } else {
            turn.halves().forEach(half -> split(half, depth - 1, spots));
        }
    }
}
