package collarwright.sheet;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Chains the pieces of one cut layer into contours: where a piece ends, just one other has to begin. Ends of straight
 * pieces have to be alike as printed; an arc that is given by its centre ends near enough at {@link #NEAR}.
 */
final class DrawnContours {
    /** Centre and radius are printed to ten-thousandths, angles to 1e-8 degrees: the end is off by less. */
    static final double NEAR = 0.0005;

    private final Map<DrawnPiece.Spot, List<DrawnPiece>> ends = new LinkedHashMap<>();
    private final Map<Cell, List<DrawnPiece.Spot>> cells = new HashMap<>();
    private final Map<DrawnPiece, List<DrawnPiece.Spot>> nodes = new LinkedHashMap<>();
    private final List<List<DrawnPiece>> closed = new ArrayList<>();
    private final Set<DrawnPiece> strays = new LinkedHashSet<>();

    private record Cell(long x, long y) {}

    private DrawnContours() {}

    static DrawnContours of(List<DrawnPiece> pieces) {
        DrawnContours contours = new DrawnContours();
        pieces.stream().filter(p -> !p.curved()).forEach(contours::join);
        pieces.stream().filter(DrawnPiece::curved).forEach(contours::join);
        contours.walk();
        return contours;
    }

    /** Contours that close, each with its pieces in no special order. */
    List<List<DrawnPiece>> closed() {
        return List.copyOf(closed);
    }

    /** Pieces that meet nothing at either end. */
    List<DrawnPiece> strays() {
        return List.copyOf(strays);
    }

    /** Where other than two pieces end, but for strays. */
    Map<DrawnPiece.Spot, List<DrawnPiece>> open() {
        Map<DrawnPiece.Spot, List<DrawnPiece>> open = new LinkedHashMap<>();
        ends.forEach((spot, pieces) -> {
            if (pieces.size() != 2 && !strays.containsAll(pieces)) {
                open.put(spot, List.copyOf(pieces));
            }
        });
        return open;
    }

    private void join(DrawnPiece piece) {
        if (piece.isClosed()) {
            closed.add(List.of(piece));
            return;
        }
        for (DrawnPiece.Spot end : List.of(piece.first(), piece.last())) {
            DrawnPiece.Spot node = node(end, piece.curved());
            ends.computeIfAbsent(node, s -> new ArrayList<>()).add(piece);
            nodes.computeIfAbsent(piece, p -> new ArrayList<>()).add(node);
        }
    }

    private DrawnPiece.Spot node(DrawnPiece.Spot end, boolean near) {
        if (ends.containsKey(end)) {
            return end;
        }
        long size = StrictMath.round(NEAR * DrawnPiece.GRAIN);
        long x = StrictMath.floorDiv(end.x(), size);
        long y = StrictMath.floorDiv(end.y(), size);
        for (long i = x - 1; near && i <= x + 1; i++) {
            for (long j = y - 1; j <= y + 1; j++) {
                for (DrawnPiece.Spot other : cells.getOrDefault(new Cell(i, j), List.of())) {
                    if (other.distance(end) <= NEAR) {
                        return other;
                    }
                }
            }
        }
        cells.computeIfAbsent(new Cell(x, y), c -> new ArrayList<>()).add(end);
        return end;
    }

    private void walk() {
        Map<DrawnPiece, Boolean> seen = new HashMap<>();
        Set<DrawnPiece.Spot> passed = new HashSet<>();
        for (DrawnPiece start : nodes.keySet()) {
            if (seen.containsKey(start)) {
                continue;
            }
            List<DrawnPiece> chain = new ArrayList<>();
            Deque<DrawnPiece> next = new ArrayDeque<>(List.of(start));
            boolean whole = true;
            seen.put(start, true);
            while (!next.isEmpty()) {
                DrawnPiece piece = next.remove();
                chain.add(piece);
                for (DrawnPiece.Spot node : nodes.getOrDefault(piece, List.of())) {
                    List<DrawnPiece> here = ends.getOrDefault(node, List.of());
                    whole &= here.size() == 2;
                    // Where thousands end in one place they are looked through once, not once for each.
                    for (DrawnPiece other : passed.add(node) ? here : List.<DrawnPiece>of()) {
                        if (seen.put(other, true) == null) {
                            next.add(other);
                        }
                    }
                }
            }
            if (whole) {
                closed.add(List.copyOf(chain));
            } else if (chain.size() == 1) {
                strays.add(start);
            }
        }
    }
}
