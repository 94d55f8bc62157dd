package collarwright.tooling;

import collarwright.collar.StrutLine;

/**
 * All struts of one type that join the same holes of the same two kinds of hub: they take the same line.
 *
 * @param strutType index of the strut type
 * @param a hub type and strut at end a
 * @param b the same at end b
 * @param count how many there are in one dome
 * @param line through both holes
 */
public record Joint(int strutType, At a, At b, int count, StrutLine line) {

    /**
     * Where an end goes.
     *
     * @param hubType index of the hub type
     * @param strut index of the strut in its hub type
     */
    public record At(int hubType, int strut) {}
}
