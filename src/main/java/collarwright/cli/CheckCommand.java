package collarwright.cli;

import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.pack.CheckReport;
import collarwright.plan.Plan;
import collarwright.plan.UnitWords;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans a job and tells every finding; writes nothing. */
@Command(name = "check", description = "Plan a job and print every finding and the worst margins; writes nothing.")
final class CheckCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "JOB", description = "The job file.")
    private Path job = Path.of("job.toml");

    @Option(names = "--profiles", paramLabel = "FOLDER", description = "A folder of your own profiles.")
    private @Nullable Path profiles;

    @Option(names = "--json", description = "Print JSON.")
    private boolean json;

    @Option(
            names = "--collars",
            description = "Print the smallest stock collars and rings that would do without a warning as well.")
    private boolean collars;

    CheckCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        try {
            return checked();
        } catch (JobException e) {
            if (!json) {
                throw e;
            }
            terminal.print(CheckReport.json(e.findings()));
            return CommandLines.exitCode(e.findings());
        }
    }

    private int checked() {
        JobFiles files;
        JobFiles.Planned planned;
        try (Progress progress = new Progress(terminal)) {
            files = JobFiles.open(job, Optional.ofNullable(profiles));
            planned = files.planned(progress);
        }
        Plan plan = planned.production().plan();
        List<Finding> findings = planned.findings();
        if (json) {
            terminal.print(CheckReport.json(plan.with(findings)));
        } else {
            terminal.print(CheckTable.print(plan));
            if (collars) {
                terminal.print(CollarTable.print(plan, files.allStock()));
            }
            terminal.printError(FindingPrinter.print(UnitWords.of(plan.job(), findings)));
        }
        return CommandLines.exitCode(findings);
    }
}
