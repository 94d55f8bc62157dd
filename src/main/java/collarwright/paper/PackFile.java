package collarwright.paper;

/**
 * A file of the pack, as the front page lists it.
 *
 * @param path from the pack's folder, with {@code /} between its parts
 * @param purpose what it is for, in a few words
 * @param bytes its size
 */
public record PackFile(String path, String purpose, long bytes) {
    /** Checks that it leads into the pack. */
    public PackFile {
        if (path.isBlank() || path.startsWith("/") || path.contains("..") || path.contains("\\") || bytes < 0) {
            throw new IllegalArgumentException("not a file of the pack: " + path);
        }
    }
}
