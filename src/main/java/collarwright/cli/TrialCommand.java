package collarwright.cli;

import collarwright.collar.TrialPiece;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.job.Job;
import collarwright.job.TrialPieces;
import collarwright.pack.PackFolder;
import collarwright.pack.TrialContents;
import collarwright.plan.TrialLayout;
import collarwright.plan.UnitWords;
import collarwright.tooling.Hole;
import collarwright.trial.TrialFit;
import collarwright.units.Decimals;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lays out a test collar for a job, or finds from the angles measured on it what bears and how wide the cutters drill. */
@Command(
        name = "trial",
        description = {
            "Lay out a test collar with holes of several sizes, or read the angles that were measured on it.",
            "",
            "Without --rows: writes a folder with a record sheet, a wrap template, programs and rows.csv.",
            "With --rows: finds the bearing wall and the oversize, says what the readings tell and what they do not, and"
                    + " with --write writes them as a profile. Jobs use it with trial-piece = \"NAME\" in [hub]."
        },
        footer = {
            "",
            "Example:  trial job.toml --out shed-trial",
            "          trial job.toml --rows shed-trial/rows.csv --write profiles/shed-trial.toml"
        })
final class TrialCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "JOB", description = "The job file.")
    private Path job = Path.of("job.toml");

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "The folder of the trial piece; by default beside the job file, named after it.")
    private @Nullable Path out;

    @Option(names = "--rows", paramLabel = "FILE", description = "The rows.csv with the measured angles.")
    private @Nullable Path rows;

    @Option(names = "--write", paramLabel = "FILE", description = "Write the result as a profile; a .toml file.")
    private @Nullable Path write;

    @Option(
            names = "--name",
            paramLabel = "NAME",
            description = "What jobs call the profile; by default the file's name without .toml.")
    private @Nullable String name;

    @Option(
            names = "--oversize",
            paramLabel = "LENGTH",
            description = "How much wider than given the cutters drill, if you know it; 0 is a value too.")
    private @Nullable String oversize;

    @Option(
            names = "--bearing-wall",
            paramLabel = "LENGTH",
            description = "The wall that bears, if you know it: only the oversize is looked for.")
    private @Nullable String bearingWall;

    @Option(
            names = "--replace",
            description = "Replace the folder even where its files were changed, and the profile if it is there.")
    private boolean replace;

    @Option(names = "--profiles", paramLabel = "FOLDER", description = "A folder of your own profiles.")
    private @Nullable Path profiles;

    TrialCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        refuse(wrongOptions());
        Optional<Path> measured = Optional.ofNullable(rows);
        if (measured.isPresent()) {
            fit(measured.get());
        } else {
            layOut();
        }
        return 0;
    }

    private static void refuse(List<Finding> findings) {
        if (findings.stream().anyMatch(f -> f.level() == Level.STOP)) {
            throw new JobException(findings);
        }
    }

    private List<Finding> wrongOptions() {
        List<Finding> wrong = new ArrayList<>();
        if (rows != null && out != null) {
            wrong.add(wrong(
                    "--out", "--out or --rows", "both", "lay out first, without --rows; fit later, without --out"));
        }
        if (rows == null) {
            needsRows("--write", write, wrong);
            needsRows("--oversize", oversize, wrong);
            needsRows("--bearing-wall", bearingWall, wrong);
        }
        if (name != null && write == null) {
            wrong.add(wrong(
                    "--name", "--write beside --name", "--name alone", "name the file: --write profiles/NAME.toml"));
        }
        return wrong;
    }

    private static void needsRows(String option, @Nullable Object value, List<Finding> wrong) {
        if (value != null) {
            wrong.add(wrong(
                    option,
                    "--rows beside " + option,
                    option + " alone",
                    "name the file with the measured angles: --rows rows.csv"));
        }
    }

    static Finding wrong(String option, String expected, String found, String hint) {
        return Finding.stop(Code.COMMAND_LINE, new Where.Part(option), expected, found, hint);
    }

    private void layOut() {
        Path folder = Optional.ofNullable(out).orElseGet(() -> JobFiles.beside(job, "-trial"));
        List<Finding> findings = new ArrayList<>();
        TrialLayout layout;
        int files;
        try (Progress progress = new Progress(terminal)) {
            JobFiles.Read read =
                    JobFiles.open(job, Optional.ofNullable(profiles)).read(progress);
            findings.addAll(read.findings());
            progress.step("laying out the test collar");
            layout = TrialLayout.of(read.job());
            findings.addAll(layout.findings());
            progress.step("drawing");
            Map<String, byte[]> contents = TrialContents.of(layout);
            progress.step("writing " + folder);
            findings.addAll(PackFolder.write(folder, contents, replace));
            files = contents.size() + 1;
        }
        terminal.printError(FindingPrinter.print(UnitWords.of(
                layout.job(),
                findings.stream().filter(f -> f.level() == Level.WARN).toList())));
        terminal.print("Made " + folder + " (" + files + " files): one collar with "
                + layout.pattern().holes().size() + " holes, " + sizes(layout) + ".\n"
                + "Drill and measure as " + folder.resolve("trial.pdf") + " says, fill in " + folder.resolve("rows.csv")
                + ", then:\ncollarwright trial " + job + " --rows " + folder.resolve("rows.csv")
                + " --write profiles/my-trial.toml\n");
    }

    private static String sizes(TrialLayout layout) {
        return layout.pattern().holes().stream()
                .map(Hole::cutter)
                .map(c -> c.marked())
                .collect(Collectors.joining(", "));
    }

    private void fit(Path file) {
        JobFiles.Read read;
        try (Progress progress = new Progress(terminal)) {
            read = JobFiles.open(job, Optional.ofNullable(profiles)).read(progress);
        }
        Optional<Path> target = Optional.ofNullable(write);
        Optional<String> called = target.map(t -> TrialInputs.name(t, Optional.ofNullable(name)));
        TrialInputs inputs =
                TrialInputs.read(read.job(), file, Optional.ofNullable(bearingWall), Optional.ofNullable(oversize));
        TrialFit fit = inputs.fit();
        terminal.printError(FindingPrinter.print(UnitWords.of(
                read.job(),
                read.findings().stream().filter(f -> f.level() == Level.WARN).toList())));
        terminal.print(TrialTable.print(fit, inputs.blank(), UnitWords.inches(read.job())));
        inputs.refuseMisfits(fit, file);
        if (target.isPresent()) {
            TrialPiece piece = piece(fit, read.job(), called.orElseThrow());
            TrialInputs.checkWritable(piece);
            NewFile.write(target.get(), TrialPieces.toml(piece).getBytes(StandardCharsets.UTF_8), replace);
            terminal.print(
                    "\nWrote " + target.get() + ". In [hub] of a job: trial-piece = \"" + piece.name()
                            + "\"; the file lies in the folder profiles beside the job, or in a folder named with --profiles.\n");
        }
    }

    private static TrialPiece piece(TrialFit fit, Job job, String name) {
        var collar = job.hub().collar();
        long holes = fit.rows().stream().mapToInt(r -> r.hole()).distinct().count();
        String source = "measured on a test collar, " + fit.rows().size() + " readings in " + holes
                + " holes, strut " + Decimals.trimmed(fit.rows().get(0).strut(), 3) + " mm; job " + job.title()
                + ", revision " + job.revision();
        return new TrialPiece(
                name,
                "Trial piece of " + collar.title(),
                collar.name(),
                collar.material().name(),
                fit.bearing().value(),
                fit.oversize().value(),
                fit.rows().size(),
                fit.rms(),
                source);
    }
}
