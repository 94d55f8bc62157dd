package collarwright.machining;

/**
 * What a program says about the job that it belongs to.
 *
 * @param title the job's title in any script
 * @param revision the job's revision, 8 letters
 */
public record JobLabel(String title, String revision) {}
