package collarwright.hub;

/** Which end of its type a strut has in a hub. */
public enum StrutTip {
    /** The end with the smaller axial angle; either end of a strut whose two ends are alike. */
    A,
    /** The other end. */
    B
}
