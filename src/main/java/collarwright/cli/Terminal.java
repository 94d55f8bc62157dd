package collarwright.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.Writer;

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

    /**
     * Lets text go to a stream in that stream's own character set.
     *
     * @param stream where it goes
     * @return a writer that keeps nothing back
     */
    static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(
                new Writer() {
                    @Override
                    public void write(char[] text, int from, int length) {
                        stream.print(new String(text, from, length));
                    }

                    @Override
                    public void flush() {
                        stream.flush();
                    }

                    @Override
                    public void close() {
                        flush();
                    }
                },
                true);
    }
}
