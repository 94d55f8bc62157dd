package collarwright.cli;

import collarwright.collar.Bench;
import collarwright.collar.CollarBody;
import collarwright.collar.RoundAperture;
import collarwright.collar.StrutSection;
import collarwright.collar.SwungContact.Wall;
import collarwright.collar.TiltReport;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Where;
import collarwright.geometry.Interval;
import collarwright.job.Profiles;
import collarwright.job.Rack;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import collarwright.tooling.DrillingSettings;
import collarwright.tooling.Fit;
import collarwright.tooling.HoleNeed;
import collarwright.tooling.HoleSize;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import collarwright.units.Quoted;
import collarwright.units.Spelling;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What every cutter of a rack does to one strut in one collar: the table of {@code tilt --rack}. */
final class RackTilts {

    /** The band and the clearance that a job has unless it says otherwise. */
    private static final double BAND = StrictMath.PI / 360;

    private static final double CLEARANCE = 0.3;

    /** Rows past the need that are worth a look. Our choice, no source. */
    private static final int PAST = 3;

    private final CollarBody body;
    private final double strut;
    private final Optional<Double> lean;
    private final Bench.Way way;
    private final List<Cutter> cutters;

    /**
     * Takes what is asked.
     *
     * @param body the collar
     * @param strut strut diameter, below the bore
     * @param lean the needed lean
     * @param way which way it leans
     * @param cutters the cutters, ascending
     */
    RackTilts(CollarBody body, double strut, Optional<Double> lean, Bench.Way way, List<Cutter> cutters) {
        this.body = body;
        this.strut = strut;
        this.lean = lean;
        this.way = way;
        this.cutters = cutters.stream().filter(c -> passes(c, body, strut)).toList();
    }

    /** The table for what {@code tilt} was asked: for a round hole drilled radially and a round strut. */
    static RackTilts of(TiltAsked asked, List<String> racks, Optional<Path> folder) {
        Bench bench = asked.bench();
        boolean plain = bench.hole() instanceof RoundAperture && bench.strut().isRound();
        if (!plain) {
            throw new JobException(List.of(Finding.stop(
                    Code.COMMAND_LINE,
                    new Where.Part("--rack"),
                    "a round strut in round holes drilled straight",
                    "another shape",
                    "leave --rack out, or the other shape")));
        }
        CollarBody body =
                new CollarBody(bench.pipe().outer(), Interval.of(asked.wall()), asked.outsideDiameter(), bench.rims());
        return new RackTilts(body, bench.strut().largest(), asked.lean(), asked.way(), cutters(racks, folder));
    }

    private static boolean passes(Cutter cutter, CollarBody body, double strut) {
        double hole = cutter.asDrilled().nominal();
        return hole >= strut && hole < 2 * body.innerRadius();
    }

    /**
     * Finds the cutters of racks.
     *
     * @param names names of racks
     * @param folder a folder of profiles beside the usual ones
     * @return their drills and saws, ascending by as-drilled size
     * @throws JobException if a rack is not known or a profile is wrong
     */
    static List<Cutter> cutters(List<String> names, Optional<Path> folder) {
        Path here = Path.of("profiles");
        Profiles profiles = JobFiles.profiles(Files.isDirectory(here) ? Optional.of(here) : Optional.empty(), folder);
        List<Finding> findings = new ArrayList<>(profiles.findings());
        List<Cutter> cutters = new ArrayList<>();
        for (String name : names) {
            Optional<Rack> rack = profiles.rack(name);
            rack.ifPresent(r -> cutters.addAll(r.cutters()));
            if (rack.isEmpty()) {
                findings.add(unknown(name, profiles));
            }
        }
        if (!findings.isEmpty()) {
            throw new JobException(findings);
        }
        return cutters.stream()
                .filter(c -> c.kind() != CutterKind.END_MILL) // makes any size, so there is nothing to list
                .distinct()
                .sorted(Comparator.comparingDouble((Cutter c) -> c.asDrilled().nominal())
                        .thenComparing(Cutter::id)
                        .thenComparing(Cutter::rack))
                .toList();
    }

    private static Finding unknown(String name, Profiles profiles) {
        List<String> near = Spelling.nearest(name, profiles.names(Profiles.Kind.RACK), 3);
        return Finding.stop(
                Code.COMMAND_LINE,
                new Where.Part("--rack"),
                "the name of a rack",
                Quoted.text(name),
                near.isEmpty()
                        ? "collarwright profiles lists all names"
                        : "did you mean " + String.join(" or ", near) + "?");
    }

    // Eased rims lie nearer together, as in the report on a single hole.
    private TiltReport report(Cutter cutter) {
        Bench bench = new Bench(
                new RoundAperture(cutter.asDrilled().nominal()),
                new StrutSection(strut, strut),
                new Wall(body.innerRadius(), body.outerRadius()),
                body.rims());
        return TiltReport.of(bench, way).orElseThrow();
    }

    private Optional<Cutter> choice(Fit fit) {
        return cutters.isEmpty()
                ? Optional.empty()
                : lean.flatMap(l -> HoleSize.choose(
                                new HoleNeed(body, Interval.of(strut), way.at(l)),
                                new DrillingSettings(cutters, fit, BAND, CLEARANCE, Optional.empty(), Optional.empty()))
                        .cutter());
    }

    /**
     * Prints the table.
     *
     * @param all whether cutters far beyond the need are listed too
     * @return lines for people
     */
    String text(boolean all) {
        if (cutters.isEmpty()) {
            return "\nNo cutter of the racks lets the strut in and stays below the bore.\n";
        }
        StringBuilder text =
                new StringBuilder("\nas drilled, mm      in  tilt limit       slack  per 0.1 mm  cutter\n");
        Optional<Cutter> reach = choice(Fit.REACH);
        Optional<Cutter> nearest = choice(Fit.NEAREST);
        int rows = all ? cutters.size() : StrictMath.min(cutters.size(), enough() + PAST);
        for (Cutter cutter : cutters.subList(0, rows)) {
            right(text, Decimals.fixed(cutter.asDrilled().nominal(), 3), 14);
            right(text, Decimals.fixed(cutter.asDrilled().nominal() / 25.4, 3), 8);
            TiltReport report = report(cutter);
            right(text, degrees(report.tiltLimit()) + (report.binds() ? "" : "+"), 12);
            right(text, lean.map(l -> degrees(report.tiltLimit() - l)).orElse("–"), 12);
            right(text, report.binds() ? degrees(report.slopes().perHole()) : "–", 12);
            text.append("  ").append(cutter.kind().title()).append(' ').append(cutter.marked());
            text.append(reach.equals(Optional.of(cutter)) ? "  <- reach" : "");
            text.append(nearest.equals(Optional.of(cutter)) ? "  <- nearest" : "");
            text.append('\n');
        }
        if (rows < cutters.size()) {
            text.append(cutters.size() - rows)
                    .append(" larger cutters are left out, up to ")
                    .append(cutters.get(cutters.size() - 1).marked())
                    .append("; --all lists them.\n");
        }
        if (cutters.subList(0, rows).stream().anyMatch(c -> !report(c).binds())) {
            text.append("+: up to there it does not bind.\n");
        }
        text.append("Per 0.1 mm (0.004 in): how much the limit grows with a hole that much wider.\n");
        if (lean.isPresent()) {
            text.append(
                            "reach and nearest as a job takes them that says no more: 0.3 mm (0.012 in) wider than the strut at")
                    .append(" least, ")
                    .append("nearest short by 0.5° at most.\n");
        }
        return text.toString();
    }

    // How many rows there are up to the first that does: that reaches the lean, or without one, that does not bind.
    private int enough() {
        for (int i = 0; i < cutters.size(); i++) {
            TiltReport report = report(cutters.get(i));
            boolean does = lean.map(l -> report.tiltLimit() >= l).orElse(!report.binds());
            if (does) {
                return StrictMath.max(i + 1, upTo(choice(Fit.REACH)));
            }
        }
        return cutters.size();
    }

    private int upTo(Optional<Cutter> choice) {
        return choice.map(c -> cutters.indexOf(c) + 1).orElse(0);
    }

    private static void right(StringBuilder text, String word, int width) {
        text.append(" ".repeat(StrictMath.max(1, width - word.length()))).append(word);
    }

    private static String degrees(double angle) {
        return Decimals.fixed(Angles.degrees(angle), 3) + "°";
    }

    /**
     * Writes the table.
     *
     * @param rows takes one object for each cutter
     */
    void json(ArrayNode rows) {
        Optional<Cutter> reach = choice(Fit.REACH);
        Optional<Cutter> nearest = choice(Fit.NEAREST);
        for (Cutter cutter : cutters) {
            ObjectNode row = rows.addObject();
            row.put("cutter", cutter.id());
            row.put("marked", cutter.marked());
            row.put("rack", cutter.rack());
            row.put("asDrilledMm", cutter.asDrilled().nominal());
            TiltReport report = report(cutter);
            row.put("tiltLimitDeg", Angles.degrees(report.tiltLimit()));
            row.put("binds", report.binds());
            lean.ifPresent(l -> row.put("slackDeg", Angles.degrees(report.tiltLimit() - l)));
            if (report.binds()) {
                row.put("degPerTenthMmHole", Angles.degrees(report.slopes().perHole()));
            }
            row.put("reach", reach.equals(Optional.of(cutter)));
            row.put("nearest", nearest.equals(Optional.of(cutter)));
        }
    }
}
