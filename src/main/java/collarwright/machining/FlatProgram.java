package collarwright.machining;

/**
 * A program for a flat strip as it is written, with what it was made from.
 *
 * @param name its file name, at most 40 characters, plain letters, no blanks
 * @param task what it does
 * @param lift how far every Z is raised; 0 but for an air cut
 * @param seconds running time, tool changes and pauses not counted
 * @param text the whole text, line ends included
 */
public record FlatProgram(String name, FlatTask task, double lift, double seconds, String text) {
    /** Checks the name. */
    public FlatProgram {
        if (!name.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,39}")) {
            throw new IllegalArgumentException("not a safe file name: " + name);
        }
    }

    /**
     * Tells whether it only shows the way.
     *
     * @return true if nothing is cut
     */
    public boolean air() {
        return lift > 0;
    }

    /**
     * Returns how often it is run for the order.
     *
     * @return once for each piece that is made; 1 for an air cut
     */
    public int runs() {
        return air() ? 1 : task.strip().made();
    }
}
