package collarwright.kit;

import java.util.OptionalDouble;

/**
 * What is tied or boxed together.
 *
 * @param id such as {@code BA}
 * @param kind what is in it
 * @param part id of the strut type or pattern; {@code ring}, {@code tie} or {@code cap}
 * @param pieces how many, 1 or more
 * @param pieceKg weight of one; empty where it is not known
 * @param spare whether it holds spares of the whole order
 */
public record Bundle(String id, Kind kind, String part, int pieces, OptionalDouble pieceKg, boolean spare) {

    /** What is in a bundle. */
    public enum Kind {
        /** Struts of one type. */
        STRUTS,
        /** Collars of one pattern. */
        COLLARS,
        /** Centre rings. */
        RINGS,
        /** Ties or pins. */
        TIES,
        /** Caps that go onto ends when their struts are in. */
        CAPS
    }

    /** Checks the count. */
    public Bundle {
        if (pieces < 1) {
            throw new IllegalArgumentException("a bundle of nothing");
        }
    }

    /**
     * Adds up what is in it.
     *
     * @return kg; empty where the weight of a piece is not known
     */
    public OptionalDouble kg() {
        return pieceKg.isPresent() ? OptionalDouble.of(pieces * pieceKg.getAsDouble()) : OptionalDouble.empty();
    }
}
