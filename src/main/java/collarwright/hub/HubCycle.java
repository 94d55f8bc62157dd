package collarwright.hub;

import java.util.ArrayList;
import java.util.List;

/** The cycle of one hub type as it was first met, from hole 1. */
final class HubCycle {

    private final int index;
    private final int firstNode;
    private final int[] kind;
    private final Alike.Within within;
    private final double[] gap;
    private final double[] gapCos;
    private final double[] gapSin;
    private int count;

    private HubCycle(HubRose rose, int start, int index, int firstNode, Alike.Within within) {
        this.within = within;
        int size = rose.size();
        this.index = index;
        this.firstNode = firstNode;
        this.kind = new int[size];
        this.gap = new double[size];
        this.gapCos = new double[size];
        this.gapSin = new double[size];
        for (int i = 0; i < size; i++) {
            int at = rose.wrap(start + i);
            kind[i] = rose.kind(at);
            gap[i] = rose.gap(at);
            gapCos[i] = rose.gapCos(at);
            gapSin[i] = rose.gapSin(at);
        }
    }

    static HubCycle from(HubRose rose, int index, int firstNode, Alike.Within within) {
        int best = 0;
        for (int start = 1; start < rose.size(); start++) {
            if (compare(rose, start, best, within) < 0) {
                best = start;
            }
        }
        return new HubCycle(rose, best, index, firstNode, within);
    }

    // By gap, then axial angle, then strut type, hole after hole; kinds of ends that lean alike stand in that order.
    private static int compare(HubRose rose, int a, int b, Alike.Within within) {
        int size = rose.size();
        for (int i = 0; i < size; i++) {
            int at = rose.wrap(a + i);
            int bt = rose.wrap(b + i);
            double gapA = rose.gap(at);
            double gapB = rose.gap(bt);
            if (!within.same(StrictMath.min(gapA, gapB), StrictMath.max(gapA, gapB))) {
                return gapA < gapB ? -1 : 1;
            }
            if (rose.kind(at) != rose.kind(bt)) {
                double low = StrictMath.min(rose.axialAngle(at), rose.axialAngle(bt));
                double high = StrictMath.max(rose.axialAngle(at), rose.axialAngle(bt));
                return within.same(low, high)
                        ? Integer.compare(rose.kind(at), rose.kind(bt))
                        : Double.compare(rose.axialAngle(at), rose.axialAngle(bt));
            }
        }
        return 0;
    }

    boolean matches(HubRose rose, int start) {
        int size = rose.size();
        if (size != kind.length) {
            return false;
        }
        for (int i = 0; i < size; i++) {
            int at = rose.wrap(start + i);
            if (kind[i] != rose.kind(at) || !sameGap(i, rose.gapCos(at), rose.gapSin(at))) {
                return false;
            }
        }
        return true;
    }

    // The sine of the difference of two gaps, without an arc tangent; the cosine keeps opposite gaps apart.
    private boolean sameGap(int i, double cos, double sin) {
        return StrictMath.abs(gapSin[i] * cos - gapCos[i] * sin) <= within.relative() * gap[i] + within.absolute()
                && gapCos[i] * cos + gapSin[i] * sin > 0;
    }

    int index() {
        return index;
    }

    void countOne() {
        count++;
    }

    HubType toType(StrutKinds kinds) {
        List<HubStrut> struts = new ArrayList<>(kind.length);
        double azimuth = 0;
        for (int i = 0; i < kind.length; i++) {
            StrutTip tip = kind[i] % 2 == 0 ? StrutTip.A : StrutTip.B;
            struts.add(new HubStrut(kind[i] / 2, tip, azimuth, kinds.axialAngle(kind[i])));
            azimuth += gap[i];
        }
        return new HubType(struts, count, firstNode);
    }
}
