package collarwright.hub;

import collarwright.dome.Dome;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Sorts members into strut types by chord factor. */
@SuppressWarnings("ArrayRecordComponent") // private to the package; never compared
record StrutKinds(List<StrutShape> shapes, int[] typeOfMember) {

    static StrutKinds of(Dome dome) {
        double[] chords = new double[dome.memberCount()];
        for (int m = 0; m < chords.length; m++) {
            chords[m] = dome.chordFactor(m);
        }
        double[] sorted = chords.clone();
        Arrays.sort(sorted);
        double[] firsts = firsts(sorted);
        int[] typeOfMember = new int[chords.length];
        int[] counts = new int[firsts.length];
        for (int m = 0; m < chords.length; m++) {
            int at = Arrays.binarySearch(firsts, chords[m]);
            typeOfMember[m] = at >= 0 ? at : -at - 2;
            counts[typeOfMember[m]]++;
        }
        List<StrutShape> shapes = new ArrayList<>();
        for (int i = 0; i < firsts.length; i++) {
            shapes.add(new StrutShape(firsts[i], StrictMath.asin(firsts[i] / 2), counts[i]));
        }
        return new StrutKinds(List.copyOf(shapes), typeOfMember);
    }

    // The least chord of every kind: a chord opens a new kind when it is not equal to the first of the last one.
    private static double[] firsts(double[] sorted) {
        double[] firsts = new double[sorted.length];
        int count = 0;
        for (double chord : sorted) {
            if (count == 0 || chord > firsts[count - 1] * (1 + Hubs.TOLERANCE)) {
                firsts[count++] = chord;
            }
        }
        return Arrays.copyOf(firsts, count);
    }
}
