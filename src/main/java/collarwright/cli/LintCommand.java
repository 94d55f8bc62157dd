package collarwright.cli;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Where;
import collarwright.job.CutLayers;
import collarwright.job.Profiles;
import collarwright.pack.LayerMaps;
import collarwright.sheet.FileLint;
import collarwright.sheet.LayerMap;
import collarwright.units.Quoted;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Reads cut files back and tells what is wrong with them; writes nothing. */
@Command(
        name = "lint",
        description = "Read DXF and SVG cut files back and tell what is wrong with them; writes nothing.")
final class LintCommand implements Callable<Integer> {
    /** 64 MiB: our choice, no source. */
    private static final int MOST_BYTES = 1 << 26;

    private final Terminal terminal;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "Cut files, .dxf (R12, R2000) or .svg.")
    private List<Path> files = List.of();

    @Option(
            names = "--layers",
            paramLabel = "NAME",
            description = "The layers that the job names under [sheet]; by default those named after roles.")
    private @Nullable String layers;

    @Option(names = "--profiles", paramLabel = "FOLDER", description = "A folder of your own profiles.")
    private @Nullable Path profiles;

    LintCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        LayerMap map = map();
        List<Finding> findings = new ArrayList<>();
        for (Path file : files) {
            try {
                FileLint.Report report = checked(file, map);
                int count = report.faults();
                String verdict = count == 0 ? "sound" : count + (count == 1 ? " fault" : " faults");
                terminal.print(file + ": " + verdict + "; " + report.summary() + "\n");
                findings.addAll(report.findings());
            } catch (JobException e) {
                findings.addAll(e.findings());
            }
        }
        terminal.printError(FindingPrinter.print(findings));
        return CommandLines.exitCode(findings);
    }

    // Templates of a job whose other cut files have no marks have them all the same: what says it has marks, is read
    // so.
    private static FileLint.Report checked(Path file, LayerMap map) {
        String text = text(file);
        FileLint.Report report = FileLint.check(file.toString(), text, map);
        if (!map.cutOnly() || report.findings().isEmpty()) {
            return report;
        }
        FileLint.Report marked = FileLint.check(file.toString(), text, map.whole());
        return marked.faults() < report.faults() ? marked : report;
    }

    private LayerMap map() {
        if (layers == null) {
            return LayerMap.ROLES;
        }
        Path here = Path.of("profiles");
        Profiles known = JobFiles.profiles(
                Files.isDirectory(here) ? Optional.of(here) : Optional.empty(), Optional.ofNullable(profiles));
        Optional<CutLayers> named = known.cutLayers(layers);
        if (named.isEmpty()) {
            List<Finding> findings = new ArrayList<>(known.findings());
            findings.add(Finding.stop(
                    Code.PROFILE_UNKNOWN,
                    new Where.Part("--layers"),
                    "the name of layers of cut files",
                    Quoted.text(layers),
                    "one of " + String.join(", ", known.names(Profiles.Kind.CUT_LAYERS)),
                    "your own: add --profiles FOLDER"));
            throw new JobException(findings);
        }
        return LayerMaps.of(named);
    }

    private static String text(Path file) {
        if (!Files.isRegularFile(file)) {
            throw wrong(file, "a cut file", Files.isDirectory(file) ? "a folder" : "no such file");
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw wrong(file, "a file of at most 64 MiB", "a larger one");
            }
            String text = new String(bytes, StandardCharsets.UTF_8);
            if (text.isBlank()) {
                throw wrong(file, "a cut file", "an empty file");
            }
            return text;
        } catch (IOException e) {
            throw wrong(file, "a file that can be read", String.valueOf(e.getMessage()));
        }
    }

    private static JobException wrong(Path file, String expected, String found) {
        return new JobException(List.of(Finding.stop(
                Code.DRAWING_FILE, new Where.Path(file.toString()), expected, found, "check the name and the folder")));
    }
}
