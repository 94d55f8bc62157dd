package collarwright.strut;

import collarwright.hub.StrutTip;
import java.util.Optional;

/**
 * All struts that are cut and drilled alike.
 *
 * @param id such as {@code SA}; shortest first
 * @param count how many there are in one dome
 * @param chord node to node
 * @param cut length to cut
 * @param twist angle from the tie hole at end a to the one at end b about the strut, clockwise looking from a to b, in
 *     (−π/2, π/2]; 0 where both hub axes and the strut lie in one plane
 * @param a the end with the smaller axial angle
 * @param b the other end
 */
public record StrutType(String id, int count, double chord, double cut, double twist, StrutEnd a, StrutEnd b) {

    /**
     * Returns an end.
     *
     * @param tip which
     * @return the end
     */
    public StrutEnd end(StrutTip tip) {
        return tip == StrutTip.A ? a : b;
    }

    /**
     * Tells whether a strut may be turned end for end.
     *
     * @return true if both ends are alike
     */
    public boolean alike() {
        return a.equals(b);
    }

    /**
     * Returns how far the axes of its two tie holes are apart along the strut.
     *
     * @return mm; empty where none are drilled
     */
    public Optional<Double> holeToHole() {
        return a.drill().flatMap(first -> b.drill().map(second -> cut - first - second));
    }

    /**
     * Names an end of a strut.
     *
     * @param tip which
     * @return such as {@code SA}, and {@code SA-a} where the two ends differ
     */
    public String idAt(StrutTip tip) {
        return alike() ? id : id + (tip == StrutTip.A ? "-a" : "-b");
    }
}
