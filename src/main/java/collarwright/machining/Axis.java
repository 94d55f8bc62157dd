package collarwright.machining;

/** An axis of the machine. */
public enum Axis {
    /** Along the pipe, + toward the free end. */
    X,
    /** Across the pipe. */
    Y,
    /** Up. */
    Z,
    /** The rotary axis along X, in degrees. */
    A
}
