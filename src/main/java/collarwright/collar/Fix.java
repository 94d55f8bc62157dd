package collarwright.collar;

/** How strut ends are held to the centre ring. */
public enum Fix {
    /** Tied through the tie hole, round the ring. */
    TIE,
    /** Pinned into a radial hole of the ring. */
    PIN
}
