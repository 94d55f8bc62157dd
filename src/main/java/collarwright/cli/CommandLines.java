package collarwright.cli;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Level;
import collarwright.finding.Outcome;
import collarwright.finding.Where;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Runs a command line: finds its command, prints what went wrong, and gives the exit code. */
public final class CommandLines {
    // How the library begins to tell of a name that no file can have here.
    private static final String NO_PATH = " to interface java.nio.file.Path";

    private CommandLines() {}

    /** The program without a command. */
    @Command(
            name = "collarwright",
            description = "Turns a dome into drilled hub collars, templates, programs and cut struts.",
            synopsisSubcommandLabel = "COMMAND",
            versionProvider = Version.class,
            mixinStandardHelpOptions = true)
    static final class Top {}

    /**
     * Runs one command.
     *
     * @param terminal where it prints
     * @param args the command line
     * @return its exit code: 0 done, 1 our fault, 2 wrong command line, 3 wrong job, 4 plan not possible, 5 not written
     */
    public static int run(Terminal terminal, String... args) {
        CommandLine line = new CommandLine(new Top());
        line.addSubcommand(new MakeCommand(terminal));
        line.addSubcommand(new CheckCommand(terminal));
        line.addSubcommand(new CompareCommand(terminal));
        line.addSubcommand(new RehearseCommand(terminal));
        line.addSubcommand(new LintCommand(terminal));
        line.addSubcommand(new TiltCommand(terminal));
        line.addSubcommand(new TrialCommand(terminal));
        line.addSubcommand(new NewCommand(terminal));
        line.addSubcommand(new ProfilesCommand(terminal));
        line.addSubcommand(new ExplainCommand(terminal));
        line.getSubcommands().values().forEach(CommandLines::withHelp);
        line.setOut(Terminal.writer(terminal.out()));
        line.setErr(Terminal.writer(terminal.err()));
        line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        line.setUsageHelpWidth(100);
        line.setParameterExceptionHandler((e, a) -> wrongCommandLine(terminal, e));
        line.setExecutionExceptionHandler((e, l, r) -> failed(terminal, e));
        if (args.length == 0) {
            line.usage(line.getErr());
            return Outcome.COMMAND_LINE.exitCode();
        }
        try {
            return line.execute(args);
        } catch (OutOfMemoryError | StackOverflowError e) {
            return failed(terminal, e);
        }
    }

    private static void withHelp(CommandLine command) {
        command.getCommandSpec().mixinStandardHelpOptions(true).versionProvider(new Version());
    }

    private static int wrongCommandLine(Terminal terminal, ParameterException e) {
        List<String> hints = new ArrayList<>();
        if (e instanceof UnmatchedArgumentException unmatched) {
            unmatched.getSuggestions().stream()
                    .limit(2)
                    .map(s -> "did you mean " + s + "?")
                    .forEach(hints::add);
        }
        String told = String.valueOf(e.getMessage());
        if (told.contains(NO_PATH)) {
            told = told.substring(0, told.indexOf(NO_PATH)) + " to the name of a file";
            hints.add("a name with accents needs a terminal that knows them: on Linux LC_ALL=C.UTF-8");
        }
        String name = e.getCommandLine().getCommandSpec().qualifiedName();
        hints.add("see: " + name + " --help");
        Finding finding = new Finding(
                Level.STOP,
                Code.COMMAND_LINE,
                new Where.Part(name),
                "a command line as " + name + " --help shows it",
                told,
                hints);
        terminal.printError(FindingPrinter.print(List.of(finding)));
        return Outcome.COMMAND_LINE.exitCode();
    }

    private static int failed(Terminal terminal, Throwable e) {
        if (e instanceof JobException job) {
            terminal.printError(FindingPrinter.print(job.findings()));
            return exitCode(job.findings());
        }
        Finding finding = Finding.stop(
                Code.PROGRAM_FAULT,
                new Where.Part("collarwright " + Version.number()),
                "no fault of the program",
                e + at(e),
                e instanceof OutOfMemoryError
                        ? "the job is too large for the memory that Java has: run java -Xmx4g -jar …"
                        : "please report this with the job file; nothing was written");
        terminal.printError(FindingPrinter.print(List.of(finding)));
        return Outcome.FAULT.exitCode();
    }

    private static String at(Throwable e) {
        StackTraceElement[] trace = e.getStackTrace();
        return trace.length == 0 ? "" : " at " + trace[0];
    }

    /**
     * Returns the exit code that a command's findings call for.
     *
     * @param findings all findings of the command
     * @return 0 if nothing stops it; else the code of the first stop, a wrong job before all others
     */
    static int exitCode(List<Finding> findings) {
        List<Outcome> stops = findings.stream()
                .filter(f -> f.level() == Level.STOP)
                .map(f -> f.code().outcome())
                .toList();
        if (stops.isEmpty()) {
            return 0;
        }
        return stops.contains(Outcome.JOB)
                ? Outcome.JOB.exitCode()
                : stops.get(0).exitCode();
    }
}
