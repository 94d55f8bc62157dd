package collarwright.hub;

import collarwright.dome.Dome;
import java.util.ArrayList;
import java.util.List;

/** Sorts members into strut types by chord factor. */
@SuppressWarnings("ArrayRecordComponent") // private to the package; never compared
record StrutKinds(List<StrutShape> shapes, int[] typeOfMember) {

    static StrutKinds of(Dome dome) {
        double[] chords = new double[dome.memberCount()];
        for (int m = 0; m < chords.length; m++) {
            chords[m] = dome.chordFactor(m);
        }
        ChordBins bins = new ChordBins(chords);
        int[] typeOfMember = new int[chords.length];
        int[] counts = new int[bins.kinds()];
        for (int m = 0; m < chords.length; m++) {
            typeOfMember[m] = bins.kindOf(chords[m]);
            counts[typeOfMember[m]]++;
        }
        List<StrutShape> shapes = new ArrayList<>(counts.length);
        for (int i = 0; i < counts.length; i++) {
            shapes.add(new StrutShape(bins.first(i), StrictMath.asin(bins.first(i) / 2), counts[i]));
        }
        return new StrutKinds(List.copyOf(shapes), typeOfMember);
    }
}
