package collarwright.finding;

/** How much a finding matters. */
public enum Level {
    /** The work may not go on. */
    STOP,
    /** The work goes on, but a person should look. */
    WARN,
    /** Worth knowing. */
    NOTE
}
