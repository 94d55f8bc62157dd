package collarwright.hub;

import java.util.ArrayList;
import java.util.List;

/** The cycle of one hub type as it was first met, from hole 1. */
final class HubCycle {

    private final int index;
    private final int firstNode;
    private final int[] type;
    private final double[] gap;
    private final double[] gapCos;
    private final double[] gapSin;
    private int count;

    private HubCycle(HubRose rose, int start, int index, int firstNode) {
        int size = rose.size();
        this.index = index;
        this.firstNode = firstNode;
        this.type = new int[size];
        this.gap = new double[size];
        this.gapCos = new double[size];
        this.gapSin = new double[size];
        for (int i = 0; i < size; i++) {
            int at = (start + i) % size;
            type[i] = rose.type(at);
            gap[i] = rose.gap(at);
            gapCos[i] = rose.gapCos(at);
            gapSin[i] = rose.gapSin(at);
        }
    }

    static HubCycle from(HubRose rose, int index, int firstNode) {
        int best = 0;
        for (int start = 1; start < rose.size(); start++) {
            if (compare(rose, start, best) < 0) {
                best = start;
            }
        }
        return new HubCycle(rose, best, index, firstNode);
    }

    // By gap, then axial angle, then strut type, hole after hole; on a sphere the strut type stands for the angle.
    private static int compare(HubRose rose, int a, int b) {
        int size = rose.size();
        for (int i = 0; i < size; i++) {
            int at = (a + i) % size;
            int bt = (b + i) % size;
            double difference = rose.gap(at) - rose.gap(bt);
            if (StrictMath.abs(difference) > Hubs.TOLERANCE * rose.gap(bt)) {
                return difference < 0 ? -1 : 1;
            }
            if (rose.type(at) != rose.type(bt)) {
                return Integer.compare(rose.type(at), rose.type(bt));
            }
        }
        return 0;
    }

    boolean matches(HubRose rose, int start) {
        int size = rose.size();
        if (size != type.length) {
            return false;
        }
        for (int i = 0; i < size; i++) {
            int at = start + i < size ? start + i : start + i - size;
            if (type[i] != rose.type(at) || !sameGap(i, rose.gapCos(at), rose.gapSin(at))) {
                return false;
            }
        }
        return true;
    }

    // The sine of the difference of two gaps, without an arc tangent; the cosine keeps opposite gaps apart.
    private boolean sameGap(int i, double cos, double sin) {
        return StrictMath.abs(gapSin[i] * cos - gapCos[i] * sin) <= Hubs.TOLERANCE * gap[i]
                && gapCos[i] * cos + gapSin[i] * sin > 0;
    }

    int index() {
        return index;
    }

    void countOne() {
        count++;
    }

    HubType toType(StrutKinds kinds) {
        List<HubStrut> struts = new ArrayList<>(type.length);
        double azimuth = 0;
        for (int i = 0; i < type.length; i++) {
            struts.add(
                    new HubStrut(type[i], azimuth, kinds.shapes().get(type[i]).axialAngle()));
            azimuth += gap[i];
        }
        return new HubType(struts, count, firstNode);
    }
}
