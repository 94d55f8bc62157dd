package collarwright.hub;

import collarwright.dome.Dome;
import collarwright.geometry.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Sorts members into strut types by chord, axial angles and twist.
 *
 * @param shapes the types in their order
 * @param typeOfMember type index
 * @param reversed whether a member's first node is at its type's end b
 */
@SuppressWarnings("ArrayRecordComponent") // private to the package; never compared
record StrutKinds(List<StrutShape> shapes, int[] typeOfMember, boolean[] reversed) {

    /** A quarter turn either way is the same line; rounding must not tell the two apart. */
    private static final double QUARTER_SNAP = 1e-9;

    static StrutKinds of(Dome dome, Alike alike) {
        return dome.onSphere() ? ofSphere(dome, alike) : ofFrame(dome, alike);
    }

    /** The end of its type that a strut has at a node. An end is 2 · member + (0 at its first node, 1 at its second). */
    StrutTip tip(int end) {
        int member = end >> 1;
        StrutShape shape = shapes.get(typeOfMember[member]);
        boolean second = (end & 1) == 1;
        return shape.axialA() == shape.axialB() || second == reversed[member] ? StrutTip.A : StrutTip.B;
    }

    /** A number for the strut's type and tip; equal numbers are equal ends. */
    int kindOfEnd(int end) {
        return 2 * typeOfMember[end >> 1] + tip(end).index();
    }

    double axialAngle(int kind) {
        StrutShape shape = shapes.get(kind / 2);
        return kind % 2 == 0 ? shape.axialA() : shape.axialB();
    }

    private static StrutKinds ofSphere(Dome dome, Alike alike) {
        double[] chords = chords(dome);
        NumberBins bins = new NumberBins(chords, alike.length());
        int[] typeOfMember = new int[chords.length];
        int[] counts = new int[bins.kinds()];
        for (int m = 0; m < chords.length; m++) {
            typeOfMember[m] = bins.kindOf(chords[m]);
            counts[typeOfMember[m]]++;
        }
        List<StrutShape> shapes = new ArrayList<>(counts.length);
        for (int i = 0; i < counts.length; i++) {
            // On a sphere both ends of a strut are alike, and both hub axes lie in one plane with it: no twist.
            double angle = StrictMath.asin(bins.first(i) / 2);
            shapes.add(new StrutShape(bins.first(i), angle, angle, 0, counts[i]));
        }
        return new StrutKinds(List.copyOf(shapes), typeOfMember, new boolean[chords.length]);
    }

    private static double[] chords(Dome dome) {
        double[] chords = new double[dome.memberCount()];
        for (int m = 0; m < chords.length; m++) {
            chords[m] = dome.chordFactor(m);
        }
        return chords;
    }

    private static StrutKinds ofFrame(Dome dome, Alike alike) {
        double[] chords = chords(dome);
        double[] angles = new double[2 * chords.length];
        double[] twists = new double[chords.length];
        for (int m = 0; m < chords.length; m++) {
            measure(dome, m, angles, twists);
        }
        if (!alike.twist()) {
            Arrays.fill(twists, 0);
        }
        NumberBins chordBins = new NumberBins(chords, alike.length());
        NumberBins angleBins = new NumberBins(angles, alike.angle());
        NumberBins twistBins = new NumberBins(twists, alike.angle());
        boolean[] reversed = new boolean[chords.length];
        int[][] keys = new int[chords.length][];
        for (int m = 0; m < chords.length; m++) {
            int first = angleBins.kindOf(angles[2 * m]);
            int second = angleBins.kindOf(angles[2 * m + 1]);
            reversed[m] = first > second;
            keys[m] = new int[] {
                chordBins.kindOf(chords[m]),
                StrictMath.min(first, second),
                StrictMath.max(first, second),
                twistBins.kindOf(twists[m])
            };
        }
        int[][] kinds = Arrays.stream(keys).sorted(Arrays::compare).toArray(int[][]::new);
        int[] typeOfMember = new int[chords.length];
        List<int[]> distinct = new ArrayList<>();
        for (int[] key : kinds) {
            if (distinct.isEmpty() || !Arrays.equals(distinct.get(distinct.size() - 1), key)) {
                distinct.add(key);
            }
        }
        int[] counts = new int[distinct.size()];
        int[][] sorted = distinct.toArray(int[][]::new);
        for (int m = 0; m < keys.length; m++) {
            typeOfMember[m] = Arrays.binarySearch(sorted, keys[m], Arrays::compare);
            counts[typeOfMember[m]]++;
        }
        List<StrutShape> shapes = new ArrayList<>(counts.length);
        for (int i = 0; i < counts.length; i++) {
            shapes.add(new StrutShape(
                    chordBins.first(sorted[i][0]),
                    angleBins.first(sorted[i][1]),
                    angleBins.first(sorted[i][2]),
                    twistBins.first(sorted[i][3]),
                    counts[i]));
        }
        return new StrutKinds(List.copyOf(shapes), typeOfMember, reversed);
    }

    private static void measure(Dome dome, int member, double[] angles, double[] twists) {
        int a = dome.memberA(member);
        int b = dome.memberB(member);
        Vec3 along = dome.node(b).minus(dome.node(a)).unit();
        Vec3 first = dome.axis(a);
        Vec3 second = dome.axis(b);
        angles[2 * member] = StrictMath.asin(StrictMath.max(-1, StrictMath.min(1, -along.dot(first))));
        angles[2 * member + 1] = StrictMath.asin(StrictMath.max(-1, StrictMath.min(1, along.dot(second))));
        Vec3 holeA = first.cross(along);
        Vec3 holeB = second.cross(along);
        double turn = StrictMath.atan2(holeA.cross(holeB).dot(along), holeA.dot(holeB));
        double quarter = StrictMath.PI / 2;
        if (turn > quarter + QUARTER_SNAP) {
            turn -= StrictMath.PI;
        } else if (turn < -quarter + QUARTER_SNAP) {
            turn += StrictMath.PI;
        }
        twists[member] = turn;
    }
}
