package collarwright.machining;

import collarwright.tooling.Pattern;

/**
 * How many collars of one pattern are made.
 *
 * @param pattern the drilling
 * @param made collars of the whole order with spares, 1 or more
 */
public record PatternRun(Pattern pattern, int made) {
    /** Checks the count. */
    public PatternRun {
        if (made < 1) {
            throw new IllegalArgumentException(pattern.id() + ": nothing to make");
        }
    }
}
