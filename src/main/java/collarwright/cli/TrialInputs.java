package collarwright.cli;

import collarwright.collar.TrialPiece;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.geometry.Interval;
import collarwright.job.Job;
import collarwright.job.TextFile;
import collarwright.job.TrialPieces;
import collarwright.job.TrialRows;
import collarwright.plan.TrialLayout;
import collarwright.trial.Misfit;
import collarwright.trial.TrialCollar;
import collarwright.trial.TrialFit;
import collarwright.trial.TrialRow;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import collarwright.units.Length;
import collarwright.units.LengthUnit;
import collarwright.units.Quoted;
import collarwright.units.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;

/**
 * What a fit is made from.
 *
 * @param collar the test collar
 * @param rows the readings
 * @param known what the command line gives
 */
record TrialInputs(TrialCollar collar, TrialRows rows, TrialFit.Known known) {

    static TrialInputs read(Job job, Path file, Optional<String> bearingWall, Optional<String> oversize) {
        List<Finding> findings = new ArrayList<>();
        TrialLayout.untried(job).ifPresent(findings::add);
        double wall = job.hub().body().wall().nominal();
        Optional<Double> bearing =
                bearingWall.flatMap(text -> length("--bearing-wall", text, Length.Zero.ALLOWED, findings));
        bearing.filter(b -> b > wall)
                .ifPresent(b -> findings.add(TrialCommand.wrong(
                        "--bearing-wall",
                        "at most the collar's wall, " + mm(wall),
                        mm(b),
                        "give the wall that bears, or leave the option out")));
        Optional<Double> wider =
                oversize.flatMap(text -> length("--oversize", text, Length.Zero.EITHER_SIDE, findings));
        if (bearing.isPresent() && wider.isPresent()) {
            findings.add(TrialCommand.wrong(
                    "--oversize", "something to look for", "both are given", "leave one of the two options out"));
        }
        TrialRows rows = TrialRows.read(file.toString(), bytes(file), job);
        findings.addAll(rows.findings());
        TrialFit.Known known = new TrialFit.Known(bearing, wider);
        if (rows.findings().isEmpty()) {
            enough(file, rows, known, findings);
        }
        wider.ifPresent(o -> passes(rows, o, findings));
        if (findings.stream().anyMatch(f -> f.level() == Level.STOP)) {
            throw new JobException(findings);
        }
        return new TrialInputs(new TrialCollar(job.hub().body().outerRadius(), wall), rows, known);
    }

    TrialFit fit() {
        TrialFit fit = TrialFit.of(collar, rows.rows(), known);
        boolean measured = rows.rows().stream().allMatch(TrialRow::sizeMeasured);
        if (!measured || known.oversize().isPresent() || rows.wider().isEmpty()) {
            return fit;
        }
        DoubleSummaryStatistics wider =
                rows.wider().values().stream().mapToDouble(w -> w).summaryStatistics();
        double mean = StrictMath.max(wider.getMin(), StrictMath.min(wider.getMax(), wider.getAverage()));
        return fit.showing(new Interval(wider.getMin(), mean, wider.getMax()));
    }

    /** Refuses readings that no bearing wall explains. */
    void refuseMisfits(TrialFit fit, Path file) {
        List<Finding> findings = Misfit.of(fit).stream()
                .map(row -> Finding.stop(
                        Code.TRIAL_ROWS,
                        new Where.Part(file + " / hole " + row.hole()),
                        "about " + degrees(fit.fitted(row)) + ", as the other readings have it; at most "
                                + degrees(Misfit.MOST_OFF) + " off, or what a hole " + mm(Misfit.MOST_HOLE)
                                + " wider or narrower explains: our choice, no source",
                        degrees(row.angle()) + ", off by " + degrees(fit.off(row)),
                        "check the reading, the hole's number and cutter, and the strut's size; measure it again or take"
                                + " the row out",
                        "where all rows are told, check that the job names the pipe that was drilled, and that the angle"
                                + " is counted from the hub's plane"))
                .distinct()
                .toList();
        if (!findings.isEmpty()) {
            throw new JobException(findings);
        }
    }

    private static String degrees(double angle) {
        return Decimals.fixed(Angles.degrees(angle), 2) + "°";
    }

    int blank() {
        return rows.blank();
    }

    private static void enough(Path file, TrialRows rows, TrialFit.Known known, List<Finding> findings) {
        int unknowns = known.unknowns(rows.rows());
        int least = unknowns + 1;
        if (unknowns == 0 || rows.rows().size() < least) {
            findings.add(Finding.stop(
                    Code.TRIAL_ROWS,
                    new Where.Path(file.toString()),
                    unknowns == 0
                            ? "something that the readings can tell"
                            : least + " readings or more for "
                                    + (unknowns == 2 ? "bearing wall and oversize" : "one unknown"),
                    unknowns == 0
                            ? "the bearing wall is given, and every hole was measured"
                            : rows.rows().size() + " readings, " + rows.blank() + " lines without measured-deg",
                    unknowns == 0
                            ? "leave --bearing-wall out"
                            : "measure more holes and fill in measured-deg, or give --oversize if you know it"));
        }
    }

    private static void passes(TrialRows rows, double oversize, List<Finding> findings) {
        rows.rows().stream()
                .filter(r -> !r.sizeMeasured() && r.size() + oversize < r.strut())
                .findFirst()
                .ifPresent(r -> findings.add(TrialCommand.wrong(
                        "--oversize",
                        "an oversize with which the strut of " + mm(r.strut()) + " passes hole " + r.hole() + " of "
                                + mm(r.size()),
                        mm(oversize),
                        "give a larger one, or leave the option out")));
    }

    private static Optional<Double> length(String option, String text, Length.Zero zero, List<Finding> findings) {
        var reading = Length.parse(text, LengthUnit.MM, zero);
        if (reading.refusal().isPresent()) {
            Refusal why = reading.refusal().get();
            findings.add(new Finding(
                    Level.STOP, Code.COMMAND_LINE, new Where.Part(option), why.expected(), why.found(), why.hints()));
        }
        return reading.found().map(Length::mm);
    }

    private static byte[] bytes(Path file) {
        if (!Files.isRegularFile(file)) {
            throw new JobException(List.of(Finding.stop(
                    Code.JOB_FILE_MISSING,
                    new Where.Path(file.toString()),
                    "the file with the measured angles",
                    Files.exists(file) ? "a folder" : "no such file",
                    "check the name and the folder; trial without --rows writes a rows.csv to fill in")));
        }
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(TextFile.MOST_BYTES + 1);
        } catch (IOException e) {
            throw new JobException(List.of(Finding.stop(
                    Code.JOB_FILE_UNREADABLE,
                    new Where.Path(file.toString()),
                    "a file that can be read",
                    String.valueOf(e.getMessage()),
                    "check that you may read it, and close the spreadsheet that has it open")));
        }
    }

    /** The name of the profile: given, or that of its file. */
    static String name(Path file, Optional<String> given) {
        String whole = String.valueOf(file.getFileName());
        boolean toml = whole.endsWith(".toml");
        List<Finding> wrong = new ArrayList<>();
        if (!toml) {
            wrong.add(TrialCommand.wrong(
                    "--write", "a file whose name ends in .toml", Quoted.text(whole), "write NAME.toml"));
        }
        String name = given.orElse(toml ? whole.substring(0, whole.length() - 5) : "trial");
        if (!TrialPieces.named(name)) {
            wrong.add(TrialCommand.wrong(
                    given.isPresent() ? "--name" : "--write",
                    "small letters, digits, and . _ - between them, at most 60",
                    Quoted.text(name),
                    given.isPresent() ? "choose a name such as my-trial-1" : "give another with --name my-trial-1"));
        }
        if (!wrong.isEmpty()) {
            throw new JobException(wrong);
        }
        return name;
    }

    /** A profile that could not be read again is not written. */
    static void checkWritable(TrialPiece piece) {
        double most = TrialPieces.MOST_OVERSIZE;
        if (piece.oversize().min() < -most || piece.oversize().max() > most) {
            throw new JobException(List.of(Finding.stop(
                    Code.TRIAL_ROWS,
                    new Where.Part("oversize"),
                    "limits within " + mm(most) + " either way",
                    mm(piece.oversize().min()) + " to " + mm(piece.oversize().max()),
                    "the readings cannot tell it: read more holes, or give it with --oversize")));
        }
    }

    private static String mm(double length) {
        return Decimals.trimmed(length, 3) + " mm";
    }
}
