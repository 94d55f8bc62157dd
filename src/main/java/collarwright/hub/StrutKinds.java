package collarwright.hub;

import collarwright.dome.Dome;
import java.util.ArrayList;
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

    static StrutKinds of(Dome dome, Alike alike) {
        return dome.onSphere() ? ofSphere(dome, alike) : new FrameKinds(dome, alike).sort();
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

    static double[] chords(Dome dome) {
        double[] chords = new double[dome.memberCount()];
        for (int m = 0; m < chords.length; m++) {
            chords[m] = dome.chordFactor(m);
        }
        return chords;
    }
}
