package collarwright.testing.house.dome;

import collarwright.testing.house.units.WordsUtil;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine;

/** Knows the clock, files and a library of the command line, computes with Math, and needs what needs it. */
public final class Clocks {
    private Clocks() {}

    /** Breaks what the class says. */
    public static double now() {
        boolean there = Files.exists(Path.of(CommandLine.Help.Ansi.AUTO.name()))
                && WordsUtil.word(1).isEmpty();
        return there ? Math.sin((double) System.nanoTime()) : 0;
    }
}
