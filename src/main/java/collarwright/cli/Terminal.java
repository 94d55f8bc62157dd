package collarwright.cli;

import java.io.PrintStream;

/**
 * Where a command prints.
 *
 * @param out what was asked for
 * @param err findings and progress
 * @param live whether a person watches, so that progress is worth printing
 */
public record Terminal(PrintStream out, PrintStream err, boolean live) {

    /**
     * Prints text as it is, with line ends of one kind on every system.
     *
     * @param text lines that end in {@code \n}
     */
    void print(String text) {
        out.print(text);
        out.flush();
    }

    void printError(String text) {
        err.print(text);
        err.flush();
    }
}
