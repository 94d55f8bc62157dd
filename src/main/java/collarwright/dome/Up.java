package collarwright.dome;

/** Which part of the base points up, along +z. */
public enum Up {
    /** A corner; another corner lies on the +x meridian. */
    VERTEX,
    /** The middle of an edge; the edge lies in the plane of x and z. */
    EDGE,
    /** The middle of a face; one of its corners lies on the +x meridian. */
    FACE
}
