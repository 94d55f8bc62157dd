package collarwright.cli;

import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.pack.PackContents;
import collarwright.pack.PackFolder;
import collarwright.plan.Production;
import collarwright.plan.UnitWords;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans a job, proves what comes of it, and writes the pack. */
@Command(name = "make", description = "Plan a job, check it, rehearse its programs and write the pack.")
final class MakeCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "JOB", description = "The job file.")
    private Path job = Path.of("job.toml");

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "The pack's folder; by default beside the job file, named after it.")
    private @Nullable Path out;

    @Option(names = "--replace", description = "Replace a pack even where its files were changed or added to.")
    private boolean replace;

    @Option(names = "--profiles", paramLabel = "FOLDER", description = "A folder of your own profiles.")
    private @Nullable Path profiles;

    MakeCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        List<Finding> findings = new ArrayList<>();
        Path folder = Optional.ofNullable(out).orElseGet(() -> JobFiles.beside(job, "-pack"));
        int files;
        try (Progress progress = new Progress(terminal)) {
            Map<String, byte[]> contents = contents(findings, progress);
            progress.step("writing " + folder);
            findings.addAll(PackFolder.write(folder, contents, replace));
            files = contents.size() + 1;
        }
        report(findings, folder, files);
        return 0;
    }

    private Map<String, byte[]> contents(List<Finding> findings, Progress progress) {
        JobFiles.Planned planned =
                JobFiles.open(job, Optional.ofNullable(profiles)).planned(progress);
        Production production = planned.production();
        findings.addAll(planned.findings());
        findings.sort(Comparator.comparing(Finding::level));
        if (!production.makeable()) {
            throw new JobException(UnitWords.of(production.plan().job(), findings));
        }
        progress.step("drawing");
        Map<String, byte[]> contents = PackContents.of(production.with(inPack(findings)));
        findings.replaceAll(
                f -> UnitWords.of(production.plan().job(), List.of(f)).get(0));
        return contents;
    }

    // A pack is the same wherever its job file lies, so it names the file without its folder.
    private static List<Finding> inPack(List<Finding> findings) {
        return findings.stream()
                .map(f -> f.where() instanceof Where.Text text ? at(f, text) : f)
                .toList();
    }

    private static Finding at(Finding f, Where.Text text) {
        String file = text.file()
                .substring(
                        StrictMath.max(text.file().lastIndexOf('/'), text.file().lastIndexOf('\\')) + 1);
        Where where = new Where.Text(file, text.line(), text.column());
        return new Finding(f.level(), f.code(), where, f.expected(), f.found(), f.hints());
    }

    private void report(List<Finding> findings, Path folder, int files) {
        List<Finding> warnings =
                findings.stream().filter(f -> f.level() == Level.WARN).toList();
        terminal.printError(FindingPrinter.print(warnings));
        terminal.print("Made " + folder + " (" + files + " files; " + FindingPrinter.summary(findings) + ").\n"
                + "Open " + folder.resolve("index.html") + "\n");
    }
}
