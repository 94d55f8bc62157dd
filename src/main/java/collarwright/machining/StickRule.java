package collarwright.machining;

/** Whether collars of different patterns may lie on one stick. */
public enum StickRule {
    /** They may: fewest sticks over the whole order. */
    MIXED,
    /** They may not: every stick holds one pattern. */
    ONE_PATTERN
}
