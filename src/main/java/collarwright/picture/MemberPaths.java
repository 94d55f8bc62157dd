package collarwright.picture;

import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/** The members of a dome as one path for each line style, so that a large dome stays a small drawing. */
final class MemberPaths {

    private final List<Path2D> paths = new ArrayList<>();

    MemberPaths(int styles) {
        for (int i = 0; i < styles; i++) {
            paths.add(new Path2D.Double());
        }
    }

    void add(int style, Spot from, Spot to) {
        paths.get(style).moveTo(from.x(), from.y());
        paths.get(style).lineTo(to.x(), to.y());
    }

    void draw(Sketch sketch, IntFunction<Stroking> style) {
        for (int i = 0; i < paths.size(); i++) {
            if (paths.get(i).getCurrentPoint() != null) {
                sketch.draw(style.apply(i), paths.get(i));
            }
        }
    }
}
