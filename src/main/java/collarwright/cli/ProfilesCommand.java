package collarwright.cli;

import collarwright.collar.TrialPiece;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Where;
import collarwright.geometry.Interval;
import collarwright.job.CutLayers;
import collarwright.job.MaterialProfile;
import collarwright.job.Profile;
import collarwright.job.Profiles;
import collarwright.job.Rack;
import collarwright.machining.CuttingData;
import collarwright.machining.Machine;
import collarwright.stock.RoundStock;
import collarwright.tooling.Cutter;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import collarwright.units.Spelling;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists what a job can call by name. */
@Command(
        name = "profiles",
        description = "List known stock, racks, cutting data, machines and layers, with their sources.")
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
        section(text, "stock: pipe, tube and bar", profiles.all(Profiles.Kind.STOCK));
        section(text, "materials", profiles.all(Profiles.Kind.MATERIAL));
        section(text, "racks: cutters", profiles.all(Profiles.Kind.RACK));
        section(text, "cutting data: speeds and feeds", profiles.all(Profiles.Kind.CUTTING));
        section(text, "machines", profiles.all(Profiles.Kind.MACHINE));
        section(text, "layers of cut files", profiles.all(Profiles.Kind.CUT_LAYERS));
        if (!profiles.all(Profiles.Kind.TRIAL_PIECE).isEmpty()) {
            section(text, "trial pieces, measured", profiles.all(Profiles.Kind.TRIAL_PIECE));
        }
        return text.append("\nOne profile in full, with its source and file: profiles NAME\n")
                .toString();
    }

    private static void section(StringBuilder text, String title, Collection<? extends Profile<?>> profiles) {
        text.append('\n').append(title).append('\n');
        for (Profile<?> profile : profiles) {
            row(text, profile.name(), profile.title());
        }
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
        for (Profiles.Kind kind : Profiles.Kind.values()) {
            profiles.all(kind).stream().filter(p -> p.name().equals(name)).forEach(p -> parts.add(full(p)));
        }
        if (parts.isEmpty()) {
            throw unknown(profiles, name);
        }
        return String.join("\n", parts);
    }

    private static String full(Profile<?> profile) {
        StringBuilder text = new StringBuilder(profile.name() + ": " + profile.title() + "\n");
        Object value = profile.value();
        if (value instanceof RoundStock s) {
            stock(text, s);
        } else if (value instanceof MaterialProfile m) {
            material(text, m);
        } else if (value instanceof Rack r) {
            rack(text, r);
        } else if (value instanceof CuttingData c) {
            cutting(text, c);
        } else if (value instanceof Machine m) {
            machine(text, m);
        } else if (value instanceof TrialPiece t) {
            trialPiece(text, t);
        } else if (value instanceof CutLayers l) {
            layers(text, l);
        }
        row(text, "source", profile.source());
        row(text, "file", profile.file());
        return text.toString();
    }

    private static void trialPiece(StringBuilder text, TrialPiece t) {
        row(text, "cut from", t.stock() + ", " + t.material());
        row(text, "bearing wall", limits(t.bearingWall()));
        row(text, "oversize", limits(t.oversize()));
        row(text, "readings", t.readings() + ", rms " + Decimals.fixed(Angles.degrees(t.rms()), 2) + "°");
    }

    private static void layers(StringBuilder text, CutLayers l) {
        for (CutLayers.Line line : CutLayers.Line.values()) {
            CutLayers.Style style = l.of(line);
            row(text, line.word(), style.layer() + ", DXF colour " + style.colour() + ", SVG " + style.svg());
        }
        row(text, "marks and notes", l.cutOnly() ? "not on strips and plates" : "yes");
    }

    private static String limits(Interval size) {
        return interval(size.min(), size.nominal(), size.max());
    }

    private static void material(StringBuilder text, MaterialProfile m) {
        row(text, "density", Decimals.trimmed(m.material().densityKgPerM3(), 1) + " kg/m³");
        row(text, "bowed", "up to " + Decimals.trimmed(100 * m.material().strainLimit(), 3) + " % strain");
        row(text, "cutting data", m.cutting());
        row(
                text,
                "laser",
                m.material().chlorinated()
                        ? "never: the fumes are toxic and corrosive"
                        : "strips and plates may be cut so");
    }

    private static JobException unknown(Profiles profiles, String name) {
        List<String> names = new ArrayList<>();
        for (Profiles.Kind kind : Profiles.Kind.values()) {
            names.addAll(profiles.names(kind));
        }
        List<String> near = Spelling.nearest(name, names, 3);
        String hint = near.isEmpty()
                ? "see the list: collarwright profiles"
                : "did you mean " + String.join(", ", near) + "?";
        return new JobException(List.of(
                Finding.stop(Code.PROFILE_UNKNOWN, new Where.Part("profiles"), "the name of a profile", name, hint)));
    }

    private static void stock(StringBuilder text, RoundStock s) {
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
        row(text, "", "nominal, not measured");
    }

    private static String interval(double min, double nominal, double max) {
        String middle = Decimals.trimmed(nominal, 4) + " mm (" + Decimals.fixed(nominal / 25.4, 4) + " in)";
        return min == max
                ? middle
                : middle + ", " + Decimals.trimmed(min, 4) + " to " + Decimals.trimmed(max, 4) + " mm";
    }

    private static void rack(StringBuilder text, Rack r) {
        for (Cutter c : r.cutters()) {
            row(
                    text,
                    c.id(),
                    c.kind().title() + " " + c.marked() + ", as drilled "
                            + Decimals.trimmed(c.asDrilled().nominal(), 4) + " mm"
                            + (c.measured() ? "" : " (not measured)"));
        }
    }

    private static void cutting(StringBuilder text, CuttingData c) {
        for (CuttingData.Row r : c.rows()) {
            row(
                    text,
                    r.kind().title(),
                    Decimals.trimmed(r.fromSize(), 2) + " to " + Decimals.trimmed(r.toSize(), 2)
                            + " mm: " + Decimals.trimmed(r.surfaceSpeedMPerMin(), 1) + " m/min, "
                            + Decimals.trimmed(r.feedPerRevolution(), 4) + " mm a turn (" + r.source() + ")");
        }
        row(text, "caution", c.caution());
    }

    private static void machine(StringBuilder text, Machine m) {
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
    }
}
