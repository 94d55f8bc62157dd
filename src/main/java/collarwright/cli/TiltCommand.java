package collarwright.cli;

import collarwright.collar.RoundHole;
import collarwright.collar.TiltReport;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import collarwright.units.InchFractions;
import collarwright.units.Length;
import collarwright.units.LengthUnit;
import collarwright.units.Reading;
import collarwright.units.Refusal;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
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
            "          tilt --strut 0.922in --collar-od 4.5in --wall 0.337in --lean 15.86"
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

    @ArgGroup(multiplicity = "1")
    private Asked asked = new Asked();

    @Option(names = "--units", paramLabel = "UNIT", description = "Unit of bare numbers: mm (default) or in.")
    private String units = "mm";

    @Option(names = "--json", description = "Print JSON.")
    private boolean json;

    TiltCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    /** What is asked: exactly one of the two. */
    static final class Asked {
        @Option(names = "--hole", paramLabel = "LENGTH", description = "Hole diameter: prints the tilt limit.")
        private @Nullable String hole;

        @Option(names = "--lean", paramLabel = "DEGREES", description = "Needed lean: prints the hole's size.")
        private @Nullable String lean;
    }

    @Override
    public Integer call() {
        Inputs inputs = read();
        TiltReport.Sizes sizes = inputs.sizes();
        TiltReport report = TiltReport.of(sizes);
        terminal.print(json ? json(report, inputs) : text(report, inputs));
        return 0;
    }

    /** The sizes that were read. */
    private record Inputs(double strut, double od, double wall, Optional<Double> lean, double hole) {
        TiltReport.Sizes sizes() {
            return new TiltReport.Sizes(strut, hole, od / 2, wall);
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
        Optional<String> leanText = Optional.ofNullable(asked.lean);
        double hole = leanText.isPresent() ? 0 : length("--hole", String.valueOf(asked.hole), findings);
        Optional<Double> lean = leanText.map(text -> lean(text, findings));
        stopIfAny(findings);
        if (t >= od / 2) {
            findings.add(wrong("--wall", "a wall below half the outside diameter, " + mm(od / 2), mm(t)));
        } else if (d >= od - 2 * t) {
            findings.add(wrong("--strut", "a strut thinner than the collar's bore, " + mm(od - 2 * t), mm(d)));
        } else if (lean.isPresent()) {
            hole = RoundHole.required(d, lean.get(), od / 2 - t, od / 2);
            if (!(hole < od - 2 * t)) {
                findings.add(wrong("--lean", "a lean that a hole narrower than the bore allows", leanText.orElse("")));
            }
        } else if (hole < d) {
            findings.add(wrong("--hole", "a hole that the strut passes through, " + mm(d) + " or more", mm(hole)));
        } else if (hole >= od - 2 * t) {
            findings.add(wrong("--hole", "a hole narrower than the collar's bore, " + mm(od - 2 * t), mm(hole)));
        }
        stopIfAny(findings);
        return new Inputs(d, od, t, lean, hole);
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

    private static String text(TiltReport report, Inputs inputs) {
        StringBuilder text = new StringBuilder();
        line(text, "strut", both(inputs.strut()));
        line(text, "collar", both(inputs.od()) + " outside, wall " + both(inputs.wall()));
        inputs.lean().ifPresent(lean -> line(text, "needed lean", degrees(lean)));
        line(text, inputs.lean().isPresent() ? "hole needed" : "hole", both(inputs.hole()));
        line(text, "tilt limit", degrees(report.tiltLimit()));
        line(text, "contact", report.beside() ? "inner rim, beside the mid-plane" : "both rims, on the mid-plane");
        line(text, "0.1 mm more hole", signed(report.perHole()));
        line(text, "0.1 mm more strut", signed(report.perStrut()));
        line(text, "0.1 mm more wall", signed(report.perWall()));
        text.append("Sharp rims and the full wall are assumed. Drill and measure a test piece before a batch.\n");
        return text.toString();
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

    private static String json(TiltReport report, Inputs inputs) {
        ObjectNode node = new ObjectMapper().createObjectNode();
        node.put("strutMm", inputs.strut());
        node.put("collarOdMm", inputs.od());
        node.put("wallMm", inputs.wall());
        inputs.lean().ifPresent(lean -> node.put("neededLeanDeg", Angles.degrees(lean)));
        node.put("holeMm", inputs.hole());
        node.put("tiltLimitDeg", Angles.degrees(report.tiltLimit()));
        node.put("contactBesideMidPlane", report.beside());
        node.put("degPerTenthMmHole", Angles.degrees(report.perHole()));
        node.put("degPerTenthMmStrut", Angles.degrees(report.perStrut()));
        node.put("degPerTenthMmWall", Angles.degrees(report.perWall()));
        return node.toPrettyString().replace(System.lineSeparator(), "\n") + "\n";
    }
}
