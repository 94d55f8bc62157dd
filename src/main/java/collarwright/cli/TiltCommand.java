package collarwright.cli;

import collarwright.collar.LeanEnvelope;
import collarwright.collar.TiltReport;
import collarwright.finding.JobException;
import collarwright.machining.ProgramUnits;
import collarwright.picture.EnvelopePicture;
import collarwright.picture.Figures;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** One hole on the bench: size to tilt limit, or angle to size, in any direction and for holes of several kinds. */
@Command(
        name = "tilt",
        description = "One hole: how far a strut leans before it binds, or how large the hole must be.",
        footer = {
            "",
            "Example:  tilt --strut \"40.2 mm\" --collar-od \"160 mm\" --wall \"5.1 mm\" --hole \"44 mm\"",
            "          tilt --strut 0.922in --collar-od 4.5in --wall 0.337in --lean 15.86",
            "          tilt --strut 40.2 --collar-od 160 --wall 5.1 --lean 11.64 --rack metric-hole-saws",
            "          tilt --strut 40.2 --collar-od 160 --wall 5.1 --lean 11.64 --swing 4.3 --envelope hole.svg",
            "          tilt --strut 40.2 --collar-od 160 --wall 5.1 --hole 40.3 --drill-tilt 11.64 --lean 11.64",
            "          tilt --strut 40.2 --strut-oval 39.4 --collar-od 160 --wall 5.1 --hole 42",
            "          tilt --strut 40.2 --collar-od 160 --wall 5.1 --hole 41 --slot-length 46"
        })
final class TiltCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Mixin
    private TiltOptions options = new TiltOptions();

    @Option(
            names = "--envelope",
            paramLabel = "FILE.svg",
            description = "Draw how far the strut leans all the way round the hole.")
    private @Nullable Path envelope;

    @Option(
            names = "--rack",
            paramLabel = "NAME",
            description = "A rack of cutters: prints what each of them gives. May stand more than once, and alone.")
    private List<String> racks = new ArrayList<>();

    @Option(names = "--all", description = "With --rack: list the cutters far beyond the need too.")
    private boolean all;

    @Option(names = "--profiles", paramLabel = "FOLDER", description = "A folder of your own profiles.")
    private @Nullable Path folder;

    @Option(names = "--json", description = "Print JSON.")
    private boolean json;

    TiltCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        if (all && racks.isEmpty()) {
            throw new JobException(List.of(TrialCommand.wrong(
                    "--all", "--rack beside --all", "--all alone", "name a rack, --rack NAME, or leave --all out")));
        }
        Optional<Path> file = Optional.ofNullable(envelope);
        file.ifPresent(TiltEnvelope::checkName);
        TiltAsked asked = options.read(!racks.isEmpty());
        Optional<RackTilts> table = racks.isEmpty()
                ? Optional.empty()
                : Optional.of(RackTilts.of(asked, racks, Optional.ofNullable(folder)));
        if (table.isPresent() && options.sizesOnly()) {
            terminal.print(json ? TiltJson.of(asked, table.get()) : table.get().text(all));
            return 0;
        }
        Optional<TiltReport> report = TiltReport.of(asked.bench(), asked.way());
        Optional<LeanEnvelope> round = file.flatMap(f -> TiltEnvelope.of(asked.bench()));
        if (report.isEmpty() || (file.isPresent() && round.isEmpty())) {
            TiltOptions.passes(asked);
        }
        TiltReport found = report.orElseThrow();
        if (file.isPresent()) {
            TiltEnvelope.write(
                    file.get(),
                    new EnvelopePicture(
                            round.orElseThrow(),
                            new EnvelopePicture.Subject(
                                    TiltText.shape(asked.bench().hole()),
                                    asked.bench().strut(),
                                    asked.wall(),
                                    asked.need()),
                            new Figures(ProgramUnits.MM)));
        }
        terminal.print(
                json
                        ? TiltJson.of(asked, found, round, table)
                        : TiltText.of(asked, found)
                                + table.map(t -> t.text(all)).orElse(""));
        return 0;
    }
}
