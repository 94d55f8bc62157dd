package collarwright.dome;

/** How the grid on a triangle of the base comes to lie on the sphere. */
public enum Subdivision {
    /**
     * Equal chords: the edges of the flat triangle are parted equally and every point of the grid is pushed out from the
     * centre to the sphere. Source: "method 1" of J. D. Clinton, Advanced Structural Geometry Studies, Part I, NASA
     * CR-1734, 1971 (number from memory).
     */
    CHORDS,

    /**
     * Equal arcs: the arcs over the edges of the triangle are parted equally and joined by great circles, three through
     * each inner node. Three great circles do not meet in one point as a rule: the node is the normalised mean of their
     * three crossings. Class I only. Source: "method 2" of the same report (number from memory).
     */
    ARCS
}
