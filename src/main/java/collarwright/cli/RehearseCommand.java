package collarwright.cli;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.machining.ProgramFile;
import collarwright.machining.RotarySettings;
import collarwright.picture.BackplotPicture;
import collarwright.picture.Figures;
import collarwright.picture.SvgPicture;
import collarwright.plan.Production;
import collarwright.rehearsal.Comparison;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Replays program files, which somebody may have edited, and tells how they differ from what the job plans. */
@Command(
        name = "rehearse",
        description = "Replay program files and tell how they differ from what the job plans; writes nothing else.")
final class RehearseCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "Program files.")
    private List<Path> files = List.of();

    @Option(names = "--job", paramLabel = "JOB", required = true, description = "The job file.")
    private Path job = Path.of("job.toml");

    @Option(
            names = "--as",
            paramLabel = "PROGRAM",
            description = "Which program of the pack it is, by its file name; else its own name or its head tells.")
    private @Nullable String as;

    @Option(names = "--picture", paramLabel = "FILE.svg", description = "Draw what the program does.")
    private @Nullable Path picture;

    @Option(names = "--replace", description = "Replace the picture's file if it is there.")
    private boolean replace;

    @Option(names = "--profiles", paramLabel = "FOLDER", description = "A folder of your own profiles.")
    private @Nullable Path profiles;

    RehearseCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        refuse(wrongOptions());
        Production production;
        try (Progress progress = new Progress(terminal)) {
            JobFiles.Planned planned =
                    JobFiles.open(job, Optional.ofNullable(profiles)).planned(progress);
            production = planned.production();
            refuse(planned.findings());
        }
        List<Finding> findings = new ArrayList<>();
        for (Path file : files) {
            try {
                findings.addAll(rehearsed(file, production));
            } catch (JobException e) {
                findings.addAll(e.findings());
            }
        }
        terminal.printError(FindingPrinter.print(findings));
        return CommandLines.exitCode(findings);
    }

    private static void refuse(List<Finding> findings) {
        if (findings.stream().anyMatch(f -> f.level() == Level.STOP)) {
            throw new JobException(findings);
        }
    }

    private List<Finding> wrongOptions() {
        List<Finding> wrong = new ArrayList<>();
        if (files.size() > 1 && as != null) {
            wrong.add(oneFile("--as"));
        }
        if (files.size() > 1 && picture != null) {
            wrong.add(oneFile("--picture"));
        }
        return wrong;
    }

    private Finding oneFile(String option) {
        return Finding.stop(
                Code.COMMAND_LINE,
                new Where.Part(option),
                "one program file beside " + option,
                files.size() + " files",
                "rehearse them one by one");
    }

    private List<Finding> rehearsed(Path file, Production production) {
        EditedProgram edited = EditedProgram.read(file);
        List<PackProgram> programs = PackProgram.of(production);
        PackProgram planned = edited.plan(programs, Optional.ofNullable(as), job);
        if (picture != null && planned.rotary().isEmpty()) {
            throw new JobException(List.of(Finding.stop(
                    Code.COMMAND_LINE,
                    new Where.Part("--picture"),
                    "a program of a machine that turns the pipe",
                    planned.name() + ", for work that lies still",
                    "leave --picture out: what differs is told without it")));
        }
        Comparison comparison = planned.comparison().apply(edited.text(), edited.name());
        terminal.print(RehearseText.line(edited.name(), planned, comparison));
        Optional.ofNullable(picture)
                .ifPresent(target -> planned.rotary().ifPresent(p -> draw(target, p, comparison, production)));
        List<Finding> findings = new ArrayList<>(edited.findings());
        if (as == null) {
            edited.looksLike(planned, programs).ifPresent(findings::add);
        }
        findings.addAll(comparison.findings());
        return findings;
    }

    private void draw(Path target, ProgramFile planned, Comparison comparison, Production production) {
        RotarySettings settings = Production.settings(production.plan().job());
        Figures figures = new Figures(settings.units());
        BackplotPicture drawn =
                new BackplotPicture(planned, comparison.replay(), settings, figures, BackplotPicture.WIDTH);
        NewFile.write(target, SvgPicture.document(drawn, "backplot").getBytes(StandardCharsets.UTF_8), replace);
        terminal.print("Wrote " + target + "\n");
    }
}
