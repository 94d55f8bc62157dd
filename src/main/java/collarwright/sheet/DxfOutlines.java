package collarwright.sheet;

/** How a contour of several pieces is written as DXF. */
public enum DxfOutlines {
    /** Each piece as a LINE or an ARC of its own, ends shared exactly: read whole by every reader that was tried. */
    LINES_AND_ARCS,
    /** One polyline with bulges for arcs: a contour is one thing to pick. */
    POLYLINES
}
