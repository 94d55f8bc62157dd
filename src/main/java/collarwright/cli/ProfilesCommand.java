package collarwright.cli;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Where;
import collarwright.job.Profiles;
import collarwright.job.Rack;
import collarwright.machining.CuttingData;
import collarwright.machining.Machine;
import collarwright.stock.RoundStock;
import collarwright.tooling.Cutter;
import collarwright.units.Decimals;
import collarwright.units.Spelling;
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

/** Lists what a job can call by name. */
@Command(name = "profiles", description = "List known stock, racks, cutting data and machines, with their sources.")
final class ProfilesCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "NAME", arity = "0..1", description = "Show one profile in full.")
    private @Nullable String name;

    @Option(names = "--profiles", paramLabel = "FOLDER", description = "A folder of your own profiles.")
    private @Nullable Path folder;

    ProfilesCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Path here = Path.of("profiles");
        Profiles profiles = JobFiles.profiles(
                Files.isDirectory(here) ? Optional.of(here) : Optional.empty(), Optional.ofNullable(folder));
        if (!profiles.findings().isEmpty()) {
            terminal.printError(FindingPrinter.print(profiles.findings()));
        }
        terminal.print(name == null ? list(profiles) : one(profiles, name));
        return CommandLines.exitCode(profiles.findings());
    }

    private static String list(Profiles profiles) {
        StringBuilder text = new StringBuilder("All sizes are nominal, not measured.\n");
        section(text, "stock: pipe, tube and bar");
        profiles.names(Profiles.Kind.STOCK).forEach(n -> profiles.stock(n).ifPresent(s -> row(text, n, s.title())));
        section(text, "racks: cutters");
        profiles.names(Profiles.Kind.RACK)
                .forEach(n ->
                        profiles.rack(n).ifPresent(r -> row(text, n, r.cutters().size() + " sizes")));
        section(text, "cutting data");
        profiles.names(Profiles.Kind.CUTTING).forEach(n -> profiles.cutting(n).ifPresent(c -> row(text, n, c.title())));
        section(text, "machines");
        profiles.names(Profiles.Kind.MACHINE).forEach(n -> profiles.machine(n).ifPresent(m -> row(text, n, m.title())));
        return text.append("\nOne profile in full, with its source: profiles NAME\n")
                .toString();
    }

    private static void section(StringBuilder text, String title) {
        text.append('\n').append(title).append('\n');
    }

    private static void row(StringBuilder text, String name, String title) {
        text.append("  ")
                .append(name)
                .append(" ".repeat(StrictMath.max(2, 26 - name.length())))
                .append(title)
                .append('\n');
    }

    private static String one(Profiles profiles, String name) {
        List<String> parts = new ArrayList<>();
        profiles.stock(name).ifPresent(s -> parts.add(stock(s)));
        profiles.all(Profiles.Kind.RACK).stream()
                .filter(p -> p.name().equals(name) && p.value() instanceof Rack)
                .forEach(p -> parts.add(rack(p.name(), p.source(), (Rack) p.value())));
        profiles.cutting(name).ifPresent(c -> parts.add(cutting(c)));
        profiles.machine(name).ifPresent(m -> parts.add(machine(m)));
        if (parts.isEmpty()) {
            throw unknown(profiles, name);
        }
        return String.join("\n", parts);
    }

    private static JobException unknown(Profiles profiles, String name) {
        List<String> names = new ArrayList<>();
        for (Profiles.Kind kind : Profiles.Kind.values()) {
            names.addAll(profiles.names(kind));
        }
        List<String> near = Spelling.nearest(name, names, 3);
        String hint = near.isEmpty() ? "see the list: profiles" : "did you mean " + String.join(", ", near) + "?";
        return new JobException(List.of(
                Finding.stop(Code.PROFILE_UNKNOWN, new Where.Part("profiles"), "the name of a profile", name, hint)));
    }

    private static String stock(RoundStock s) {
        StringBuilder text = new StringBuilder(s.name() + ": " + s.title() + "\n");
        row(text, "material", s.material().title());
        row(text, "outside diameter", interval(s.od().min(), s.od().nominal(), s.od().max()));
        s.wall().ifPresent(w -> row(text, "wall", interval(w.min(), w.nominal(), w.max())));
        if (!s.lengths().isEmpty()) {
            row(
                    text,
                    "sold in",
                    s.lengths().stream()
                                    .map(l -> Decimals.trimmed(l, 1) + " mm")
                                    .toList() + "");
        }
        row(text, "source", s.source());
        row(text, "", "nominal, not measured");
        return text.toString();
    }

    private static String interval(double min, double nominal, double max) {
        String middle = Decimals.trimmed(nominal, 4) + " mm (" + Decimals.fixed(nominal / 25.4, 4) + " in)";
        return min == max
                ? middle
                : middle + ", " + Decimals.trimmed(min, 4) + " to " + Decimals.trimmed(max, 4) + " mm";
    }

    private static String rack(String name, String source, Rack r) {
        StringBuilder text = new StringBuilder(name + "\n");
        for (Cutter c : r.cutters()) {
            row(
                    text,
                    c.id(),
                    c.kind().title() + " " + c.marked() + ", as drilled "
                            + Decimals.trimmed(c.asDrilled().nominal(), 4) + " mm"
                            + (c.measured() ? "" : " (not measured)"));
        }
        row(text, "source", source);
        return text.toString();
    }

    private static String cutting(CuttingData c) {
        StringBuilder text = new StringBuilder(c.material() + ": " + c.title() + "\n");
        for (CuttingData.Row r : c.rows()) {
            row(
                    text,
                    r.kind().title(),
                    Decimals.trimmed(r.fromSize(), 2) + " to " + Decimals.trimmed(r.toSize(), 2)
                            + " mm: " + Decimals.trimmed(r.surfaceSpeedMPerMin(), 1) + " m/min, "
                            + Decimals.trimmed(r.feedPerRevolution(), 4) + " mm a turn (" + r.source() + ")");
        }
        row(text, "caution", c.caution());
        return text.toString();
    }

    private static String machine(Machine m) {
        StringBuilder text = new StringBuilder(m.name() + ": " + m.title() + "\n");
        if (m.programmed()) {
            row(
                    text,
                    "X travel",
                    Decimals.trimmed(m.travel().minX(), 1) + " to "
                            + Decimals.trimmed(m.travel().maxX(), 1) + " mm");
            row(
                    text,
                    "spindle",
                    Decimals.trimmed(m.spindle().minRpm(), 0) + " to "
                            + Decimals.trimmed(m.spindle().maxRpm(), 0) + " rpm");
            row(text, "drilling cycles", m.post().cycles() ? "yes" : "no, plain G0 and G1");
        } else {
            row(text, "programs", "none: tables and templates");
        }
        row(text, "source", m.source());
        return text.toString();
    }
}
