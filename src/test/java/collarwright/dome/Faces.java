package collarwright.dome;

import collarwright.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * The triangles of a dome, found from its members alone: two nodes of a member and a third one that is joined to both. A
 * class I icosahedron has no ring of three members that is not a face.
 */
public final class Faces {

    private final Dome dome;
    private final List<TreeSet<Integer>> neighbours = new ArrayList<>();
    private final List<int[]> triangles = new ArrayList<>();

    private Faces(Dome dome) {
        this.dome = dome;
        for (int node = 0; node < dome.nodeCount(); node++) {
            neighbours.add(new TreeSet<>());
        }
        for (int m = 0; m < dome.memberCount(); m++) {
            neighbours.get(dome.memberA(m)).add(dome.memberB(m));
            neighbours.get(dome.memberB(m)).add(dome.memberA(m));
        }
        for (int m = 0; m < dome.memberCount(); m++) {
            int a = dome.memberA(m);
            int b = dome.memberB(m);
            TreeSet<Integer> third = new TreeSet<>(neighbours.get(a));
            third.retainAll(neighbours.get(b));
            third.tailSet(b).forEach(c -> triangles.add(new int[] {a, b, c}));
        }
    }

    /** Finds the triangles of a dome. */
    public static Faces of(Dome dome) {
        return new Faces(dome);
    }

    /** Nodes that are joined to a node. */
    public List<Integer> neighbours(int node) {
        return List.copyOf(neighbours.get(node));
    }

    /** How many triangles there are. */
    public int count() {
        return triangles.size();
    }

    /** Volume between the triangles and the sphere's centre, on the unit sphere. */
    public double volume() {
        double sum = 0;
        for (int[] t : triangles) {
            Vec3 a = dome.node(t[0]);
            sum += StrictMath.abs(a.dot(dome.node(t[1]).cross(dome.node(t[2])))) / 6;
        }
        return sum;
    }
}
