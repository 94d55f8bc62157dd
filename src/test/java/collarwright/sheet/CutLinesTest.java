package collarwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.drawing.Box;
import collarwright.drawing.Circle;
import collarwright.drawing.Line;
import collarwright.drawing.Path;
import collarwright.drawing.Point;
import collarwright.drawing.Shape;
import collarwright.drawing.Vertex;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Neighbours found by their boxes against every piece compared with every other. */
class CutLinesTest {

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34})
    void meetings_ofDrawnShapes_areThoseOfEveryPairCompared(long seed) {
        List<Shape> shapes = drawn(new Random(seed));
        Set<String> found = new TreeSet<>();
        for (CutLines.Meeting meeting : new CutLines(shapes).meetings()) {
            assertThat(found.add(meeting.first() + " " + meeting.second())).isTrue();
        }
        assertThat(found).isEqualTo(everyPair(shapes)).isNotEmpty();
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34})
    void around_drawnShapes_countsThoseThatTheDistanceSays(long seed) {
        Random random = new Random(seed);
        List<Shape> circles = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            circles.add(new Circle(point(random), 5 + 40 * random.nextDouble()));
        }
        CutLines lines = new CutLines(circles);
        for (int i = 0; i < 100; i++) {
            Point p = point(random);
            // Chords lie up to their error inside the circle.
            boolean clear = circles.stream()
                    .map(Circle.class::cast)
                    .noneMatch(c -> Math.abs(c.centre().distance(p) - c.radius()) < 2 * Contours.CHORD_ERROR);
            if (clear) {
                assertThat(lines.around(p))
                        .isEqualTo(circles.stream()
                                .map(Circle.class::cast)
                                .filter(c -> c.centre().distance(p) < c.radius())
                                .count());
            }
        }
    }

    private static Point point(Random random) {
        return new Point(200 * random.nextDouble(), 200 * random.nextDouble());
    }

    private static List<Shape> drawn(Random random) {
        List<Shape> shapes = new ArrayList<>();
        for (int i = 0; i < 25; i++) {
            Point p = point(random);
            shapes.add(new Circle(p, 1 + 9 * random.nextDouble()));
            Point q = point(random);
            shapes.add(new Line(q, q.moved(20 * random.nextDouble(), 20 * random.nextDouble())));
            List<Vertex> corners = new ArrayList<>();
            Point r = point(random);
            for (int k = 0; k < 4; k++) {
                corners.add(new Vertex(
                        r.moved(20 * random.nextDouble(), 20 * random.nextDouble()), random.nextInt(3) * 0.3));
            }
            shapes.add(new Path(corners, true));
            Point s = point(random);
            shapes.add(Path.rectangle(new Box(s.x(), s.y(), s.x() + 8, s.y() + 8)));
        }
        return shapes;
    }

    private static Set<String> everyPair(List<Shape> shapes) {
        Set<String> found = new TreeSet<>();
        for (int i = 0; i < shapes.size(); i++) {
            for (int j = i; j < shapes.size(); j++) {
                if (meet(Contours.edges(shapes.get(i), i), Contours.edges(shapes.get(j), j))) {
                    found.add(i + " " + j);
                }
            }
        }
        return found;
    }

    private static boolean meet(List<Contours.Edge> some, List<Contours.Edge> others) {
        for (Contours.Edge a : some) {
            for (Contours.Edge b : others) {
                boolean later = a.shape() != b.shape() || b.order() > a.order();
                if (later && Contours.meet(a, b) && !Contours.join(a, b, SheetLint.STEP)) {
                    return true;
                }
            }
        }
        return false;
    }
}
