package collarwright.hub;

import collarwright.dome.Dome;
import collarwright.geometry.Vec3;

/**
 * The struts around one node, in clockwise order seen from above, from uphill. One rose serves all nodes in turn, so that
 * a large dome needs no object for each of its struts.
 */
final class HubRose {

    /** No hub has more struts than this; checked when it is aimed. */
    static final int MOST_STRUTS = 12;

    /** Where "up the dome" falls on a hub's plane shorter than this, the +x meridian takes its place. */
    private static final double POLE = 1e-6;

    private static final double SAME = 1e-9;

    private final Dome dome;
    private final StrutKinds kinds;
    private final int[] end = new int[MOST_STRUTS];
    private final int[] kind = new int[MOST_STRUTS];
    private final double[] cos = new double[MOST_STRUTS];
    private final double[] sin = new double[MOST_STRUTS];
    private final double[] order = new double[MOST_STRUTS];
    private final double[] gapCos = new double[MOST_STRUTS];
    private final double[] gapSin = new double[MOST_STRUTS];
    private final double[] gap = new double[MOST_STRUTS];
    private boolean gapsKnown;
    private int size;

    HubRose(Dome dome, StrutKinds kinds) {
        this.dome = dome;
        this.kinds = kinds;
    }

    void aim(int node, int[] ends, int from, int to) {
        if (to - from > MOST_STRUTS || to - from < 2) {
            throw new IllegalArgumentException("a hub of " + (to - from) + " struts");
        }
        size = 0;
        Vec3 axis = dome.axis(node);
        double nx = axis.x();
        double ny = axis.y();
        double nz = axis.z();
        boolean pole = nx * nx + ny * ny < POLE * POLE;
        // Uphill: +z less its part along the axis; at a pole, where there is none, the +x meridian.
        double ux = pole ? 1 : -nz * nx;
        double uy = pole ? 0 : -nz * ny;
        double uz = pole ? 0 : 1 - nz * nz;
        // A quarter turn clockwise from uphill, seen from outside: up × axis.
        double vx = uy * nz - uz * ny;
        double vy = uz * nx - ux * nz;
        double vz = ux * ny - uy * nx;
        for (int i = from; i < to; i++) {
            int member = ends[i] >> 1;
            int other = (ends[i] & 1) == 0 ? dome.memberB(member) : dome.memberA(member);
            double qx = dome.x(other) - dome.x(node);
            double qy = dome.y(other) - dome.y(node);
            double qz = dome.z(other) - dome.z(node);
            insert(ends[i], kinds.kindOfEnd(ends[i]), qx * ux + qy * uy + qz * uz, qx * vx + qy * vy + qz * vz);
        }
        measureGaps();
    }

    private void insert(int newEnd, int newKind, double up, double right) {
        double norm = StrictMath.sqrt(up * up + right * right);
        double c = up / norm;
        double s = right / norm;
        double rank = rank(c, s);
        int at = size++;
        while (at > 0 && order[at - 1] > rank) {
            end[at] = end[at - 1];
            kind[at] = kind[at - 1];
            cos[at] = cos[at - 1];
            sin[at] = sin[at - 1];
            order[at] = order[at - 1];
            at--;
        }
        end[at] = newEnd;
        kind[at] = newKind;
        cos[at] = c;
        sin[at] = s;
        order[at] = rank;
    }

    // Grows with the azimuth from 0 to 4, without an arc tangent for every strut.
    private static double rank(double c, double s) {
        return s >= 0 ? 1 - c : 3 + c;
    }

    private void measureGaps() {
        gapsKnown = false;
        for (int i = 0; i < size; i++) {
            int j = wrap(i + 1);
            gapCos[i] = cos[i] * cos[j] + sin[i] * sin[j];
            gapSin[i] = cos[i] * sin[j] - sin[i] * cos[j];
        }
    }

    int size() {
        return size;
    }

    // Counting on past the last strut comes round to the first.
    int wrap(int i) {
        return i < size ? i : i - size;
    }

    int end(int i) {
        return end[i];
    }

    int kind(int i) {
        return kind[i];
    }

    double cos(int i) {
        return cos[i];
    }

    double sin(int i) {
        return sin[i];
    }

    double gapCos(int i) {
        return gapCos[i];
    }

    double gapSin(int i) {
        return gapSin[i];
    }

    // The gap from strut i to the next one clockwise, in (0, 2π). Only the first hub of a type is asked for it.
    double gap(int i) {
        if (!gapsKnown) {
            for (int k = 0; k < size; k++) {
                double angle = StrictMath.atan2(gapSin[k], gapCos[k]);
                // Struts of one azimuth, whatever rounding says, have no gap; no collar is made for them.
                gap[k] = angle < -SAME ? angle + 2 * StrictMath.PI : StrictMath.max(0, angle);
            }
            gapsKnown = true;
        }
        return gap[i];
    }

    double axialAngle(int i) {
        return kinds.axialAngle(kind[i]);
    }

    // Equal for hubs with the same kinds of strut ends in the same cyclic order; others may share it.
    long strutKey() {
        long sum = size;
        for (int i = 0; i < size; i++) {
            long pair = kind[i] * 0x9E3779B97F4A7C15L ^ (kind[wrap(i + 1)] + 0x632BE59BD9B4E019L) * 0xD6E8FEB86659FD93L;
            pair ^= pair >>> 29;
            sum += pair * 0xBF58476D1CE4E5B9L;
        }
        return sum;
    }
}
