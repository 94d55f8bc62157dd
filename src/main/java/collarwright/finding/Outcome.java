package collarwright.finding;

/** What a stop finding means for the command that met it; each has its exit code. */
public enum Outcome {
    /** The command line is wrong. */
    COMMAND_LINE(2),
    /** The job is wrong and has to be mended in its text. */
    JOB(3),
    /** The job is well formed, but the plan may not be made as asked. */
    PLAN(4),
    /** The result could not be written. */
    WRITE(5),
    /** The program is at fault: what it made did not pass its own proof. */
    FAULT(1);

    private final int exitCode;

    Outcome(int exitCode) {
        this.exitCode = exitCode;
    }

    /**
     * Returns the exit code of a command that stops for this reason.
     *
     * @return 1 to 5
     */
    public int exitCode() {
        return exitCode;
    }
}
