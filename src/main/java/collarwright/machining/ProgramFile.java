package collarwright.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A program as it is written, with what it was made from.
 *
 * @param name its file name, at most 40 characters, plain letters, no blanks
 * @param purpose what it is for
 * @param task what it does; empty for the rotary direction test
 * @param lift how far every Z is raised; 0 but for an air cut
 * @param effort running time, turns and travel
 * @param text the whole text, line ends included
 * @param after what it does after its first task, each with the next cutter; empty where a file holds one cutter
 */
public record ProgramFile(
        String name,
        Purpose purpose,
        Optional<ProgramTask> task,
        double lift,
        Effort effort,
        String text,
        List<ProgramTask> after) {

    /** Checks the name. */
    public ProgramFile {
        after = List.copyOf(after);
        if (!name.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,39}")) {
            throw new IllegalArgumentException("not a safe file name: " + name);
        }
    }

    /**
     * A program with one cutter.
     *
     * @param name its file name
     * @param purpose what it is for
     * @param task what it does
     * @param lift how far every Z is raised
     * @param effort running time, turns and travel
     * @param text the whole text
     */
    public ProgramFile(
            String name, Purpose purpose, Optional<ProgramTask> task, double lift, Effort effort, String text) {
        this(name, purpose, task, lift, effort, text, List.of());
    }

    /**
     * Looks at each of its tasks alone.
     *
     * @return the file once for each task, with the whole text and that task only; itself if it has one or none
     */
    public List<ProgramFile> byTask() {
        if (after.isEmpty()) {
            return List.of(this);
        }
        List<ProgramFile> views = new ArrayList<>();
        task.ifPresent(t -> views.add(view(t)));
        after.forEach(t -> views.add(view(t)));
        return List.copyOf(views);
    }

    private ProgramFile view(ProgramTask only) {
        return new ProgramFile(name, purpose, Optional.of(only), lift, effort, text);
    }

    /** What a program is for. */
    public enum Purpose {
        /** Cuts. */
        CUT,
        /** The same moves, all above the pipe. */
        AIR_CUT,
        /** Shows which way A turns. */
        DIRECTION_TEST
    }

    /**
     * Running time, turns and travel.
     *
     * @param seconds time estimate; tool changes, pauses and turns by hand not counted
     * @param rotationDegrees how far A turns in all
     * @param leastRotationDegrees the least turn that visits all its angles
     * @param travel how far X goes in all
     * @param leastTravel the least travel of X that visits all holes turn by turn
     * @param handTurns how often a hand turns the pipe; 0 where the machine does
     */
    public record Effort(
            double seconds,
            double rotationDegrees,
            double leastRotationDegrees,
            double travel,
            double leastTravel,
            int handTurns) {

        /** Nothing done. */
        public static final Effort NONE = new Effort(0, 0, 0, 0, 0, 0);

        /**
         * Adds another program's.
         *
         * @param other what else is run
         * @return both, one after the other
         */
        public Effort plus(Effort other) {
            return new Effort(
                    seconds + other.seconds,
                    rotationDegrees + other.rotationDegrees,
                    leastRotationDegrees + other.leastRotationDegrees,
                    travel + other.travel,
                    leastTravel + other.leastTravel,
                    handTurns + other.handTurns);
        }

        /**
         * Counts it several times.
         *
         * @param runs how often it is run, 0 or more
         * @return all runs together
         */
        public Effort times(int runs) {
            return new Effort(
                    runs * seconds,
                    runs * rotationDegrees,
                    runs * leastRotationDegrees,
                    runs * travel,
                    runs * leastTravel,
                    runs * handTurns);
        }

        /**
         * Counts the hand that turns the pipe in.
         *
         * @param each what one turn by hand takes, seconds
         * @return running time with all turns by hand, seconds
         */
        public double seconds(double each) {
            return seconds + handTurns * each;
        }
    }

    /**
     * Returns the time estimate.
     *
     * @return seconds, tool changes and pauses not counted
     */
    public double seconds() {
        return effort.seconds();
    }
}
