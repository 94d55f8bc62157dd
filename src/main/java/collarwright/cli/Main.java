package collarwright.cli;

import java.io.Console;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** Starts the program. */
public final class Main {

    private Main() {}

    /**
     * Runs one command and ends the process with its exit code.
     *
     * @param args the command line
     */
    public static void main(String[] args) {
        Charset charset = charset();
        PrintStream out = new PrintStream(new java.io.FileOutputStream(java.io.FileDescriptor.out), true, charset);
        PrintStream err = new PrintStream(new java.io.FileOutputStream(java.io.FileDescriptor.err), true, charset);
        int code = CommandLines.run(new Terminal(out, err, System.console() != null), args);
        out.flush();
        err.flush();
        System.exit(code);
    }

    // A terminal gets its own character set, a file or a pipe always UTF-8.
    private static Charset charset() {
        Console console = System.console();
        return console != null ? console.charset() : StandardCharsets.UTF_8;
    }
}
