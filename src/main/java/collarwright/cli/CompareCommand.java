package collarwright.cli;

import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.pack.CheckReport;
import collarwright.pack.ComparisonReport;
import collarwright.plan.Variant;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans several jobs and puts them side by side; writes nothing. */
@Command(
        name = "compare",
        description =
                "Plan two to six jobs and print them side by side: what is cut, made and bought, how long it takes"
                        + " and what it costs; writes nothing.")
final class CompareCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "JOB", arity = "2..6", description = "Two to six job files.")
    private List<Path> jobs = List.of();

    @Option(names = "--profiles", paramLabel = "FOLDER", description = "A folder of your own profiles.")
    private @Nullable Path profiles;

    @Option(names = "--json", description = "Print JSON.")
    private boolean json;

    CompareCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        List<ComparisonReport.Named> named = new ArrayList<>();
        List<Finding> unread = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        try (Progress progress = new Progress(terminal)) {
            for (Path job : jobs) {
                try {
                    JobFiles files = JobFiles.open(job, Optional.ofNullable(profiles));
                    JobFiles.Planned planned = files.planned(progress);
                    findings.addAll(planned.findings());
                    Variant variant = Variant.of(planned.production(), planned.findings());
                    named.add(new ComparisonReport.Named(job.toString(), variant));
                } catch (JobException e) {
                    // The others are read as well, so that one run tells all that is wrong.
                    e.findings().stream().filter(f -> !unread.contains(f)).forEach(unread::add);
                }
            }
        }
        if (!unread.isEmpty()) {
            if (json) {
                terminal.print(CheckReport.json(unread));
                return CommandLines.exitCode(unread);
            }
            throw new JobException(unread);
        }
        terminal.print(json ? ComparisonReport.json(named) : CompareTable.print(named));
        return CommandLines.exitCode(findings);
    }
}
