package collarwright.sheet;

import collarwright.drawing.Arc;
import collarwright.drawing.Circle;
import collarwright.drawing.Label;
import collarwright.drawing.Line;
import collarwright.drawing.Path;
import collarwright.drawing.Point;
import collarwright.drawing.Shape;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Names a shape by what it looks like in print, whichever way round it was drawn. */
final class ShapeKey {
    private static final int DECIMALS = 4;

    private ShapeKey() {}

    /** Two points with the same key print alike. */
    static String of(Point p) {
        return Decimals.trimmed(p.x(), DECIMALS) + "," + Decimals.trimmed(p.y(), DECIMALS);
    }

    /** Two shapes with the same key print alike. */
    static String of(Shape shape) {
        if (shape instanceof Line line) {
            return lesser(of(line.from()) + " " + of(line.to()), of(line.to()) + " " + of(line.from()));
        }
        if (shape instanceof Circle circle) {
            return "circle " + of(circle.centre()) + " " + Decimals.trimmed(circle.radius(), DECIMALS);
        }
        if (shape instanceof Arc arc) {
            return of(new Path(
                    List.of(
                            new collarwright.drawing.Vertex(arc.at(arc.start()), StrictMath.tan(arc.sweep() / 4)),
                            new collarwright.drawing.Vertex(arc.at(arc.end()), 0)),
                    false));
        }
        if (shape instanceof Path path) {
            return of(path);
        }
        Label label = (Label) shape;
        return "label " + of(label.at()) + " " + label.height() + " " + label.angle() + " " + label.text();
    }

    private static String of(Path path) {
        List<String> pieces = new ArrayList<>();
        for (int i = 0; i < path.pieceCount(); i++) {
            String from = of(path.from(i).point());
            String to = of(path.to(i));
            double bulge = path.from(i).bulge();
            pieces.add(lesser(from + " " + bulge(bulge) + to, to + " " + bulge(-bulge) + from));
        }
        // Where it starts makes no difference.
        Collections.sort(pieces);
        return String.join(" ", pieces);
    }

    private static String bulge(double bulge) {
        return bulge == 0 ? "" : Decimals.trimmed(bulge, DECIMALS) + " ";
    }

    private static String lesser(String a, String b) {
        return a.compareTo(b) <= 0 ? a : b;
    }
}
