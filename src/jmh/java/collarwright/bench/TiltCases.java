package collarwright.bench;

import collarwright.collar.RoundHole;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Holes to find tilt limits of, from a seeded generator: struts of 16 to 66 mm in holes up to a fifth larger, in walls of
 * 1 to 9 mm, in bores from just wider than the hole to three and a half times its size. Large and small ones follow each
 * other without order, so that nothing can be foreseen.
 */
final class TiltCases {

    private final double[] strut;
    private final double[] hole;
    private final double[] inner;
    private final double[] outer;
    private final double[] limit;

    private TiltCases(List<double[]> cases) {
        strut = cases.stream().mapToDouble(c -> c[0]).toArray();
        hole = cases.stream().mapToDouble(c -> c[1]).toArray();
        inner = cases.stream().mapToDouble(c -> c[2]).toArray();
        outer = cases.stream().mapToDouble(c -> c[3]).toArray();
        limit = cases.stream().mapToDouble(TiltCases::limit).toArray();
    }

    /**
     * Draws cases.
     *
     * @param count how many
     * @param offMidPlane how many of them are to bind beside the mid-plane, that is to have {@code cos θ/p + sin θ/Ri >
     *     1/r} at their limit θ
     * @return the cases, the two sorts mixed at random
     */
    static TiltCases of(int count, int offMidPlane) {
        SplittableRandom random = new SplittableRandom(160_062);
        List<double[]> cases = new ArrayList<>(count);
        int beside = 0;
        while (cases.size() < count) {
            double[] next = draw(random);
            boolean isBeside = offMidPlane(next);
            if (isBeside ? beside < offMidPlane : cases.size() - beside < count - offMidPlane) {
                cases.add(next);
                beside += isBeside ? 1 : 0;
            }
        }
        for (int last = count - 1; last > 0; last--) {
            cases.set(last, cases.set(random.nextInt(last + 1), cases.get(last)));
        }
        return new TiltCases(cases);
    }

    private static double[] draw(SplittableRandom random) {
        double strut = 16 + 50 * random.nextDouble();
        double hole = strut * (1.002 + 0.198 * random.nextDouble());
        double inner = hole / 2 * (1.05 + 2.45 * random.nextDouble());
        return new double[] {strut, hole, inner, inner + 1 + 8 * random.nextDouble()};
    }

    private static double limit(double[] sizes) {
        return RoundHole.tiltLimit(sizes[0], sizes[1], sizes[2], sizes[3]);
    }

    private static boolean offMidPlane(double[] sizes) {
        double limit = limit(sizes);
        return StrictMath.cos(limit) / (sizes[1] / 2) + StrictMath.sin(limit) / sizes[2] > 2 / sizes[0] * (1 + 1e-9);
    }

    int count() {
        return strut.length;
    }

    double tiltLimit(int i) {
        return RoundHole.tiltLimit(strut[i], hole[i], inner[i], outer[i]);
    }

    // The hole that the limit asks for, so the one it was found from.
    double required(int i) {
        return RoundHole.required(strut[i], limit[i], inner[i], outer[i]);
    }
}
