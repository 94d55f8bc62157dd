package collarwright.collar;

import collarwright.collar.SwungContact.Wall;
import collarwright.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * The edges of a hole of any shape, seen along a strut: a strut fits where its section lies inside all of their outlines.
 * The outlines become polygons, their common part is taken, and the largest circle in it is found, roughly (JTS Topology
 * Suite); from there it grows until it touches the curves themselves ({@link GrownCircle}). An oval strut is made a circle
 * by stretching the plane across its largest diameter.
 *
 * <p>Accuracy: with {@value #POINTS} points on each edge, sizes within 1e-7 of the hole's and angles within 0.0001°,
 * measured on round holes.
 */
public final class ProjectedRims {

    private static final int POINTS = 720;
    /** Of the hole's size: how finely the library finds the circle. */
    private static final double ROUGHLY = 5e-3;

    private final double size;
    private final List<Vec3[]> rims = new ArrayList<>();
    private final GeometryFactory factory = new GeometryFactory();

    /**
     * Lays points round the edges of a hole.
     *
     * @param hole its shape
     * @param wall the collar's wall where it bears
     * @throws IllegalArgumentException if the hole does not go through the wall whole
     */
    public ProjectedRims(Aperture hole, Wall wall) {
        if (!hole.goesThrough(wall)) {
            throw new IllegalArgumentException(hole + " in a wall of radii " + wall.inner() + ", " + wall.outer());
        }
        this.size = hole.size();
        Vec3 middle = new Vec3(wall.middle(), 0, 0);
        for (Rim rim : hole.rims(wall)) {
            rims.add(points(rim, middle));
        }
    }

    private static Vec3[] points(Rim rim, Vec3 middle) {
        Vec3[] points = new Vec3[POINTS];
        for (int i = 0; i < POINTS; i++) {
            points[i] = rim.at(2 * StrictMath.PI * i / POINTS).minus(middle);
        }
        return points;
    }

    /**
     * Finds the thickest strut that can point in a direction.
     *
     * @param direction where the strut points
     * @param section the shape of its section; only the ratio of its diameters counts
     * @param roll of the largest diameter from upright, about the strut, in the sense from upright to positive swing
     * @return the largest diameter of the thickest strut of that shape; 0 if none passes
     */
    public double thickest(Direction direction, StrutSection section, double roll) {
        Vec3 up = direction.upright();
        Vec3 side = direction.sideways();
        Vec3 along = up.times(StrictMath.cos(roll)).plus(side.times(StrictMath.sin(roll)));
        Vec3 across = side.times(StrictMath.cos(roll))
                .minus(up.times(StrictMath.sin(roll)))
                .times(section.largest() / section.smallest());
        List<double[][]> outlines =
                rims.stream().map(rim -> outline(rim, along, across)).toList();
        Geometry open = polygon(outlines.get(0));
        for (double[][] outline : outlines.subList(1, outlines.size())) {
            open = open.intersection(polygon(outline));
        }
        if (open.isEmpty() || open.getArea() == 0) {
            return 0;
        }
        Coordinate centre =
                new MaximumInscribedCircle(open, ROUGHLY * size).getCenter().getCoordinate();
        return 2 * new GrownCircle(outlines, size).from(centre.x, centre.y);
    }

    private static double[][] outline(Vec3[] rim, Vec3 along, Vec3 across) {
        double[][] outline = new double[2][rim.length];
        for (int i = 0; i < rim.length; i++) {
            outline[0][i] = rim[i].dot(across);
            outline[1][i] = rim[i].dot(along);
        }
        return outline;
    }

    private Polygon polygon(double[][] outline) {
        int count = outline[0].length;
        Coordinate[] ring = new Coordinate[count + 1];
        for (int i = 0; i < count; i++) {
            ring[i] = new Coordinate(outline[0][i], outline[1][i]);
        }
        ring[count] = ring[0].copy();
        return factory.createPolygon(ring);
    }
}
