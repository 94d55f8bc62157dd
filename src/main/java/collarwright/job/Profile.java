package collarwright.job;

/**
 * A named set of values that jobs can call upon.
 *
 * @param name what jobs call it
 * @param title its name for people
 * @param source where the figures come from: a standard's number and table, a handbook, or "our choice, no source"
 * @param file the file it stands in
 * @param value what it holds
 * @param <T> what it holds
 */
public record Profile<T>(String name, String title, String source, String file, T value) {}
