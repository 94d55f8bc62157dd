package collarwright.dome;

/** How a face of the base is divided before it is pushed out to the sphere. */
public enum Subdivision {
    /** Equal chords on the flat face. */
    CHORDS,
    /** Equal arcs along the edges of the face; class I only. */
    ARCS
}
