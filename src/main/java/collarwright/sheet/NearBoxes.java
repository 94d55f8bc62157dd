package collarwright.sheet;

import collarwright.drawing.Box;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** Boxes by where they lie, so that of ten thousand only neighbours are looked at. */
final class NearBoxes {
    private final STRtree tree = new STRtree();

    /**
     * Sorts boxes by their places.
     *
     * @param boxes known by their number in this list
     */
    NearBoxes(List<Box> boxes) {
        for (int i = 0; i < boxes.size(); i++) {
            tree.insert(envelope(boxes.get(i)), i);
        }
    }

    /** The numbers of all boxes that share a point with one, in rising order. */
    List<Integer> meeting(Box box) {
        List<Integer> found = new ArrayList<>();
        tree.query(envelope(box), item -> found.add((Integer) item));
        Collections.sort(found);
        return found;
    }

    private static Envelope envelope(Box box) {
        return new Envelope(box.left(), box.right(), box.bottom(), box.top());
    }
}
