package collarwright.machining;

import collarwright.strut.StrutType;
import java.util.Optional;

/**
 * Where the two tie holes of a strut type are, from its own ends.
 *
 * @param type the strut type's id
 * @param made struts of the whole order with spares, 1 or more
 * @param cut the strut's length
 * @param first from cut end a (E1) to the axis of its hole
 * @param second from cut end b (E2) to the axis of its hole
 * @param twist from the hole at end a to the one at end b about the strut, clockwise looking from a to b, in (−π/2, π/2]
 */
public record EndStops(String type, int made, double cut, double first, double second, double twist) {
    /** Checks the count and the order of the holes. */
    public EndStops {
        if (!(made >= 1 && first > 0 && second > 0 && cut > first + second)) {
            throw new IllegalArgumentException(type + ": two holes in a strut, the first before the second");
        }
        if (!(twist > -StrictMath.PI / 2 - 1e-6 && twist < StrictMath.PI / 2 + 1e-6)) {
            throw new IllegalArgumentException(type + ": two holes are turned by a quarter turn at most");
        }
    }

    /**
     * Takes the holes of a strut type.
     *
     * @param type the strut type
     * @param made struts of the whole order with spares
     * @return empty where no tie holes are drilled
     */
    public static Optional<EndStops> of(StrutType type, int made) {
        return type.a()
                .drill()
                .flatMap(a -> type.b().drill().map(b -> new EndStops(type.id(), made, type.cut(), a, b, type.twist())));
    }

    /**
     * Returns where the second hole is while end a still lies against the stop.
     *
     * @return from cut end a
     */
    public double secondInLine() {
        return cut - second;
    }

    /**
     * Returns by how much a strut is turned between its holes in one line, end a against the stop.
     *
     * <p>The second hole stands clockwise of the first by the twist, looking from a to b, so the strut goes back by as much
     * to bring it up.
     *
     * @return clockwise as seen from the stop
     */
    public double turnInLine() {
        return StrutTurn.counts(twist) ? -twist : 0;
    }

    /**
     * Returns by how much a strut is turned after it was turned end for end, its marked line up: what was clockwise is
     * anticlockwise from its other end.
     *
     * @return clockwise as seen from the stop
     */
    public double turnEndForEnd() {
        return StrutTurn.counts(twist) ? twist : 0;
    }
}
