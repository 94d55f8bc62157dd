package collarwright.dome;

import java.util.Comparator;

/**
 * A member while a frame is put together.
 *
 * @param a its first node
 * @param b its second node, which comes later
 * @param role what it is there for
 */
record Placed(int a, int b, Role role) {
    /** By first, then by second node. */
    static final Comparator<Placed> ORDER = Comparator.comparingInt(Placed::a).thenComparingInt(Placed::b);
}
