package collarwright.hub;

import collarwright.dome.Dome;
import collarwright.geometry.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Sorts the members of any frame into strut types: by chord, the two axial angles, and the twist. */
final class FrameKinds {

    /** A quarter turn either way is the same line; rounding must not tell the two apart. */
    private static final double QUARTER_SNAP = 1e-9;

    private final double[] chords;
    private final double[] angles;
    private final double[] twists;
    private final Alike alike;
    private final boolean[] reversed;

    FrameKinds(Dome dome, Alike alike) {
        this.alike = alike;
        this.chords = StrutKinds.chords(dome);
        this.angles = new double[2 * chords.length];
        this.twists = new double[chords.length];
        this.reversed = new boolean[chords.length];
        for (int m = 0; m < chords.length; m++) {
            measure(dome, m);
        }
        if (!alike.twist()) {
            Arrays.fill(twists, 0);
        }
    }

    StrutKinds sort() {
        int[][] keys = keys();
        int[][] kinds = distinct(keys);
        int[] typeOfMember = new int[keys.length];
        int[] counts = new int[kinds.length];
        int[] first = new int[kinds.length];
        double[] least = new double[kinds.length];
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        for (int m = 0; m < keys.length; m++) {
            int type = Arrays.binarySearch(kinds, keys[m], Arrays::compare);
            typeOfMember[m] = type;
            first[type] = counts[type]++ == 0 ? m : first[type];
            least[type] = StrictMath.min(least[type], chords[m]);
        }
        List<StrutShape> shapes = new ArrayList<>(kinds.length);
        for (int type = 0; type < kinds.length; type++) {
            shapes.add(shape(first[type], least[type], kinds[type][1] == kinds[type][2], counts[type]));
        }
        return new StrutKinds(List.copyOf(shapes), typeOfMember, reversed);
    }

    // A type's own figures: its least chord, and the angles of its first member.
    private StrutShape shape(int member, double chord, boolean symmetric, int count) {
        double a = angles[2 * member + (reversed[member] ? 1 : 0)];
        double b = angles[2 * member + (reversed[member] ? 0 : 1)];
        return new StrutShape(chord, a, symmetric ? a : b, twists[member], count);
    }

    private int[][] keys() {
        NumberBins chordBins = new NumberBins(chords, alike.length());
        NumberBins angleBins = new NumberBins(angles, alike.angle());
        NumberBins twistBins = new NumberBins(twists, alike.angle());
        int[][] keys = new int[chords.length][];
        for (int m = 0; m < chords.length; m++) {
            int a = angleBins.kindOf(angles[2 * m]);
            int b = angleBins.kindOf(angles[2 * m + 1]);
            reversed[m] = a > b;
            keys[m] = new int[] {
                chordBins.kindOf(chords[m]), StrictMath.min(a, b), StrictMath.max(a, b), twistBins.kindOf(twists[m])
            };
        }
        return keys;
    }

    private static int[][] distinct(int[][] keys) {
        int[][] sorted = Arrays.stream(keys).sorted(Arrays::compare).toArray(int[][]::new);
        List<int[]> distinct = new ArrayList<>();
        for (int[] key : sorted) {
            if (distinct.isEmpty() || !Arrays.equals(distinct.get(distinct.size() - 1), key)) {
                distinct.add(key);
            }
        }
        return distinct.toArray(int[][]::new);
    }

    private void measure(Dome dome, int member) {
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
