package collarwright.cli;

/** Tells a person at a terminal what a command is doing, once it has been at it for a second. */
final class Progress {

    private static final long PATIENCE_NANOS = 1_000_000_000L;

    private final Terminal terminal;
    private final long start = System.nanoTime();

    Progress(Terminal terminal) {
        this.terminal = terminal;
    }

    void step(String what) {
        if (terminal.live() && System.nanoTime() - start > PATIENCE_NANOS) {
            terminal.printError(what + " …\n");
        }
    }
}
