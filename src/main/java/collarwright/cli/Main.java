package collarwright.cli;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/** Starts the program. */
public final class Main {

    private Main() {}

    /**
     * Runs one command and ends the process with its exit code.
     *
     * @param args the command line
     */
    @SuppressWarnings("SystemConsoleNull") // asked again below where it is never null
    public static void main(String[] args) {
        // Pictures are painted without a screen, also on a machine that has one.
        System.setProperty("java.awt.headless", "true");
        Console console = System.console();
        boolean live = isTerminal(console);
        // A terminal gets its own character set, a file or a pipe always UTF-8.
        Charset charset = live && console != null ? console.charset() : StandardCharsets.UTF_8;
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), true, charset);
        PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), true, charset);
        int code = CommandLines.run(new Terminal(out, err, live), args);
        out.flush();
        err.flush();
        System.exit(code);
    }

    // Up to Java 21 there is a console only at a terminal; from Java 22 on the console itself has to be asked.
    @SuppressWarnings("SystemConsoleNull")
    private static boolean isTerminal(@Nullable Console console) {
        if (console == null) {
            return false;
        }
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException e) {
            return true;
        }
    }
}
