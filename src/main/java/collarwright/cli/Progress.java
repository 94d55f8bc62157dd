package collarwright.cli;

import java.util.Timer;
import java.util.TimerTask;

/**
 * Tells a person at a terminal what a command is doing, once it has been at it for a second: the step that is then under
 * way, and each later one as it begins.
 */
final class Progress implements AutoCloseable {

    private static final long PATIENCE_MILLIS = 1000;

    private final Terminal terminal;
    private final Timer timer = new Timer("progress", true);
    private String step = "";
    private boolean telling;

    Progress(Terminal terminal) {
        this(terminal, PATIENCE_MILLIS);
    }

    Progress(Terminal terminal, long patienceMillis) {
        this.terminal = terminal;
        if (terminal.live()) {
            timer.schedule(
                    new TimerTask() {
                        @Override
                        public void run() {
                            begin();
                        }
                    },
                    patienceMillis);
        }
    }

    private synchronized void begin() {
        telling = true;
        tell();
    }

    synchronized void step(String what) {
        step = what;
        if (telling) {
            tell();
        }
    }

    private void tell() {
        terminal.printError(step + " …\n");
    }

    /** Says nothing more, so that no step is told among the findings. */
    @Override
    public synchronized void close() {
        timer.cancel();
        telling = false;
        step = "";
    }
}
