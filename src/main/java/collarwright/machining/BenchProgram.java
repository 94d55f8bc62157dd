package collarwright.machining;

import java.util.List;

/**
 * A program for work that lies still, as it is written, with what it was made from: a strut on a bed, or a strip on a flat
 * table.
 *
 * @param <T> what its tasks are
 * @param name its file name, at most 40 characters, plain letters, no blanks
 * @param tasks what it does, cutter by cutter; one or more
 * @param lift how far every Z is raised; 0 but for an air cut
 * @param seconds running time, tool changes and pauses not counted
 * @param text the whole text, line ends included
 */
public record BenchProgram<T>(String name, List<T> tasks, double lift, double seconds, String text) {
    /** Checks the name, and that there is something to do. */
    public BenchProgram {
        tasks = List.copyOf(tasks);
        if (!name.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,39}")) {
            throw new IllegalArgumentException("not a safe file name: " + name);
        }
        if (tasks.isEmpty()) {
            throw new IllegalArgumentException(name + ": one task or more");
        }
    }

    /**
     * Returns what it does first; all of it where a file holds one cutter.
     *
     * @return the first task
     */
    public T task() {
        return tasks.get(0);
    }

    /**
     * Tells whether it only shows the way.
     *
     * @return true if nothing is cut
     */
    public boolean air() {
        return lift > 0;
    }
}
