package collarwright.cli;

import collarwright.collar.CollarBody;
import collarwright.collar.RoundHole;
import collarwright.collar.TiltReport;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.geometry.Interval;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import collarwright.units.InchFractions;
import collarwright.units.Length;
import collarwright.units.LengthUnit;
import collarwright.units.Reading;
import collarwright.units.Refusal;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** One hole on the bench: size to tilt limit, or angle to size. */
@Command(
        name = "tilt",
        description = "One hole: how far a strut leans before it binds, or how large the hole must be.",
        footer = {
            "",
            "Example:  tilt --strut \"40.2 mm\" --collar-od \"160 mm\" --wall \"5.1 mm\" --hole \"44 mm\"",
            "          tilt --strut 0.922in --collar-od 4.5in --wall 0.337in --lean 15.86",
            "          tilt --strut 40.2 --collar-od 160 --wall 5.1 --lean 11.64 --rack metric-hole-saws"
        })
final class TiltCommand implements Callable<Integer> {

    private static final double LARGEST_LEAN_DEGREES = 80;

    private final Terminal terminal;

    @Option(names = "--strut", required = true, paramLabel = "LENGTH", description = "Strut diameter.")
    private String strut = "";

    @Option(
            names = "--collar-od",
            required = true,
            paramLabel = "LENGTH",
            description = "Outside diameter of the collar.")
    private String collarOd = "";

    @Option(names = "--wall", required = true, paramLabel = "LENGTH", description = "Wall of the collar.")
    private String wall = "";

    @Option(
            names = "--rims",
            paramLabel = "LENGTH",
            description = "Size of the 45° chamfer that eases both rims; sharp rims without it.")
    private @Nullable String rims;

    @ArgGroup(multiplicity = "0..1")
    private Asked asked = new Asked();

    @Option(
            names = "--rack",
            paramLabel = "NAME",
            description = "A rack of cutters: prints what each of them gives. May stand more than once, and alone.")
    private List<String> racks = new ArrayList<>();

    @Option(names = "--profiles", paramLabel = "FOLDER", description = "A folder of your own profiles.")
    private @Nullable Path folder;

    @Option(names = "--units", paramLabel = "UNIT", description = "Unit of bare numbers: mm (default) or in.")
    private String units = "mm";

    @Option(names = "--json", description = "Print JSON.")
    private boolean json;

    TiltCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    /** What is asked: one of the two; neither only beside a rack. */
    static final class Asked {
        @Option(names = "--hole", paramLabel = "LENGTH", description = "Hole diameter: prints the tilt limit.")
        private @Nullable String hole;

        @Option(names = "--lean", paramLabel = "DEGREES", description = "Needed lean: prints the hole's size.")
        private @Nullable String lean;
    }

    @Override
    public Integer call() {
        Inputs inputs = read();
        Optional<RackTilts> table = racks.isEmpty() ? Optional.empty() : Optional.of(table(inputs));
        terminal.print(
                json
                        ? json(inputs, table)
                        : text(inputs) + table.map(RackTilts::text).orElse(""));
        return 0;
    }

    private RackTilts table(Inputs inputs) {
        CollarBody body = new CollarBody(inputs.od() / 2, Interval.of(inputs.wall()), inputs.od(), inputs.rims());
        return new RackTilts(
                body, inputs.strut(), inputs.lean(), RackTilts.cutters(racks, Optional.ofNullable(folder)));
    }

    /** The sizes that were read; the hole is 0 where only a rack is asked for. */
    private record Inputs(double strut, double od, double wall, double rims, Optional<Double> lean, double hole) {
        Optional<TiltReport> report() {
            return hole > 0 ? Optional.of(TiltReport.of(sizes())) : Optional.empty();
        }

        // Eased rims lie nearer together: the wall counts for that much less on either side.
        TiltReport.Sizes sizes() {
            return new TiltReport.Sizes(strut, hole, od / 2 - rims, wall - 2 * rims);
        }
    }

    private Inputs read() {
        List<Finding> findings = new ArrayList<>();
        if (LengthUnit.parse(units).isEmpty()) {
            findings.add(Finding.stop(
                    Code.COMMAND_LINE,
                    new Where.Part("--units"),
                    "mm, cm, m, in or ft",
                    units,
                    "write --units mm or in"));
        }
        double d = length("--strut", strut, findings);
        double od = length("--collar-od", collarOd, findings);
        double t = length("--wall", wall, findings);
        double c = rims == null ? 0 : length("--rims", rims, findings);
        Optional<String> leanText = Optional.ofNullable(asked.lean);
        Optional<String> holeText = Optional.ofNullable(asked.hole);
        double hole = holeText.map(text -> length("--hole", text, findings)).orElse(0.0);
        if (leanText.isEmpty() && holeText.isEmpty() && racks.isEmpty()) {
            findings.add(Finding.stop(
                    Code.COMMAND_LINE,
                    new Where.Part("tilt"),
                    "--hole, --lean or --rack",
                    "none of them",
                    "add --hole LENGTH or --lean DEGREES",
                    "or --rack NAME for a table"));
        }
        Optional<Double> lean = leanText.map(text -> lean(text, findings));
        stopIfAny(findings);
        if (t >= od / 2) {
            findings.add(wrong("--wall", "a wall below half the outside diameter, " + mm(od / 2), mm(t)));
        } else if (c >= t / 2) {
            findings.add(wrong("--rims", "rims below half the wall, " + mm(t / 2), mm(c)));
        } else if (d >= od - 2 * t) {
            findings.add(wrong("--strut", "a strut thinner than the collar's bore, " + mm(od - 2 * t), mm(d)));
        } else if (lean.isPresent()) {
            hole = RoundHole.required(d, lean.get(), od / 2 - t + c, od / 2 - c);
            if (!(hole < od - 2 * t)) {
                findings.add(wrong("--lean", "a lean that a hole narrower than the bore allows", leanText.orElse("")));
            }
        } else if (holeText.isPresent() && hole < d) {
            findings.add(wrong("--hole", "a hole that the strut passes through, " + mm(d) + " or more", mm(hole)));
        } else if (hole >= od - 2 * t) {
            findings.add(wrong("--hole", "a hole narrower than the collar's bore, " + mm(od - 2 * t), mm(hole)));
        }
        stopIfAny(findings);
        return new Inputs(d, od, t, c, lean, hole);
    }

    private static void stopIfAny(List<Finding> findings) {
        if (!findings.isEmpty()) {
            throw new JobException(findings);
        }
    }

    private double length(String option, String text, List<Finding> findings) {
        LengthUnit bare = LengthUnit.parse(units).orElse(LengthUnit.MM);
        return value(option, Length.parse(text, bare, Length.Zero.REFUSED), findings)
                .map(Length::mm)
                .orElse(1.0);
    }

    private static double lean(String text, List<Finding> findings) {
        Optional<Double> lean = value("--lean", Angles.parseDegrees(text), findings);
        if (lean.isEmpty()) {
            return 0;
        }
        if (lean.get() >= 0 && lean.get() <= LARGEST_LEAN_DEGREES) {
            return Angles.radians(lean.get());
        }
        findings.add(wrong("--lean", "an angle in degrees from 0 to 80, such as 11.64", text));
        return 0;
    }

    private static <T> Optional<T> value(String option, Reading<T> reading, List<Finding> findings) {
        if (reading.refusal().isEmpty()) {
            return reading.found();
        }
        Refusal why = reading.refusal().get();
        findings.add(new Finding(
                Level.STOP, Code.COMMAND_LINE, new Where.Part(option), why.expected(), why.found(), why.hints()));
        return Optional.empty();
    }

    private static Finding wrong(String option, String expected, String found) {
        return Finding.stop(
                Code.COMMAND_LINE, new Where.Part(option), expected, found, "check the sizes and their units");
    }

    private static String mm(double length) {
        return Decimals.trimmed(length, 3) + " mm";
    }

    private static String both(double length) {
        return Decimals.fixed(length, 3) + " mm (" + InchFractions.decimal(length, 4) + ")";
    }

    private static String text(Inputs inputs) {
        StringBuilder text = new StringBuilder();
        line(text, "strut", both(inputs.strut()));
        line(text, "collar", both(inputs.od()) + " outside, wall " + both(inputs.wall()));
        if (inputs.rims() > 0) {
            line(text, "rims", "eased, " + both(inputs.rims()) + " × 45°");
        }
        inputs.lean().ifPresent(lean -> line(text, "needed lean", degrees(lean)));
        inputs.report().ifPresent(report -> lines(text, report, inputs));
        text.append((inputs.rims() > 0 ? "" : "Sharp rims are assumed. ")
                + "Drill and measure a test piece before a batch.\n");
        return text.toString();
    }

    private static void lines(StringBuilder text, TiltReport report, Inputs inputs) {
        line(text, inputs.lean().isPresent() ? "hole needed" : "hole", both(inputs.hole()));
        line(text, "tilt limit", degrees(report.tiltLimit()));
        line(text, "contact", report.beside() ? "inner rim, beside the mid-plane" : "both rims, on the mid-plane");
        line(text, "0.1 mm more hole", signed(report.perHole()));
        line(text, "0.1 mm more strut", signed(report.perStrut()));
        line(text, "0.1 mm more wall", signed(report.perWall()));
    }

    private static void line(StringBuilder text, String name, String value) {
        text.append(name).append(" ".repeat(20 - name.length())).append(value).append('\n');
    }

    private static String degrees(double angle) {
        return Decimals.fixed(Angles.degrees(angle), 3) + "°";
    }

    private static String signed(double angle) {
        double degrees = Angles.degrees(angle);
        return (degrees >= 0 ? "+" : "") + Decimals.fixed(degrees, 3) + "°";
    }

    private static String json(Inputs inputs, Optional<RackTilts> table) {
        ObjectNode node = new ObjectMapper().createObjectNode();
        node.put("strutMm", inputs.strut());
        node.put("collarOdMm", inputs.od());
        node.put("wallMm", inputs.wall());
        node.put("rimsMm", inputs.rims());
        inputs.lean().ifPresent(lean -> node.put("neededLeanDeg", Angles.degrees(lean)));
        inputs.report().ifPresent(report -> {
            node.put("holeMm", inputs.hole());
            node.put("tiltLimitDeg", Angles.degrees(report.tiltLimit()));
            node.put("contactBesideMidPlane", report.beside());
            node.put("degPerTenthMmHole", Angles.degrees(report.perHole()));
            node.put("degPerTenthMmStrut", Angles.degrees(report.perStrut()));
            node.put("degPerTenthMmWall", Angles.degrees(report.perWall()));
        });
        table.ifPresent(t -> t.json(node.putArray("rack")));
        return node.toPrettyString().replace(System.lineSeparator(), "\n") + "\n";
    }
}
