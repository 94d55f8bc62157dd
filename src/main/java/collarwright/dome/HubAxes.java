package collarwright.dome;

import collarwright.geometry.Vec3;
import java.util.Arrays;

/**
 * Lays the axes of hubs as lines; which way along them a collar's TOP faces is said elsewhere.
 *
 * <p>Fitted: the unit n and the curvature κ of least Σ(v·n + κ·L²/2)² over the hub's struts v of length L, which is radial
 * on a sphere and the normal of a flat frame. κ is taken out first (it is linear), so that what is left is the direction
 * of least spread of the rows that remain; the result does not depend on the unit of length.
 *
 * <p>Even tilts: the n of least Σ(q·n − mean)² over the unit directions q of the struts.
 */
final class HubAxes {

    /** Below this share of the largest spread a second direction is as good: the axis is not determined. */
    private static final double UNDETERMINED = 1e-10;

    private final DomeParts parts;
    private final Form.Axis kind;
    private final int[] start;
    private final int[] ends;

    private HubAxes(DomeParts parts, Form.Axis kind) {
        this.parts = parts;
        this.kind = kind;
        this.start = new int[parts.nodeCount() + 1];
        this.ends = new int[parts.members().length];
        gather();
    }

    /**
     * Lays the axes of all hubs.
     *
     * @param parts nodes and members
     * @param kind how
     * @return three coordinates for each node, of either sense; NaN where the struts do not determine an axis
     */
    static double[] of(DomeParts parts, Form.Axis kind) {
        HubAxes axes = new HubAxes(parts, kind);
        double[] found = new double[3 * parts.nodeCount()];
        for (int node = 0; node < parts.nodeCount(); node++) {
            DomeParts.put(found, node, axes.of(node));
        }
        return found;
    }

    private void gather() {
        int[] members = parts.members();
        for (int node : members) {
            start[node + 1]++;
        }
        for (int node = 0; node < parts.nodeCount(); node++) {
            start[node + 1] += start[node];
        }
        int[] next = start.clone();
        for (int m = 0; m < parts.memberCount(); m++) {
            int a = members[2 * m];
            int b = members[2 * m + 1];
            ends[next[a]++] = b;
            ends[next[b]++] = a;
        }
    }

    private Vec3 of(int node) {
        int struts = start[node + 1] - start[node];
        Vec3[] rows = new Vec3[struts];
        double[] weights = new double[struts];
        double mean = 0;
        for (int i = 0; i < struts; i++) {
            rows[i] = parts.node(ends[start[node] + i]).minus(parts.node(node));
            mean += rows[i].norm() / struts;
        }
        for (int i = 0; i < struts; i++) {
            double length = rows[i].norm();
            boolean fitted = kind == Form.Axis.FITTED;
            weights[i] = fitted ? length * length / (2 * mean * mean) : 1;
            rows[i] = rows[i].times(fitted ? 1 / mean : 1 / length);
        }
        return leastSpread(rows, weights);
    }

    // The n of least Σ(row·n + κ·weight)² when κ is free too.
    private static Vec3 leastSpread(Vec3[] rows, double[] weights) {
        double square = Arrays.stream(weights).map(w -> w * w).sum();
        Vec3 sum = new Vec3(0, 0, 0);
        for (int i = 0; i < rows.length; i++) {
            sum = sum.plus(rows[i].times(weights[i] / square));
        }
        double[][] spread = new double[3][3];
        for (int i = 0; i < rows.length; i++) {
            Vec3 left = rows[i].minus(sum.times(weights[i]));
            double[] v = {left.x(), left.y(), left.z()};
            for (int r = 0; r < 3; r++) {
                for (int c = 0; c < 3; c++) {
                    spread[r][c] += v[r] * v[c];
                }
            }
        }
        return SymmetricAxes.least(spread, UNDETERMINED);
    }
}
